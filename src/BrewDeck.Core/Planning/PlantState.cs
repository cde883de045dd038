using System.Collections.Immutable;

namespace BrewDeck.Core.Planning;

/// <summary>What stands in a vessel at <see cref="AtS"/>. Volumes follow from the masses and the temperature.</summary>
/// <param name="AtS">Seconds since the start of the day up to which this vessel is known; it is free from then on.</param>
/// <param name="WaterKg">All water, that held by the grain included, kg.</param>
/// <param name="ExtractKg">Dissolved extract, kg.</param>
/// <param name="TempC">Well mixed, °C.</param>
/// <param name="GrainKg">Grist as weighed in the vessel, kg.</param>
/// <param name="GrainDryKg">Dry solids of the grain, what has dissolved subtracted, kg.</param>
/// <param name="UndissolvedKg">Extract among them that the mash can still dissolve, kg.</param>
/// <param name="Washed">Sparge liquor passed through the bed so far, litres per litre of liquid in it.</param>
/// <param name="HoldC">Kept at this temperature by its thermostat; NaN when the heat is off.</param>
/// <param name="Open">Hot wort stands in it with the lid off, as after the knock-out.</param>
public readonly record struct VesselState(
    double AtS,
    double WaterKg,
    double ExtractKg,
    double TempC,
    double GrainKg = 0,
    double GrainDryKg = 0,
    double UndissolvedKg = 0,
    double Washed = 0,
    double HoldC = double.NaN,
    bool Open = false)
{
    public double LiquidKg => WaterKg + ExtractKg;

    /// <summary>Extract by mass of the liquid, degrees Plato.</summary>
    public double Plato => LiquidKg > 0 ? 100 * ExtractKg / LiquidKg : 0;

    public bool HoldsTemperature => !double.IsNaN(HoldC);
}

/// <summary>One hop addition in the wort.</summary>
/// <param name="AlphaG">Alpha acids added, g.</param>
/// <param name="MassKg">As weighed, kg: it soaks up wort.</param>
/// <param name="BoilMinutes">Exposure so far, as minutes at 100 °C: the isomerisation rate integrated over the temperature really seen.</param>
/// <param name="GravitySg">Mean SG of the wort over these minutes; 0 before the first, and in records older than this field.</param>
public readonly record struct HopDose(string Name, double AlphaG, double MassKg, double BoilMinutes = 0, double GravitySg = 0)
{
    /// <summary>After more time in the wort.</summary>
    /// <param name="minutes">At 100 °C.</param>
    /// <param name="gravitySg">Of the wort meanwhile.</param>
    public HopDose Exposed(double minutes, double gravitySg) => minutes <= 0 ? this : this with
    {
        BoilMinutes = BoilMinutes + minutes,
        GravitySg = GravitySg > 0 ? GravitySg + (gravitySg - GravitySg) * minutes / (BoilMinutes + minutes) : gravitySg,
    };
}

/// <summary>The whole plant, each vessel up to its own time.</summary>
public sealed record PlantState
{
    /// <summary>In the order of <see cref="Brewhouses.Brewhouse.Vessels"/>; the fermenter is last.</summary>
    public required ImmutableArray<VesselState> Vessels { get; init; }

    public ImmutableArray<HopDose> Hops { get; init; } = [];

    /// <summary>Colour brought in so far by malt, kg·EBC.</summary>
    public double ColourKgEbc { get; init; }

    /// <summary>Mass of the malt and extract that brought <see cref="ColourKgEbc"/>, kg; 0 in records older than this figure.</summary>
    public double ColouredKg { get; init; }

    /// <summary>Wort in the kettle when cast-out began, litres at 20 °C; 0 before.</summary>
    public double KnockedOutL { get; init; }

    /// <summary>Wort that fills hoses, pump and chiller since cast-out began, litres at 20 °C.</summary>
    public double LineFilledL { get; init; }

    /// <summary>Seconds since the start of the day from which the hands are free.</summary>
    public double HandsFreeS { get; init; }

    /// <summary>
    /// Index of the vessel that each circuit in use is plugged into, or <see cref="Wiring.Nobody"/> for one that feeds all its
    /// elements at once.
    /// </summary>
    public ImmutableArray<int> PlugAt { get; init; } = [];

    /// <summary>Seconds from which each circuit is free, in the order of the circuits in use.</summary>
    public ImmutableArray<double> CircuitFreeS { get; init; } = [];
}
