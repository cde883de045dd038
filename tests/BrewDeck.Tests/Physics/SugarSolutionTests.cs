using BrewDeck.Core.Physics;
using CsCheck;

namespace BrewDeck.Tests.Physics;

public class SugarSolutionTests
{
    private static readonly Gen<double> AnyPlato = Gen.Double[-2.0, 45.0];
    private static readonly Gen<double> AnyCelsius = Gen.Double[0.0, 100.0];

    [Fact]
    public void Plato_and_gravity_are_inverse() =>
        AnyPlato.Sample(p => Assert.Equal(p, SugarSolution.PlatoFromSg(SugarSolution.SgFromPlato(p)), 1e-9));

    [Fact]
    public void Gravity_and_plato_are_inverse() =>
        Gen.Double[0.985, 1.200].Sample(sg =>
            Assert.Equal(sg, SugarSolution.SgFromPlato(SugarSolution.PlatoFromSg(sg)), 1e-12));

    [Fact]
    public void Water_is_water()
    {
        Assert.Equal(0.0, SugarSolution.PlatoFromSg(1.0), 1e-15);
        AnyCelsius.Sample(c =>
        {
            Assert.Equal(Water.DensityKgPerM3(c), SugarSolution.DensityKgPerM3(0.0, c), 1e-12);
            Assert.Equal(Water.EnthalpyJPerKg(c), SugarSolution.EnthalpyJPerKg(0.0, c), 1e-12);
        });
    }

    [Fact]
    public void Stronger_wort_is_denser_and_harder_to_boil() =>
        Gen.Select(AnyPlato, Gen.Double[0.001, 1.0], AnyCelsius).Sample((p, more, c) =>
        {
            Assert.True(SugarSolution.SgFromPlato(p + more) > SugarSolution.SgFromPlato(p));
            Assert.True(SugarSolution.DensityKgPerM3(p + more, c) > SugarSolution.DensityKgPerM3(p, c));
            Assert.True(SugarSolution.BoilingPointRiseK(p + more) > SugarSolution.BoilingPointRiseK(p));
            Assert.True(SugarSolution.SpecificHeatJPerKgK(p + more, c) < SugarSolution.SpecificHeatJPerKgK(p, c));
        });

    [Fact]
    public void Density_gives_back_the_plato() =>
        Gen.Select(AnyPlato, AnyCelsius).Sample((p, c) =>
            Assert.Equal(p, SugarSolution.PlatoFromDensity(SugarSolution.DensityKgPerM3(p, c), c), 1e-9));

    [Fact]
    public void Volume_and_mass_are_inverse() =>
        Gen.Select(Gen.Double[0.01, 500.0], AnyPlato, AnyCelsius).Sample((kg, p, c) =>
            Assert.Equal(kg, SugarSolution.MassKg(SugarSolution.VolumeL(kg, p, c), p, c), 1e-9));

    [Fact]
    public void Specific_heat_is_the_slope_of_enthalpy() =>
        Gen.Select(AnyPlato, Gen.Double[0.5, 99.5]).Sample((p, c) =>
        {
            var slope = (SugarSolution.EnthalpyJPerKg(p, c + 0.01) - SugarSolution.EnthalpyJPerKg(p, c - 0.01)) / 0.02;
            Assert.Equal(slope, SugarSolution.SpecificHeatJPerKgK(p, c), 1e-3);
        });

    [Fact]
    public void Published_fits_agree_where_they_hold() =>
        Gen.Double[1.005, 1.083].Sample(sg =>
        {
            Assert.Equal(GravityScales.NbsBrix(sg), SugarSolution.PlatoFromSg(sg), 0.02);
            Assert.Equal(GravityScales.AsbcPlato(sg), SugarSolution.PlatoFromSg(sg), 0.02);
            Assert.Equal(sg, GravityScales.AsbcSg(GravityScales.AsbcPlato(sg)), 1e-12);
        });

    [Fact]
    public void A_hydrometer_at_its_own_temperature_is_right() =>
        Gen.Double[0.99, 1.15].Sample(sg =>
            Assert.Equal(sg, Hydrometer.TrueSg20(sg, 20.0, 20.0), 1e-12));

    [Fact]
    public void Hydrometer_correction_and_reading_are_inverse() =>
        Gen.Select(Gen.Double[0.99, 1.15], Gen.Double[0.0, 90.0], Gen.Double[15.0, 21.0])
            .Sample((sg, sample, calibration) => Assert.Equal(
                sg, Hydrometer.TrueSg20(Hydrometer.ReadingSg(sg, sample, calibration), sample, calibration), 1e-10));

    [Fact]
    public void A_hot_sample_reads_low() =>
        Gen.Select(Gen.Double[1.0, 1.12], Gen.Double[21.0, 90.0]).Sample((sg, sample) =>
            Assert.True(Hydrometer.TrueSg20(sg, sample) > sg));

    [Fact]
    public void A_refractometer_index_gives_back_the_brix() =>
        Gen.Double[0.0, 30.0].Sample(brix =>
            Assert.Equal(brix, Refractometer.BrixFromIndex(Refractometer.RefractiveIndex(brix)), 0.05));
}
