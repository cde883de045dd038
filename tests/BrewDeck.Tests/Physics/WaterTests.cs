using BrewDeck.Core.Physics;
using CsCheck;

namespace BrewDeck.Tests.Physics;

public class WaterTests
{
    private static readonly Gen<double> BrewingCelsius = Gen.Double[0.0, 110.0];

    [Fact]
    public void Enthalpy_and_temperature_are_inverse() =>
        BrewingCelsius.Sample(c => Assert.Equal(c, Water.TempFromEnthalpyC(Water.EnthalpyJPerKg(c)), 1e-9));

    [Fact]
    public void Vapour_pressure_and_boiling_point_are_inverse() =>
        BrewingCelsius.Sample(c => Assert.Equal(c, Water.SaturationTempC(Water.SaturationPressurePa(c)), 1e-6));

    [Fact]
    public void Fast_forms_stay_by_the_standard() =>
        BrewingCelsius.Sample(c =>
        {
            var kelvin = Temperature.Kelvin(c);
            Assert.Equal(Iapws97.LiquidEnthalpyJPerKg(kelvin, 101325), Water.EnthalpyJPerKg(c), 1.0);
            Assert.Equal(Iapws97.LiquidSpecificHeatJPerKgK(kelvin, 101325), Water.SpecificHeatJPerKgK(c), 1.2);
            Assert.Equal(Iapws97.LatentHeatJPerKg(kelvin), Water.LatentHeatJPerKg(c), 11.0);
            Assert.Equal(1.0 / Iapws97.LiquidVolumeM3PerKg(kelvin, 101325), Water.DensityKgPerM3(c), 0.05);
        });

    [Fact]
    public void Specific_heat_is_the_slope_of_enthalpy() =>
        Gen.Double[0.5, 109.5].Sample(c =>
        {
            var slope = (Water.EnthalpyJPerKg(c + 0.01) - Water.EnthalpyJPerKg(c - 0.01)) / 0.02;
            Assert.Equal(slope, Water.SpecificHeatJPerKgK(c), 1e-3);
        });

    [Fact]
    public void Expansion_coefficient_is_the_slope_of_volume() =>
        Gen.Double[0.5, 109.5].Sample(c =>
        {
            var slope = (1.0 / Water.DensityKgPerM3(c + 0.01) - 1.0 / Water.DensityKgPerM3(c - 0.01)) / 0.02;
            Assert.Equal(slope * Water.DensityKgPerM3(c), Water.ThermalExpansionPerK(c), 1e-8);
        });

    [Fact]
    public void Warmer_water_is_lighter_thinner_and_nearer_to_steam() =>
        Gen.Select(Gen.Double[4.5, 109.0], Gen.Double[0.01, 1.0]).Sample((c, step) =>
        {
            Assert.True(Water.DensityKgPerM3(c + step) < Water.DensityKgPerM3(c));
            Assert.True(Water.ViscosityPaS(c + step) < Water.ViscosityPaS(c));
            Assert.True(Water.SaturationPressurePa(c + step) > Water.SaturationPressurePa(c));
            Assert.True(Water.LatentHeatJPerKg(c + step) < Water.LatentHeatJPerKg(c));
        });

    [Fact]
    public void Mixing_keeps_the_heat_and_lies_between() =>
        Gen.Select(Gen.Double[0.1, 100.0], BrewingCelsius, Gen.Double[0.1, 100.0], BrewingCelsius)
            .Sample((firstKg, first, secondKg, second) =>
            {
                var mixed = Water.MixTempC(firstKg, first, secondKg, second);
                Assert.InRange(mixed, Math.Min(first, second) - 1e-9, Math.Max(first, second) + 1e-9);
                var before = firstKg * Water.EnthalpyJPerKg(first) + secondKg * Water.EnthalpyJPerKg(second);
                Assert.Equal(before, (firstKg + secondKg) * Water.EnthalpyJPerKg(mixed), 1e-3);
            });

    [Fact]
    public void It_boils_cooler_higher_up() =>
        Gen.Select(Gen.Double[-400.0, 4000.0], Gen.Double[1.0, 500.0]).Sample((metres, up) =>
            Assert.True(Atmosphere.BoilingPointC(metres + up) < Atmosphere.BoilingPointC(metres)));

    /// <summary>
    /// The verification values of IAPWS R7-97, tables 5 and 15, to their nine digits; those that are not in 01_water.csv are from memory. Far from
    /// any brewhouse, they see each coefficient, the small ones at 1 bar too.
    /// </summary>
    [Theory]
    [InlineData(300, 3e6, 1.00215168e-3, 115.331273, 4.17301218)]
    [InlineData(300, 80e6, 9.71180894e-4, 184.142828, 4.01008987)]
    [InlineData(500, 3e6, 1.20241800e-3, 975.542239, 4.65580682)]
    public void Liquid_water_is_that_of_the_standard(double kelvin, double pascals, double m3PerKg, double kJPerKg, double kJPerKgK)
    {
        Assert.Equal(1, Iapws97.LiquidVolumeM3PerKg(kelvin, pascals) / m3PerKg, 1e-8);
        Assert.Equal(1, Iapws97.LiquidEnthalpyJPerKg(kelvin, pascals) / 1000 / kJPerKg, 1e-8);
        Assert.Equal(1, Iapws97.LiquidSpecificHeatJPerKgK(kelvin, pascals) / 1000 / kJPerKgK, 1e-8);
    }

    [Theory]
    [InlineData(300, 3.5e3, 2549.91145)]
    [InlineData(700, 3.5e3, 3335.68375)]
    [InlineData(700, 30e6, 2631.49474)]
    public void Steam_is_that_of_the_standard(double kelvin, double pascals, double kJPerKg) =>
        Assert.Equal(1, Iapws97.SteamEnthalpyJPerKg(kelvin, pascals) / 1000 / kJPerKg, 1e-8);
}
