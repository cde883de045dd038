using BrewDeck.Core.Physics;
using CsCheck;

namespace BrewDeck.Tests.Physics;

public class HeatTests
{
    private static readonly Gen<MashIn> Mash =
        Gen.Select(
            Gen.Double[5.0, 60.0], Gen.Double[0.5, 20.0], Gen.Double[5.0, 35.0], Gen.Double[0.0, 0.1],
            Gen.Double[0.0, 30e3], Gen.Double[5.0, 80.0],
            (waterKg, grainKg, grainC, moisture, vesselJ, vesselC) =>
                new MashIn(waterKg, grainKg, grainC, moisture, vesselJ, vesselC));

    private sealed record MashIn(
        double WaterKg, double GrainKg, double GrainC, double Moisture, double VesselJ, double VesselC);

    [Fact]
    public void Strike_and_mash_temperature_are_inverse() =>
        Gen.Select(Mash, Gen.Double[35.0, 75.0]).Sample((m, target) =>
        {
            var strike = MashHeat.StrikeTempC(m.WaterKg, m.GrainKg, m.GrainC, m.Moisture, target, m.VesselJ, m.VesselC);
            var mash = MashHeat.MashTempC(m.WaterKg, m.GrainKg, m.GrainC, m.Moisture, strike, m.VesselJ, m.VesselC);
            Assert.Equal(target, mash, 1e-8);
        });

    [Fact]
    public void Colder_grain_wants_hotter_strike() =>
        Gen.Select(Mash, Gen.Double[60.0, 75.0], Gen.Double[0.1, 10.0]).Sample((m, target, colder) =>
            Assert.True(
                MashHeat.StrikeTempC(m.WaterKg, m.GrainKg, m.GrainC - colder, m.Moisture, target, m.VesselJ, m.VesselC)
                > MashHeat.StrikeTempC(m.WaterKg, m.GrainKg, m.GrainC, m.Moisture, target, m.VesselJ, m.VesselC)));

    [Fact]
    public void Mashing_in_keeps_the_heat() =>
        Gen.Select(Mash, Gen.Double[60.0, 85.0]).Sample((m, strike) =>
        {
            var mash = MashHeat.MashTempC(m.WaterKg, m.GrainKg, m.GrainC, m.Moisture, strike, m.VesselJ, m.VesselC);
            var given = m.WaterKg * (Water.EnthalpyJPerKg(strike) - Water.EnthalpyJPerKg(mash));
            var taken = m.GrainKg * (MashHeat.MaltSpecificHeatJPerKgK(m.Moisture) * (mash - m.GrainC)
                - MashHeat.SlakingHeatJPerKg(m.Moisture)) + m.VesselJ * (mash - m.VesselC);
            Assert.Equal(given, taken, 1e-2);
        });

    [Fact]
    public void Drier_malt_gives_more_heat() =>
        Gen.Double[0.0, 0.09].Sample(moisture => Assert.True(
            MashHeat.SlakingHeatJPerKg(moisture) > MashHeat.SlakingHeatJPerKg(moisture + 0.01)));

    [Fact]
    public void Infusion_reaches_its_target() =>
        Gen.Select(Gen.Double[20e3, 400e3], Gen.Double[40.0, 70.0], Gen.Double[-10.0, 10.0])
            .Sample((capacity, from, step) =>
            {
                var added = step > 0 ? 98.0 : 10.0;
                var kg = MashHeat.InfusionKg(capacity, from, from + step, added);
                Assert.True(kg >= 0.0);
                Assert.Equal(from + step, MashHeat.AfterInfusionC(capacity, from, kg, added), 1e-8);
            });

    [Fact]
    public void Infusion_says_when_it_cannot() =>
        Assert.Equal(double.PositiveInfinity, MashHeat.InfusionKg(100e3, 60.0, 76.0, 70.0));

