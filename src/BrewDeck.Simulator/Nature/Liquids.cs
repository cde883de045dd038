namespace BrewDeck.Simulator.Nature;

/// <summary>
/// Volumes and gravities of water and wort by the rehearsal's own fits: apparent specific volumes that add, so that water and extract
/// keep their masses whatever is mixed. Deliberately not the planner's correlations.
/// </summary>
public static class Liquids
{
    /// <summary>Reference temperature of volumes and gravities, °C.</summary>
    public const double ReferenceC = 20;

    /// <summary>Volume that a kg of dry grain takes up in the mash, L/kg: between husk and starch, common practice, no source.</summary>
    public const double GrainLPerKg = 0.65;

    /// <summary>Buoyancy of the air in a weighing, kg/L.</summary>
    private const double AirKgPerL = 0.0012;

    private static readonly double _coldWaterKgPerL = WaterKgPerL(ReferenceC);

    /// <summary>
    /// Density of water, kg/L, 0 to 100 °C: Tilton and Taylor 1937 (J. Res. NBS 18), made for 0 to 42 °C; at 100 °C it is
    /// 0.2 kg/m³ under the steam tables.
    /// </summary>
    public static double WaterKgPerL(double celsius) =>
        1 - (celsius + 288.9414) * (celsius - 3.9863) * (celsius - 3.9863) / (508929.2 * (celsius + 68.12963));

    /// <summary>Litres that water and dissolved extract take up together at a temperature.</summary>
    public static double VolumeL(double waterKg, double extractKg, double celsius) =>
        waterKg / WaterKgPerL(celsius) + extractKg * ExtractLPerKg(waterKg, extractKg, celsius);

    /// <summary>Litres at 20 °C.</summary>
    public static double ColdL(double waterKg, double extractKg) =>
        waterKg / _coldWaterKgPerL + extractKg * ExtractLPerKg(waterKg, extractKg, ReferenceC);

    /// <summary>Kilograms of water in litres measured at 20 °C.</summary>
    public static double WaterKg(double coldL) => coldL * _coldWaterKgPerL;

    /// <summary>
    /// Specific gravity 20/20 of wort as every hydrometer and table of the trade has it, weighed in air: 0.00006 above that of the masses at
    /// 12 %. 1 for nothing.
    /// </summary>
    public static double GravitySg(double waterKg, double extractKg) =>
        waterKg + extractKg <= 0 ? 1 : ((waterKg + extractKg) / ColdL(waterKg, extractKg) - AirKgPerL) / (_coldWaterKgPerL - AirKgPerL);

    /// <summary>
    /// Apparent specific volume of sucrose in water, L/kg: fitted to the density tables at 5, 12 and 20 % (within 0.05 kg/m³ there), with
    /// 0.057 % a kelvin for its own expansion, which the tables give from 20 to 75 and to 80 °C at 10 % (0.2 kg/m³ off at 40 °C).
    /// </summary>
    private static double ExtractLPerKg(double waterKg, double extractKg, double celsius) =>
        (0.6147 + 0.019 * extractKg / (waterKg + extractKg + 1e-12)) * (1 + 5.7e-4 * (celsius - ReferenceC));
}
