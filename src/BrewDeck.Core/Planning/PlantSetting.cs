using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>What surrounds the plant and what it is known to do: everything the model needs besides the state.</summary>
public sealed record PlantSetting
{
    public const string FermenterId = "fermenter";

    public required Brewhouse Brewhouse { get; init; }

    /// <summary>As the profile says, or as the day's readings have moved them.</summary>
    public required Habits Habits { get; init; }

    public required double AmbientC { get; init; }

    public required double SourceWaterC { get; init; }

    public required double GrainC { get; init; }

    /// <summary>Boiling point of water at this altitude, °C.</summary>
    public required double BoilingC { get; init; }

    public BitternessFormula Bitterness { get; init; }

    /// <summary>Circuits in use today.</summary>
    public required ImmutableArray<Circuit> Circuits { get; init; }

    /// <summary>Net heat of each vessel against its profile, as the day's readings have shown it; 1 at first.</summary>
    public required ImmutableArray<double> HeatFactor { get; init; }

    /// <summary>
    /// What an open kettle of hot wort loses against the same with its lid on. A still surface of 0.16 m² at 94 °C gives off 560 to 1120 W
    /// of steam, half to fully open (0.089 kW/m² for each kPa, the handbook equation for still water surfaces; from memory), and 80 to 150 W
    /// of warm air and radiation, beside 300 W through the wall: 3.1 to 5.2 times. The geometric mean is taken.
    /// </summary>
    public double OpenKettle { get; init; } = 4;

    public int FermenterIndex => Brewhouse.Vessels.Length;

    public static PlantSetting Of(Brewhouse brewhouse, DayChoices choices) => new()
    {
        Brewhouse = brewhouse,
        Habits = brewhouse.Habits,
        AmbientC = choices.AmbientC,
        SourceWaterC = choices.SourceWaterC,
        GrainC = choices.GrainC,
        Bitterness = choices.Bitterness,
        BoilingC = Atmosphere.BoilingPointC(choices.AltitudeM),
        Circuits = [.. brewhouse.Circuits.Take(choices.Circuits ?? brewhouse.Circuits.Length)],
        HeatFactor = [.. brewhouse.Vessels.Select(_ => 1.0)],
    };

    public int IndexOf(string vesselId)
    {
        if (vesselId == FermenterId)
            return FermenterIndex;
        for (var i = 0; i < Brewhouse.Vessels.Length; i++)
        {
            if (Brewhouse.Vessels[i].Id == vesselId)
                return i;
        }
        return -1;
    }

    /// <summary>Index of the circuit that feeds a vessel today: its own, or the last one in use; -1 without elements.</summary>
    public int CircuitOf(int vessel)
    {
        if (vessel >= Brewhouse.Vessels.Length || Brewhouse.Vessels[vessel].Elements.IsEmpty)
            return -1;
        var wanted = Brewhouse.Vessels[vessel].Elements[0].CircuitId;
        for (var i = 0; i < Circuits.Length; i++)
        {
            if (Circuits[i].Id == wanted)
                return i;
        }
        return Circuits.Length - 1;
    }

    /// <summary>A vessel holds its temperature only where no other one needs its plug.</summary>
    public bool HoldsTemperature(int vessel)
    {
        var circuit = CircuitOf(vessel);
        if (circuit < 0)
            return false;
        for (var i = 0; i < Brewhouse.Vessels.Length; i++)
        {
            if (i != vessel && CircuitOf(i) == circuit)
                return false;
        }
        return true;
    }

    /// <summary>Heat that reaches the liquid of a vessel with every covered element on, W.</summary>
    /// <param name="litres">What stands in the vessel.</param>
    public double NetHeatW(int vessel, double litres)
    {
        if (vessel >= Brewhouse.Vessels.Length)
            return 0;
        var sum = 0.0;
        foreach (var element in Brewhouse.Vessels[vessel].Elements)
            sum += litres >= element.CoverL - 1e-6 ? element.PowerW * element.NetFraction : 0;
        return sum * HeatFactor[vessel];
    }

    /// <summary>Loss to the room with the lid on, W/K. A covered fermenter loses about as much as a small kettle (common practice, no source).</summary>
    public double LossWPerK(int vessel) => vessel < Brewhouse.Vessels.Length ? Brewhouse.Vessels[vessel].LossWPerK : 3;

    public double HeatCapacityJPerK(int vessel) =>
        vessel < Brewhouse.Vessels.Length ? Brewhouse.Vessels[vessel].HeatCapacityJPerK : 2_000;
}
