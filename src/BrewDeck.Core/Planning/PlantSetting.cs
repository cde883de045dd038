using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>What surrounds the plant and what it is known to do: everything the model needs besides the state.</summary>
public sealed record PlantSetting
{
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

    public required Wiring Wiring { get; init; }

    /// <summary>Net heat of each vessel against its profile, as the day's readings have shown it; 1 at first.</summary>
    public required ImmutableArray<double> HeatFactor { get; init; }

    /// <summary>
    /// Open share of a kettle from knock-out to cast-out, when steam is let go: a lid stands anywhere from half to fully open, and the
    /// middle is taken (common practice, no source).
    /// </summary>
    public double OpenShare { get; init; } = 0.75;

    /// <summary>
    /// Open share of a vessel with its lid on: 2 mm all round a lid of 45 cm are 0.018, a hole for a hose and one for a thermometer make
    /// the rest. What leaves by it is some hundredths of a litre an hour; its heat is in the loss that the profile counts.
    /// </summary>
    public double LidLeak { get; init; } = 0.03;

    /// <summary>How much stronger what drains after the sparge is than a bed that keeps its course would give: 1 unless it is known better.</summary>
    public double DrainStrength { get; init; } = 1;

    /// <summary>How long whoever brews takes to look and to read, against the usual.</summary>
    public double Pace { get; init; } = 1;

    public int FermenterIndex => Brewhouse.Vessels.Length;

    public static PlantSetting Of(Brewhouse brewhouse, DayChoices choices) =>
        Of(brewhouse, choices, [.. brewhouse.Circuits.Take(choices.Circuits ?? brewhouse.Circuits.Length)]);

    private static PlantSetting Of(Brewhouse brewhouse, DayChoices choices, ImmutableArray<Circuit> inUse) => new()
    {
        Brewhouse = brewhouse,
        Habits = brewhouse.Habits with { MashHeating = choices.MashHeating ?? brewhouse.Habits.MashHeating },
        AmbientC = choices.AmbientC,
        SourceWaterC = choices.SourceWaterC,
        GrainC = choices.GrainC,
        Bitterness = choices.Bitterness,
        BoilingC = Atmosphere.BoilingPointC(choices.AltitudeM),
        Circuits = inUse,
        Wiring = Wiring.Of(brewhouse, inUse),
        HeatFactor = [.. brewhouse.Vessels.Select(_ => 1.0)],
    };

    /// <summary>The same with another vessel in the kettle's place.</summary>
    public PlantSetting BoilingIn(string vesselId) => this with { Brewhouse = Brewhouse.BoilingIn(vesselId) };

    public int IndexOf(string vesselId)
    {
        if (vesselId == Places.Fermenter)
            return FermenterIndex;
        for (var i = 0; i < Brewhouse.Vessels.Length; i++)
        {
            if (Brewhouse.Vessels[i].Id == vesselId)
                return i;
        }
        return -1;
    }

    /// <summary>Heat that reaches the liquid of a vessel with all on that is covered and fed, W.</summary>
    /// <param name="litres">What stands in the vessel.</param>
    /// <param name="plugs">See <see cref="PlantState.PlugAt"/>.</param>
    public double NetHeatW(int vessel, double litres, ImmutableArray<int> plugs)
    {
        if (vessel >= Brewhouse.Vessels.Length)
            return 0;
        var sum = Brewhouse.Vessels[vessel].Burner is { } burner && litres >= burner.CoverL - 1e-6 ? burner.NetW : 0;
        foreach (var lead in Wiring.Leads[vessel])
        {
            if (litres >= lead.Element.CoverL - 1e-6 && Wiring.Feeds(lead, plugs))
                sum += lead.Element.PowerW * lead.Element.NetFraction;
        }
        return sum * HeatFactor[vessel];
    }

    /// <summary>Heat of a vessel that has all its plugs, W.</summary>
    public double FullHeatW(int vessel, double litres) =>
        NetHeatW(vessel, litres, [.. Circuits.Select(_ => vessel)]);

    /// <summary>Most that may stand in a vessel, litres.</summary>
    public double WorkingL(int vessel) => vessel < Brewhouse.Vessels.Length ? Brewhouse.Vessels[vessel].WorkingL : Brewhouse.Fermenter.WorkingL;

    /// <summary>Loss to the room with the lid on, W/K. A covered fermenter loses about as much as a small kettle (common practice, no source).</summary>
    public double LossWPerK(int vessel) => vessel < Brewhouse.Vessels.Length ? Brewhouse.Vessels[vessel].LossWPerK : 3;

    public double HeatCapacityJPerK(int vessel) =>
        vessel < Brewhouse.Vessels.Length ? Brewhouse.Vessels[vessel].HeatCapacityJPerK : 2_000;
}
