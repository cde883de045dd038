namespace BrewDeck.Core.Physics;

/// <summary>
/// Upright cylindrical vessels. Vessel expansion is neglected (steel: 0.4 % in volume from 20 to 100 °C).
/// </summary>
public static class Cylinder
{
    /// <summary>Cross-section in m².</summary>
    public static double AreaM2(double diameterM) => Math.PI * diameterM * diameterM / 4.0;

    /// <summary>Volume in L at a depth, both lengths in m.</summary>
    public static double VolumeL(double diameterM, double depthM) => 1000.0 * AreaM2(diameterM) * depthM;

    /// <summary>Depth in m of a volume in L.</summary>
    public static double DepthM(double diameterM, double volumeL) => volumeL / 1000.0 / AreaM2(diameterM);
}
