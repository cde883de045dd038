namespace BrewDeck.Simulator.Nature;

/// <summary>Vapour pressure, boiling and the air around, by the rehearsal's own formulas.</summary>
public static class Vapours
{
    private const double SeaLevelPa = 101_325;

    private const double PaPerMmHg = 133.322;

    /// <summary>Saturation pressure of water, Pa, 1 to 105 °C: Antoine with A 8.07131, B 1730.63, C 233.426 (mmHg, °C; common handbook set).</summary>
    public static double SaturationPa(double celsius) =>
        PaPerMmHg * Math.Pow(10, 8.07131 - 1730.63 / (233.426 + celsius));

    /// <summary>Boiling point of water under a pressure in Pa, °C: Antoine turned round.</summary>
    public static double BoilingC(double pressurePa) =>
        1730.63 / (8.07131 - Math.Log10(pressurePa / PaPerMmHg)) - 233.426;

    /// <summary>Boiling point rise of wort, K: 0.51 K for a mol of sugar (as sucrose, 342 g) in a kg of water.</summary>
    public static double RiseK(double waterKg, double extractKg) => waterKg <= 0 ? 0 : 0.51 * extractKg / waterKg / 0.342;

    /// <summary>Air pressure at an altitude in metres, Pa: hypsometric equation with the mean temperature of the column (0 to 4000 m).</summary>
    /// <param name="weatherPa">How much the day's weather adds at sea level.</param>
    public static double AirPa(double altitudeM, double weatherPa = 0)
    {
        var meanK = 288.15 - 0.00325 * altitudeM;
        return (SeaLevelPa + weatherPa) * Math.Exp(-9.80665 * 0.0289644 * altitudeM / (8.314462 * meanK));
    }

    /// <summary>Latent heat of water, J/kg, 0 to 105 °C: straight line through the steam tables at 0 and 100 °C (within 0.2 %).</summary>
    public static double LatentJPerKg(double celsius) => 2_501_000 - 2_440 * celsius;

    /// <summary>Film of air over warm still liquid, W/(m²·K): magnitude of free convection, common practice, no source.</summary>
    private const double FilmWPerM2K = 8;

    /// <summary>
    /// Water that leaves an open surface below the boil, kg/(m²·s): mass transfer from the analogy with heat transfer through the same film.
    /// At 90 °C about 12 kg/(m²·h). The air is taken as damp at room temperature, so that nothing cools below the room:
    /// right for lids, and too little to matter for hot wort.
    /// </summary>
    public static double SurfaceKgPerM2S(double celsius, double ambientC)
    {
        var filmK = 273.15 + (celsius + ambientC) / 2;
        var drivePa = SaturationPa(celsius) - SaturationPa(ambientC);
        return FilmWPerM2K / 1007 / (461.5 * filmK) * Math.Max(0, drivePa);
    }

    /// <summary>Heat that an open surface gives to the air through the film and to the walls by radiation (Stefan and Boltzmann, water's emissivity of 0.96), W/m².</summary>
    public static double SurfaceWPerM2(double celsius, double ambientC) =>
        FilmWPerM2K * (celsius - ambientC) + 0.96 * 5.670e-8 * (Math.Pow(273.15 + celsius, 4) - Math.Pow(273.15 + ambientC, 4));
}
