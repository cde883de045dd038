namespace BrewDeck.Core.Physics;

/// <summary>
/// The standard atmosphere's troposphere (ISO 2533:1975, same as ICAO and US Standard Atmosphere 1976 there), valid
/// −5,000..11,000 m. Weather moves the real pressure by a few kPa, the boiling point by up to about 1 °C.
/// </summary>
public static class Atmosphere
{
    /// <summary>Pressure at sea level in Pa (definition).</summary>
    public const double SeaLevelPascals = 101325.0;
    private const double SeaLevelKelvin = 288.15;
    private const double LapseKPerM = 0.0065;
    private const double EarthRadiusM = 6356766.0;
    // g0 M / (R* L) with g0 = 9.80665 m/s², specific gas constant 287.05287 J/(kg K)
    private const double Exponent = 9.80665 / (287.05287 * LapseKPerM);

    /// <summary>
    /// Geopotential height in m of a geometric altitude (what a map gives); the difference is 0.03 % at 2 km.
    /// </summary>
    public static double GeopotentialM(double geometricAltitudeM) =>
        EarthRadiusM * geometricAltitudeM / (EarthRadiusM + geometricAltitudeM);

    /// <summary>Pressure in Pa at a geometric altitude in m above sea level.</summary>
    public static double PressurePa(double geometricAltitudeM) =>
        PressureAtGeopotentialPa(GeopotentialM(geometricAltitudeM));

    /// <summary>Pressure in Pa at a geopotential height in m.</summary>
    public static double PressureAtGeopotentialPa(double geopotentialM) =>
        SeaLevelPascals * Math.Pow(1.0 - LapseKPerM * geopotentialM / SeaLevelKelvin, Exponent);

    /// <summary>Air temperature in K at a geopotential height in m.</summary>
    public static double TempAtGeopotentialK(double geopotentialM) => SeaLevelKelvin - LapseKPerM * geopotentialM;

    /// <summary>Boiling temperature of water in °C at a geometric altitude in m (99.97 °C at sea level).</summary>
    public static double BoilingPointC(double altitudeM) => Water.SaturationTempC(PressurePa(altitudeM));

    /// <summary>Boiling temperature of water in °C at a geopotential height in m.</summary>
    public static double BoilingPointAtGeopotentialC(double geopotentialM) =>
        Water.SaturationTempC(PressureAtGeopotentialPa(geopotentialM));
}
