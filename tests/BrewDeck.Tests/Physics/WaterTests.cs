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
}
