using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Nothing comes from nowhere and nothing is lost, step by step through the whole day.</summary>
public class ConservationLaws(ITestOutputHelper said)
{
    private const int Many = 10_000;

    private const double GramKg = 1e-6;

    [Fact]
    public void Water_extract_and_grain_add_up_across_every_step() => EachStep(Mass);

    [Fact]
    public void Extract_is_neither_made_nor_lost_outside_the_lines() => EachStep(Extract);

    /// <summary>Each step with tight lids and with lids as they are: what is missing is steam, and no more than they can let by at the boil.</summary>
    [Fact]
    public void Lids_let_by_steam_and_little_of_it() => EachStep((tight, before, step) =>
    {
        var from = PlantModel.WaitUntil(tight, before, step.StartS);
        var outcome = PlantModel.Run(tight with { LidLeak = 0.03 }, step.Spec, from, step.StartS, double.PositiveInfinity);
        var missing = Ledger.MassKg(PlantModel.Run(tight, step.Spec, from, step.StartS, double.PositiveInfinity).State) - Ledger.MassKg(outcome.State);
        var most = 0.03 * tight.Brewhouse.Vessels.Sum(v => v.SurfaceM2) * Boil.StillSurfaceKgPerM2S(102, tight.AmbientC) * outcome.DurationS;
        Assert.InRange(missing, -GramKg, most + GramKg);
    });

    /// <summary>Boil and cooling apart, where steam and tap water take the heat away.</summary>
    [Fact]
    public void Heat_changes_by_what_is_put_in_the_elements_and_the_room_alone() => EachStep(Heat);

    /// <summary>All three on ten thousand brewhouses and recipes; some minutes long.</summary>
    [Fact(Explicit = true)]
    public void Ten_thousand_days_keep_mass_extract_and_heat()
    {
        var steps = 0;
        EachStep(
            (setting, before, step) =>
            {
                Mass(setting, before, step);
                Extract(setting, before, step);
                Heat(setting, before, step);
                Interlocked.Increment(ref steps);
            },
            Many);
        said.WriteLine($"{Many} days, {steps} steps");
    }

    /// <summary>As the step finds it: wort with its lid off that waits for the hands gives off steam, and grows stronger.</summary>
    private static PlantState Found(PlantSetting setting, PlantState before, PlanStep step) => PlantModel.WaitUntil(setting, before, step.StartS, step.Spec);

    private static void Mass(PlantSetting setting, PlantState before, PlanStep step)
    {
        before = Found(setting, before, step);
        var gained = Ledger.MassKg(step.After) - Ledger.MassKg(before) - Ledger.Charged(setting, step.Spec).Kg;
        switch (step.Spec.Kind)
        {
            case StepKind.HotBreak or StepKind.Boil:
                Assert.InRange(-gained, -GramKg, setting.Habits.EvaporationKgPerH * step.DurationS / 3600 + GramKg);
                break;
            case StepKind.KnockOut or StepKind.Whirlpool or StepKind.Stand:
                // no more than a kettle at the boil would
                var openM2 = setting.OpenShare * setting.Brewhouse[step.Spec.Vessel].SurfaceM2;
                Assert.InRange(-gained, -GramKg, openM2 * Boil.StillSurfaceKgPerM2S(102, setting.AmbientC) * step.DurationS + GramKg);
                break;
            case StepKind.CastOut:
                Assert.Equal(LineKg(setting, before), -gained, GramKg);
                break;
            default:
                Assert.Equal(0, gained, GramKg);
                break;
        }
    }

    private static void Extract(PlantSetting setting, PlantState before, PlanStep step)
    {
        before = Found(setting, before, step);
        var gained = Ledger.ExtractKg(step.After) - Ledger.ExtractKg(before) - Ledger.Charged(setting, step.Spec).ExtractKg;
        var kettle = before.Vessels[setting.IndexOf("kettle")];
        var left = step.Spec.Kind == StepKind.CastOut ? LineKg(setting, before) * kettle.Plato / 100 : 0;
        Assert.Equal(left, -gained, GramKg);
    }

