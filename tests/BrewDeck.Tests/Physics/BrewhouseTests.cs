using BrewDeck.Core.Physics;
using CsCheck;

namespace BrewDeck.Tests.Physics;

public class BrewhouseTests
{
    [Fact]
    public void A_salt_brings_as_many_positive_as_negative_charges()
    {
        foreach (var salt in Enum.GetValues<BrewingSalt>())
        {
            var charge = Enum.GetValues<Ion>().Sum(ion => Math.Sign(Ions.Charge(ion))
                * WaterChemistry.MEqPerL(ion, BrewingSalts.IonMgPerL(salt, ion, 1.0, 1.0)));
            Assert.Equal(0.0, charge, 1e-9);
        }
    }

    [Fact]
    public void Acid_lowers_ph_and_undoes_itself() =>
        Gen.Select(Gen.Double[20.0, 400.0], Gen.Double[6.5, 8.5], Gen.Double[5.0, 6.4]).Sample((alkalinity, from, to) =>
        {
            var acid = WaterChemistry.AcidMEqPerL(alkalinity, from, to);
            var left = alkalinity - acid * WaterChemistry.CaCO3MgPerMEq;
            Assert.InRange(acid, 0.0, alkalinity / WaterChemistry.CaCO3MgPerMEq);
            Assert.Equal(-acid, WaterChemistry.AcidMEqPerL(left, to, from), 1e-9);
        });

    [Fact]
    public void Colebrook_satisfies_its_equation() =>
        Gen.Select(Gen.Double[3.6, 8.0], Gen.Double[0.0, 0.05]).Sample((logReynolds, roughness) =>
        {
            var reynolds = Math.Pow(10.0, logReynolds);
            var root = Math.Sqrt(PipeFriction.Colebrook(reynolds, roughness));
            Assert.Equal(1.0 / root, -2.0 * Math.Log10(roughness / 3.7 + 2.51 / (reynolds * root)), 1e-9);
        });

    [Fact]
    public void Churchill_joins_laminar_and_turbulent_flow()
    {
        Gen.Double[100.0, 1500.0].Sample(reynolds =>
            Assert.Equal(PipeFriction.Laminar(reynolds), PipeFriction.Churchill(reynolds, 0.0), 1e-5));
        Gen.Double[1e4, 1e6].Sample(reynolds => Assert.InRange(
            PipeFriction.Churchill(reynolds, 1e-4) / PipeFriction.Colebrook(reynolds, 1e-4), 0.97, 1.03));
    }

    [Fact]
    public void More_flow_loses_more_head() =>
        Gen.Select(Gen.Double[0.0, 5e-4], Gen.Double[1e-6, 1e-4]).Sample((flow, more) =>
            Assert.True(Loss(flow + more) > Loss(flow)));

    [Fact]
    public void Depth_and_volume_are_inverse() =>
        Gen.Select(Gen.Double[0.2, 0.6], Gen.Double[0.0, 100.0]).Sample((diameter, litres) =>
            Assert.Equal(litres, Cylinder.VolumeL(diameter, Cylinder.DepthM(diameter, litres)), 1e-9));

    // common practice, no source
    [Theory]
    [InlineData(220.0)]
    [InlineData(240.0)]
    public void A_15_A_circuit_carries_3_3_to_3_6_kW(double volts) =>
        Assert.InRange(Electrical.CircuitWatts(Plugs.RatedA(Plug.Nema515), volts), 3300.0, 3600.0);

    // common practice, no source
    [Fact]
    public void A_pump_of_3_4_m_head_can_load_a_false_bottom_with_about_400_kg()
    {
        var newtons = Hydraulics.FalseBottomLoadN(3.4, Water.DensityKgPerM3(66.0), 0.39);
        Assert.InRange(newtons / Hydraulics.GravityMPerS2, 380.0, 420.0);
    }

    private static double Loss(double flow) => Hydraulics.HoseLossM(
        flow, 0.0127, 2.0, 1.5e-6, 4.0, Water.DensityKgPerM3(66.0), Water.ViscosityPaS(66.0));

    // what a pK is: there the next proton is half given; the other steps are five decades away
    [Theory]
    [InlineData(Acids.PhosphoricPk1, 0.5)]
    [InlineData(Acids.PhosphoricPk2, 1.5)]
    [InlineData(Acids.PhosphoricPk3, 2.5)]
    public void At_each_pk_phosphoric_acid_has_given_half_of_the_next_proton(double ph, double protons) =>
        Assert.Equal(protons, Acids.PhosphoricProtons(ph), 1e-4);

    // at the second pK half of it is carbonate, at the first half is free acid: 1.5 charges become 0.5
    [Fact]
    public void From_half_carbonate_to_half_free_acid_two_thirds_of_the_alkalinity_are_taken() => Assert.Equal(
        2.0 / 3.0 * 100.0 / WaterChemistry.CaCO3MgPerMEq,
        WaterChemistry.AcidMEqPerL(100.0, WaterChemistry.CarbonicPk2, WaterChemistry.CarbonicPk1),
        1e-3);
}
