namespace BrewDeck.Core.Physics;

/// <summary>Flow through the mash bed.</summary>
public static class GrainBed
{
    /// <summary>
    /// Gravity at which to stop collecting: below it the runnings bring tannin (usual practice 1.010..1.020).
    /// </summary>
    public const double RunOffEndSg = 1.010;

    /// <summary>Flow in m³/s, Darcy: K A Δp/(μ L); permeability in m².</summary>
    public static double FlowM3PerS(
        double permeabilityM2, double areaM2, double pressureDropPascals, double viscosityPaS, double depthM) =>
        permeabilityM2 * areaM2 * pressureDropPascals / (viscosityPaS * depthM);

    /// <summary>Permeability in m² of a bed of grains, Kozeny-Carman: ε³d²/(180 (1 − ε)²).</summary>
    public static double PermeabilityM2(double particleM, double porosity) =>
        porosity * porosity * porosity * particleM * particleM / (180.0 * (1.0 - porosity) * (1.0 - porosity));

    /// <summary>Mean run-off in L/min that collects a volume in a time in s.</summary>
    public static double RunOffLPerMin(double litres, double seconds) => 60.0 * litres / seconds;
}
