using BrewDeck.Core.Physics;
using CsCheck;

namespace BrewDeck.Tests.Physics;

public class WortTests
{
    private static readonly Gen<double> AnyPlato = Gen.Double[4.0, 25.0];

    [Fact]
    public void Boiling_keeps_the_extract() =>
        Gen.Select(Gen.Double[10.0, 100.0], AnyPlato, Gen.Double[0.0, 0.3]).Sample((kg, plato, share) =>
        {
            var after = Boil.PlatoAfter(kg, plato, share * kg);
            Assert.Equal(kg * plato, kg * (1.0 - share) * after, 1e-9);
            Assert.Equal(share * kg, Boil.EvaporatedKgForPlato(kg, plato, after), 1e-9);
        });

    [Fact]
    public void Evaporation_and_power_are_inverse() =>
        Gen.Select(Gen.Double[100.0, 9000.0], Gen.Double[90.0, 101.0]).Sample((watts, boiling) =>
            Assert.Equal(watts, Boil.NetWatts(Boil.EvaporationKgPerS(watts, boiling), boiling), 1e-8));

    [Fact]
    public void Nothing_boils_without_power() => Assert.Equal(0.0, Boil.EvaporationKgPerS(-50.0, 100.0));

    [Fact]
    public void Yield_and_grist_are_inverse() =>
        Gen.Select(Gen.Double[1.0, 20.0], Gen.Double[0.6, 0.85], Gen.Double[10.0, 80.0], AnyPlato)
            .Sample((grainKg, extract, litres, plato) =>
            {
                var brewhouseYield = Extract.BrewhouseYield(grainKg, extract, litres, plato);
                Assert.Equal(grainKg, Extract.GrainKg(Extract.MassKg(litres, plato), extract, brewhouseYield), 1e-9);
            });

    [Fact]
    public void More_sparge_recovers_more_and_never_all() =>
        Gen.Select(Gen.Double[2.0, 40.0], Gen.Double[0.5, 2.0], Gen.Double[0.0, 40.0])
            .Sample((wort, retained, sparge) =>
            {
                var once = Grain.BatchRecoveredFraction(wort, retained);
                var twice = Grain.BatchRecoveredFraction(wort, retained, sparge);
                Assert.InRange(twice, once - 1e-12, 1.0);
            });

    [Fact]
    public void Bitterness_and_hop_mass_are_inverse() =>
        Gen.Select(Gen.Double[1.0, 200.0], Gen.Double[0.02, 0.18], Gen.Double[0.02, 0.4], Gen.Double[5.0, 100.0])
            .Sample((grams, alpha, utilisation, litres) => Assert.Equal(
                grams,
                Bitterness.MassG(Bitterness.Ibu(grams, alpha, utilisation, litres), alpha, utilisation, litres),
                1e-9));

    [Fact]
    public void Longer_boil_and_thinner_wort_give_more_bitterness() =>
        Gen.Select(Gen.Double[1.02, 1.12], Gen.Double[0.0, 110.0], Gen.Double[0.1, 10.0]).Sample((sg, minutes, more) =>
        {
            var here = Bitterness.TinsethUtilisation(sg, minutes);
            Assert.True(Bitterness.TinsethUtilisation(sg, minutes + more) > here);
            Assert.True(Bitterness.TinsethUtilisation(sg + 0.01, minutes) <= here);
            Assert.True(Bitterness.RagerUtilisation(minutes + more) > Bitterness.RagerUtilisation(minutes));
        });

    [Fact]
    public void Isomerising_in_steps_is_isomerising_at_once() =>
        Gen.Select(Gen.Double[70.0, 110.0], Gen.Double[0.0, 60.0], Gen.Double[0.0, 60.0])
            .Sample((celsius, first, second) =>
            {
                var (k1, k2) = (Isomerisation.K1PerMin(celsius), Isomerisation.K2PerMin(celsius));
                var (alpha, iso) = Isomerisation.After(1.0, 0.0, k1, k2, first);
                var stepped = Isomerisation.After(alpha, iso, k1, k2, second);
                var whole = Isomerisation.After(1.0, 0.0, k1, k2, first + second);
                Assert.Equal(whole.Alpha, stepped.Alpha, 1e-12);
                Assert.Equal(whole.Iso, stepped.Iso, 1e-12);
                Assert.True(whole.Alpha + whole.Iso <= 1.0 + 1e-12);
            });

    [Fact]
    public void Hotter_isomerises_faster() =>
        Gen.Double[60.0, 110.0].Sample(celsius =>
        {
            Assert.True(Isomerisation.RelativeRate(celsius + 1.0) > Isomerisation.RelativeRate(celsius));
            Assert.Equal(
                Isomerisation.K1PerMin(celsius) / Isomerisation.K1PerMin(100.0),
                Isomerisation.RelativeRate(celsius),
                1e-9);
        });