    [Fact]
    public void Heating_time_and_temperature_after_are_inverse() =>
        Gen.Select(Gen.Double[10e3, 500e3], Gen.Double[0.0, 20.0], Gen.Double[0.0, 60.0], Gen.Double[0.0, 38.0])
            .Sample((capacity, loss, from, rise) =>
            {
                var seconds = HeatFlow.HeatingTimeS(capacity, loss, 18.0, from, from + rise, 3500.0);
                Assert.Equal(from + rise, HeatFlow.TempAfterC(capacity, loss, 18.0, from, 3500.0, seconds), 1e-7);
            });

    [Fact]
    public void Cooling_time_and_temperature_after_are_inverse() =>
        Gen.Select(Gen.Double[10e3, 500e3], Gen.Double[0.5, 20.0], Gen.Double[30.0, 100.0])
            .Sample((capacity, loss, from) =>
            {
                var seconds = HeatFlow.CoolingTimeS(capacity, loss, 18.0, from, 25.0);
                Assert.Equal(25.0, HeatFlow.TempAfterC(capacity, loss, 18.0, from, 0.0, seconds), 1e-8);
            });

    [Fact]
    public void More_power_is_never_slower() =>
        Gen.Select(
                Gen.Double[10e3, 500e3], Gen.Double[0.0, 60.0], Gen.Double[10.0, 80.0], Gen.Double[0.0, 30.0],
                Gen.Double[0.0, 6e3], Gen.Double[1.0, 3e3])
            .Sample((capacity, loss, from, rise, watts, more) => Assert.True(
                HeatFlow.HeatingTimeS(capacity, loss, 18.0, from, from + rise, watts + more)
                <= HeatFlow.HeatingTimeS(capacity, loss, 18.0, from, from + rise, watts)));

    [Fact]
    public void A_vanishing_loss_makes_no_jump() =>
        Gen.Double[-16.0, -3.0].Sample(exponent =>
        {
            var without = HeatFlow.HeatingTimeS(100e3, 0.0, 18.0, 20.0, 70.0, 3000.0);
            var with = HeatFlow.HeatingTimeS(100e3, Math.Pow(10.0, exponent), 18.0, 20.0, 70.0, 3000.0);
            Assert.Equal(without, with, 0.05);
        });

    [Fact]
    public void Too_little_power_never_arrives() =>
        Assert.Equal(double.PositiveInfinity, HeatFlow.HeatingTimeS(100e3, 20.0, 18.0, 60.0, 99.0, 1500.0));

    [Fact]
    public void Exchangers_lie_between_nothing_and_all() =>
        Gen.Select(Gen.Double[0.01, 10.0], Gen.Double[0.0, 1.0]).Sample((ntu, ratio) =>
        {
            var counter = Exchanger.CounterflowEffectiveness(ntu, ratio);
            var parallel = Exchanger.ParallelEffectiveness(ntu, ratio);
            Assert.InRange(parallel, 0.0, counter + 1e-12);
            Assert.InRange(counter, 0.0, 1.0);
            Assert.InRange(Exchanger.ShellAndTubeEffectiveness(ntu, ratio), parallel - 1e-9, counter + 1e-9);
        });

    [Fact]
    public void Counterflow_has_no_jump_at_equal_capacities() =>
        Gen.Double[0.1, 8.0].Sample(ntu => Assert.Equal(
            Exchanger.CounterflowEffectiveness(ntu, 1.0), Exchanger.CounterflowEffectiveness(ntu, 1.0 - 1e-6), 1e-5));

    [Fact]
    public void Crossflow_transfer_units_are_inverse() =>
        Gen.Select(Gen.Double[0.05, 3.0], Gen.Double[0.05, 1.0]).Sample((ntu, ratio) => Assert.Equal(
            ntu, Exchanger.CrossflowMaxMixedNtu(Exchanger.CrossflowMaxMixedEffectiveness(ntu, ratio), ratio), 1e-8));

    [Fact]
    public void A_chiller_never_undercuts_its_water() =>
        Gen.Select(Gen.Double[50.0, 2000.0], Gen.Double[50.0, 2000.0], Gen.Double[10.0, 5000.0])
            .Sample((wort, water, transfer) => Assert.InRange(
                Chiller.CounterflowOutletC(wort, 98.0, water, 12.0, transfer), 12.0 - 1e-9, 98.0));