    private static void Heat(PlantSetting setting, PlantState before, PlanStep step)
    {
        if (step.Spec.Kind is StepKind.HotBreak or StepKind.Boil or StepKind.CastOut or StepKind.ChillInKettle or StepKind.Whirlpool or StepKind.Stand or StepKind.KnockOut)
            return;
        var from = PlantModel.WaitUntil(setting, before, step.StartS);
        var outcome = PlantModel.Run(setting, step.Spec, from, step.StartS, double.PositiveInfinity);
        var gained = Ledger.HeatJ(setting, outcome.State) - Ledger.HeatJ(setting, from) - Ledger.Charged(setting, step.Spec).Joules;
        var room = Ledger.MostExchangedJ(setting, from, outcome.State, outcome.DurationS);
        var holds = from.Vessels.Any(v => v.HoldsTemperature) || outcome.State.Vessels.Any(v => v.HoldsTemperature);
        var heats = step.Spec.Kind.Heats() || holds ? Ledger.MostHeatedJ(setting, outcome.DurationS) : 0;
        Assert.InRange(gained, -room - 100, heats + Math.Max(0, room) + 100);
    }

    /// <summary>What is poured together without waiting mixes to the joule.</summary>
    [Fact]
    public void Pouring_together_keeps_heat_and_mass() =>
        Gen.Select(Gen.Double[1, 60], Gen.Double[5, 100], Gen.Double[0, 20], Gen.Double[0, 30], Gen.Double[5, 100]).Sample((water, warm, extract, added, celsius) =>
        {
            var v = new VesselState(0, water, extract, warm, 5, 4);
            var mixed = Contents.Add(v, 7000, added, 0.1 * added, celsius);
            var brought = added * Water.EnthalpyJPerKg(celsius) + 0.1 * added * Contents.ExtractJPerKgK * celsius;
            Assert.Equal(Contents.HeatJ(v, 7000) + brought, Contents.HeatJ(mixed, 7000), 0.01);
            Assert.Equal(v.LiquidKg + 1.1 * added, mixed.LiquidKg, 1e-9);
            Assert.InRange(mixed.TempC, Math.Min(warm, celsius) - 1e-9, Math.Max(warm, celsius) + 1e-9);
        });

    /// <summary>Heating alone: the element's heat is what the contents and the room have got.</summary>
    [Fact]
    public void Heating_takes_as_long_as_its_joules() => EachStep((setting, before, step) =>
    {
        if (step.Spec.Kind is not (StepKind.HeatStrike or StepKind.HeatSparge or StepKind.HeatToBoil) || step.DurationS < 1)
            return;
        var i = setting.IndexOf(step.Spec.Vessel);
        var from = PlantModel.WaitUntil(setting, before, step.StartS).Vessels[i];
        var to = step.After.Vessels[i];
        var stored = Contents.HeatJ(to, setting.HeatCapacityJPerK(i)) - Contents.HeatJ(from, setting.HeatCapacityJPerK(i));
        var given = setting.NetHeatW(i, Contents.StandsL(from), before.PlugAt) * step.DurationS;
        double low = Math.Min(from.TempC, to.TempC) - setting.AmbientC, high = Math.Max(from.TempC, to.TempC) - setting.AmbientC;
        Assert.InRange(given - stored, setting.LossWPerK(i) * low * step.DurationS - 1000, setting.LossWPerK(i) * high * step.DurationS + 1000);
    });

    private static double LineKg(PlantSetting setting, PlantState before)
    {
        var kettle = before.Vessels[setting.IndexOf("kettle")];
        return setting.Habits.LineLossL * SugarSolution.DensityKgPerM3(kettle.Plato, 20) / 1000;
    }

    private static void EachStep(Action<PlantSetting, PlantState, PlanStep> check, int days = 25) => AnyDay.Brewable.Sample(
        p =>
        {
            // tight lids, so that nothing leaves unseen
            var setting = PlantSetting.Of(p.Day.House, p.Day.Choices) with { LidLeak = 0 };
            var before = p.Plan.Start;
            foreach (var step in DayFold.Over(setting, p.Plan.Steps.Select(s => s.Spec), before))
            {
                try
                {
                    check(setting, before, step);
                }
                catch (Exception e)
                {
                    throw new InvalidOperationException($"{step.Spec.Id}: {e.Message}", e);
                }
                before = step.After;
            }
        },
        iter: days);
}
