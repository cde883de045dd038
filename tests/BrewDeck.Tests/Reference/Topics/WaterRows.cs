using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class WaterRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["water density (liquid, 1 atm)"] = row => Water.DensityKgPerM3(row.Celsius("t")),
            ["water density (Tanaka 2001, ITS-90, air-free SMOW)"] = row =>
                Water.DensityTanakaKgPerM3(row.Celsius("t")),
            ["water maximum density temperature"] = _ => Bisect(Water.ThermalExpansionPerK, 0.0, 10.0),
            ["saturation pressure"] = row => Water.SaturationPressurePa(row.Celsius("T")) / 1e6,
            ["saturation temperature"] = row => Temperature.Kelvin(Water.SaturationTempC(row.Si("p"))),
            ["specific volume, compressed liquid"] = row => Iapws97.LiquidVolumeM3PerKg(row["T"], row.Si("p")),
            ["specific enthalpy, compressed liquid"] = row => Iapws97.LiquidEnthalpyJPerKg(row["T"], row.Si("p")) / 1e3,
            ["specific heat cp, compressed liquid"] = row =>
                Iapws97.LiquidSpecificHeatJPerKgK(row["T"], row.Si("p")) / 1e3,
            ["saturation vapour pressure of water"] = VapourPressure,
            ["saturation vapour pressure of water (printed steam table)"] = VapourPressure,
            ["boiling (saturation) temperature of water"] = row => Water.SaturationTempC(row.Si("p")),
            ["normal boiling point of water on ITS-90"] = row => Water.SaturationTempC(row.Si("p")),
            ["latent heat of vaporisation"] = LatentHeat,
            ["latent heat of vaporisation (printed steam table)"] = LatentHeat,
            ["specific heat cp of liquid water"] = row => Water.SpecificHeatJPerKgK(row.Celsius("t")) / 1e3,
            ["enthalpy rise of liquid water"] = row =>
                HeatFlow.WaterHeatJ(1.0, row.Celsius("t1"), row.Celsius("t2")) / 1e3,
            ["standard atmosphere pressure"] = row => row.Has("geometric altitude")
                ? Atmosphere.PressurePa(row["geometric altitude"])
                : Atmosphere.PressureAtGeopotentialPa(row["geopotential altitude"]),
            ["standard atmosphere temperature"] = row =>
                Atmosphere.TempAtGeopotentialK(Atmosphere.GeopotentialM(row["geometric altitude"])),
            ["boiling temperature of water at altitude"] = row =>
                Atmosphere.BoilingPointAtGeopotentialC(row["geopotential altitude"]),
            ["dynamic viscosity of water"] = row => Water.ViscosityPaS(row.Celsius("t")) * 1e3,
        };

    private static double VapourPressure(ReferenceRow row) => Water.SaturationPressurePa(row.Celsius("t")) / 1e3;

    private static double LatentHeat(ReferenceRow row) => Water.LatentHeatJPerKg(row.Celsius("t")) / 1e3;

    private static double Bisect(Func<double, double> rising, double low, double high)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2.0;
            if (rising(middle) < 0.0) low = middle;
            else high = middle;
        }

        return low;
    }
}