    // Murphy and Son's table, as in 04_mash_heat.csv: 0.38 of water dry, 0.42 at 8 % moisture, both rounded
    [Theory]
    [InlineData(0.00, 0.38)]
    [InlineData(0.08, 0.42)]
    public void Malt_takes_the_printed_share_of_the_heat_of_water(double moisture, double relative) =>
        Assert.Equal(relative, MashHeat.MaltSpecificHeatJPerKgK(moisture) / Water.SpecificHeatJPerKgK(15.0), 0.005);

    [Fact]
    public void A_mash_takes_the_heat_of_its_parts() =>
        Gen.Select(Mash, Gen.Double[30.0, 78.0]).Sample((m, celsius) =>
        {
            var whole = MashHeat.MashHeatCapacityJPerK(m.WaterKg, m.GrainKg, m.Moisture, celsius, m.VesselJ);
            var water = m.WaterKg * (Water.EnthalpyJPerKg(celsius + 0.5) - Water.EnthalpyJPerKg(celsius - 0.5));
            var grain = m.GrainKg * MashHeat.MaltSpecificHeatJPerKgK(m.Moisture);
            Assert.Equal(water + grain + m.VesselJ, whole, 1e-3 * whole);
        });

    [Fact]
    public void What_is_already_there_takes_no_time()
    {
        Assert.Equal(0.0, HeatFlow.HeatingTimeS(100e3, 0.0, 18.0, 66.0, 66.0, 0.0));
        Assert.Equal(0.0, HeatFlow.CoolingTimeS(100e3, 0.0, 18.0, 66.0, 66.0));
    }

    [Fact]
    public void Power_arrives_where_it_is_more_than_the_loss_at_the_end() =>
        Gen.Select(Gen.Double[1.0, 20.0], Gen.Double[-10.0, 35.0], Gen.Double[40.0, 95.0]).Sample((loss, ambient, to) =>
        {
            var atTheEnd = loss * (to - ambient);
            Assert.True(double.IsFinite(HeatFlow.HeatingTimeS(100e3, loss, ambient, 36.0, to, 1.001 * atTheEnd)));
            Assert.Equal(double.PositiveInfinity, HeatFlow.HeatingTimeS(100e3, loss, ambient, 36.0, to, 0.999 * atTheEnd));
        });

    [Fact]
    public void Nothing_cools_below_its_room_or_without_loss()
    {
        Assert.Equal(double.PositiveInfinity, HeatFlow.CoolingTimeS(100e3, 5.0, 25.0, 60.0, 20.0));
        Assert.Equal(double.PositiveInfinity, HeatFlow.CoolingTimeS(100e3, 0.0, 18.0, 60.0, 20.0));
    }

    [Fact]
    public void With_one_side_at_one_temperature_all_exchangers_are_one() =>
        Gen.Double[0.01, 10.0].Sample(ntu =>
        {
            var stirred = Exchanger.StirredEffectiveness(ntu);
            Assert.Equal(stirred, Exchanger.CounterflowEffectiveness(ntu, 0.0), 1e-12);
            Assert.Equal(stirred, Exchanger.ParallelEffectiveness(ntu, 0.0), 1e-12);
            Assert.Equal(stirred, Exchanger.CrossflowUnmixedEffectiveness(ntu, 0.0), 1e-12);
            Assert.Equal(stirred, Exchanger.CrossflowMaxMixedEffectiveness(ntu, 0.0), 1e-12);
        });

    [Fact]
    public void The_log_mean_of_equal_ends_is_that_end() =>
        Gen.Select(Gen.Double[0.5, 90.0], Gen.Double[1.0, 1.5]).Sample((end, ratio) =>
        {
            Assert.Equal(end, Exchanger.LogMeanDifferenceK(end, end), 1e-12);
            Assert.InRange(
                Exchanger.LogMeanDifferenceK(end, ratio * end), end * Math.Sqrt(ratio) * (1.0 - 1e-6), end * (1.0 + ratio) / 2.0 * (1.0 + 1e-6));
        });
}