    [Fact]
    public void Colour_scales_are_inverse() =>
        Gen.Double[0.5, 80.0].Sample(srm =>
        {
            Assert.Equal(srm, Colour.SrmFromEbc(Colour.EbcFromSrm(srm)), 1e-12);
            Assert.Equal(srm, Colour.MoreyRoundedSrm(Colour.MoreyRoundedMcu(srm)), 1e-9);
            Assert.Equal(srm, Colour.DrueyDanielsSrm(Colour.DrueyDanielsMcu(srm)), 1e-9);
            Assert.Equal(srm, Colour.SrmFromLovibond(Colour.LovibondFromSrm(srm)), 1e-9);
        });

    [Fact]
    public void Balling_gives_back_the_original_extract() =>
        Gen.Select(AnyPlato, Gen.Double[0.4, 0.85]).Sample((original, attenuation) =>
        {
            var real = Fermentation.RealExtract(original, original * (1.0 - attenuation));
            // Balling's two printed forms round the same balance differently
            Assert.Equal(original, Fermentation.OriginalExtract(Fermentation.Abw(original, real), real), 0.01);
        });

    [Fact]
    public void Warm_beer_keeps_less_gas() =>
        Gen.Double[0.0, 24.0].Sample(celsius =>
        {
            Assert.True(Carbonation.ResidualCo2Volumes(celsius + 1.0) < Carbonation.ResidualCo2Volumes(celsius));
            Assert.True(Carbonation.SolubilityVolumes(celsius + 1.0) < Carbonation.SolubilityVolumes(celsius));
        });

    [Fact]
    public void Isomerising_has_no_jump_where_both_rates_are_equal() =>
        Gen.Select(Gen.Double[1e-4, 0.1], Gen.Double[1.0, 120.0]).Sample((rate, minutes) =>
        {
            var equal = Isomerisation.After(1.0, 0.0, rate, rate, minutes);
            var near = Isomerisation.After(1.0, 0.0, rate, rate * (1.0 + 1e-6), minutes);
            Assert.Equal(near.Iso, equal.Iso, 1e-5);
            Assert.True(equal.Iso > 0.0 && equal.Alpha + equal.Iso < 1.0);
        });

    [Fact]
    public void Rager_and_his_hop_mass_are_inverse_and_strong_wort_gives_less() =>
        Gen.Select(Gen.Double[0.5, 5.0], Gen.Double[0.02, 0.18], Gen.Double[1.051, 1.1]).Sample((ounces, alpha, sg) =>
        {
            var adjustment = Bitterness.RagerGravityAdjustment(sg);
            var ibu = Bitterness.RagerIbu(ounces, alpha, 0.25, 5.0, adjustment);
            Assert.Equal(ounces, Bitterness.RagerOunces(ibu, alpha, 0.25, 5.0, adjustment), 1e-9);
            Assert.True(ibu < Bitterness.RagerIbu(ounces, alpha, 0.25, 5.0, 0.0));
        });

    [Fact]
    public void A_still_surface_gives_off_heat_as_its_vapour_pressure_lies_above_the_rooms()
    {
        Gen.Select(Gen.Double[41.0, 99.0], Gen.Double[0.0, 40.0]).Sample((celsius, room) =>
        {
            var watts = Boil.StillSurfaceKgPerM2S(celsius, room) * Water.LatentHeatJPerKg(celsius);
            var more = Boil.StillSurfaceKgPerM2S(100.0, room) * Water.LatentHeatJPerKg(100.0);
            var overRoom = (Water.SaturationPressurePa(celsius) - Water.SaturationPressurePa(room))
                / (Water.SaturationPressurePa(100.0) - Water.SaturationPressurePa(room));
            Assert.True(watts > 0.0);
            Assert.Equal(overRoom, watts / more, 1e-9);
        });
        Assert.Equal(0.0, Boil.StillSurfaceKgPerM2S(10.0, 30.0));
    }

    [Fact]
    public void Boiling_down_ends_at_the_volume_for_the_points() =>
        Gen.Select(Gen.Double[10.0, 100.0], Gen.Double[30.0, 60.0], Gen.Double[1.0, 40.0], Gen.Double[0.5, 12.0])
            .Sample((litres, points, more, perHour) => Assert.Equal(
                Extract.VolumeForPoints(litres, points, points + more),
                litres - perHour * Extract.BoilHoursForPoints(litres, points, points + more, perHour),
                1e-9));

    [Fact]
    public void A_keg_at_one_atmosphere_holds_what_dissolves_and_twice_the_gas_takes_one_more() =>
        Gen.Double[0.0, 30.0].Sample(celsius =>
        {
            var atOne = Carbonation.SolubilityVolumes(celsius);
            var gasPa = Atmosphere.SeaLevelPascals - Water.SaturationPressurePa(celsius);
            Assert.Equal(0.0, Carbonation.KegGaugePa(atOne, celsius), 1e-6);
            Assert.Equal(gasPa, Carbonation.KegGaugePa(2.0 * atOne, celsius), 1e-6);
        });
}
