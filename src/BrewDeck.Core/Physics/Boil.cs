namespace BrewDeck.Core.Physics;

/// <summary>Evaporation and concentration in the kettle.</summary>
public static class Boil
{
    /// <summary>
    /// Evaporation per hour of an ordinary atmospheric kettle as a fraction of the volume. Common practice: 4 to 12
    /// %.
    /// </summary>
    public const double UsualEvaporationFractionPerH = 0.08;

    /// <summary>
    /// The most water that a net power (element less wall losses) can boil off, in kg/s: P/h_fg. Real kettles reach
    /// less while vapour drips back. Zero for no power left.
    /// </summary>
    public static double EvaporationKgPerS(double netWatts, double boilingC) =>
        Math.Max(0.0, netWatts) / Water.LatentHeatJPerKg(boilingC);

    /// <summary>Net power in W that evaporates at this rate: the inverse of <see cref="EvaporationKgPerS"/>.</summary>
    public static double NetWatts(double evaporationKgPerS, double boilingC) =>
        evaporationKgPerS * Water.LatentHeatJPerKg(boilingC);

    /// <summary>
    /// Water in kg/(m² s) that leaves a still open surface below the boil: 0.089 W for each m² and Pa that the vapour pressure lies
    /// above that of the room's air, taken as damp. The handbook equation for still water surfaces, coefficient from memory;
    /// made for pools, and within some thirds at 60..100 °C.
    /// </summary>
    public static double StillSurfaceKgPerM2S(double celsius, double ambientC) =>
        0.089 * Math.Max(0.0, Water.SaturationPressurePa(celsius) - Water.SaturationPressurePa(ambientC)) / Water.LatentHeatJPerKg(celsius);

    /// <summary>°P after water leaves: extract is conserved. Masses in kg.</summary>
    public static double PlatoAfter(double wortKg, double plato, double evaporatedKg) =>
        plato * wortKg / (wortKg - evaporatedKg);

    /// <summary>Water in kg to boil off so that wort reaches a °P; negative means water to add.</summary>
    public static double EvaporatedKgForPlato(double wortKg, double plato, double targetPlato) =>
        wortKg * (1.0 - plato / targetPlato);

    /// <summary>Wort volume in L at 20 °C after an evaporation given in L of water at 20 °C, by mass balance.</summary>
    public static double VolumeAfterL20(double wortL20, double plato, double evaporatedL20)
    {
        var (wortKg, evaporatedKg) = Masses(wortL20, plato, evaporatedL20);
        return SugarSolution.VolumeL(wortKg - evaporatedKg, PlatoAfter(wortKg, plato, evaporatedKg), 20.0);
    }

    /// <summary>°P after an evaporation given in L of water at 20 °C, by mass balance.</summary>
    public static double PlatoAfterL20(double wortL20, double plato, double evaporatedL20)
    {
        var (wortKg, evaporatedKg) = Masses(wortL20, plato, evaporatedL20);
        return PlatoAfter(wortKg, plato, evaporatedKg);
    }

    private static (double WortKg, double EvaporatedKg) Masses(double wortL20, double plato, double evaporatedL20) =>
        (SugarSolution.MassKg(wortL20, plato, 20.0), SugarSolution.MassKg(evaporatedL20, 0.0, 20.0));
}
