namespace BrewDeck.Core.Brewhouses;

/// <summary>How a mash is taken from one rest to the next.</summary>
public enum MashHeating
{
    /// <summary>Elements under or beside the mash, wort recirculating.</summary>
    Direct,

    /// <summary>Additions of hot water.</summary>
    HotWater,

    /// <summary>Wort pumped round through a coil in the hot liquor tank.</summary>
    Coil,

    /// <summary>Part of the mash is boiled in the kettle and given back.</summary>
    Decoction,
}

/// <summary>What this brewhouse does with malt, water and wort: the numbers that lessons move.</summary>
public sealed record Habits
{
    /// <summary>Strike water to grist, L/kg; usual 2.5 to 4.</summary>
    public required double MashThicknessLPerKg { get; init; }

    /// <summary>Share of the laboratory extract that the mash dissolves, 0..1; usual 0.92 to 0.99.</summary>
    public required double ConversionYield { get; init; }

    /// <summary>Wort kept by the drained grain, L at 20 °C per kg of grist as weighed; usual 0.8 to 1.2.</summary>
    public required double AbsorptionLPerKg { get; init; }

    /// <summary>How evenly sparge water pushes the wort out: number of ideal washing stages, 1 (mixes fully) to about 6.</summary>
    public required double SpargeStages { get; init; }

    /// <summary>Flow from the tun while lautering, L/min, the litres at 20 °C.</summary>
    public required double RunoffLPerMin { get; init; }

    /// <summary>Water that leaves a rolling boil, kg/h.</summary>
    public required double EvaporationKgPerH { get; init; }

    /// <summary>Wort left in the kettle with trub, beside its dead space and what hops soak up, litres.</summary>
    public required double TrubL { get; init; }

    /// <summary>Wort soaked up by hops, L per kg; usual 5 to 10 for pellets, more for cones.</summary>
    public required double HopAbsorptionLPerKg { get; init; }

    /// <summary>Left in hoses, pump and chiller at cast-out, litres.</summary>
    public required double LineLossL { get; init; }

    /// <summary>Sparge liquor, °C; usual 75 to 78.</summary>
    public required double SpargeC { get; init; }

    /// <summary>Source water into a vessel, L/min; a garden hose gives about 10.</summary>
    public double FillLPerMin { get; init; } = 10;

    public MashHeating MashHeating { get; init; } = MashHeating.Direct;
}
