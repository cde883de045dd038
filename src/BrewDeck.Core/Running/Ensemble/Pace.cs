using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <param name="LateS">How much later each step starts, and (last) the day ends; s.</param>
/// <param name="Steps">What each step leaves then.</param>
internal sealed record Paced(ImmutableArray<double> LateS, ImmutableArray<PlanStep> Steps);

/// <summary>The planned day as one person does it: every act is noticed late, and readings take their time.</summary>
internal static class Pace
{
    /// <summary>A reading is taken within this long before a step by the clock ends; s.</summary>
    private const double BeforeEndS = 60;

    /// <param name="begun">A step that has begun as planned: what was before it is over.</param>
    public static Paced Over(Plan plan, PlantSetting setting, int begun = 0) => Over(plan, [.. plan.Steps.Select(s => s.Spec)], _ => setting, begun);

    /// <param name="specs">The steps of the plan as they really go.</param>
    /// <param name="settingOf">The plant in each of them.</param>
    public static Paced Over(Plan plan, IReadOnlyList<StepSpec> specs, Func<int, PlantSetting> settingOf, int begun = 0)
    {
        var late = ImmutableArray.CreateBuilder<double>(plan.Steps.Length + 1);
        var days = ImmutableArray.CreateBuilder<PlanStep>(plan.Steps.Length);
        var state = begun > 0 ? plan.Steps[begun - 1].After : plan.Start;
        double end = 0, planned = 0;
        var ends = new Dictionary<string, double>();
        foreach (var over in plan.Steps.Take(begun))
        {
            late.Add(0);
            days.Add(over);
            ends[over.Spec.Id] = over.EndS;
            end = planned = Math.Max(end, over.EndS);
        }
        for (var i = begun; i < plan.Steps.Length; i++)
        {
            var (step, setting) = (plan.Steps[i], settingOf(i));
            var boils = step.Spec.Kind is StepKind.HotBreak or StepKind.Boil;
            var spec = boils ? Longer(specs[i]) : specs[i];
            var after = ends.GetValueOrDefault(spec.AfterStepId);
            var start = Math.Max(after, PlantModel.EarliestStartS(setting, spec, state)) + (begun > 0 && i == begun ? 0 : BeforeS(spec));
            var outcome = PlantModel.After(setting, spec, state, start);
            var lateS = boils ? 0 : AfterS(step) + (IsFollowed(plan, setting, i) ? UsualPace.MeanNoticeS : 0);
            state = Later(setting, spec, outcome, lateS) with { HandsFreeS = Math.Max(outcome.State.HandsFreeS, HandsS(spec, outcome, lateS)) };
            ends[spec.Id] = outcome.EndS + lateS;
            late.Add(outcome.StartS - step.StartS);
            days.Add(step with { StartS = outcome.StartS, DurationS = outcome.DurationS, After = state });
            (end, planned) = (Math.Max(end, outcome.EndS + lateS), Math.Max(planned, step.EndS));
        }
        late.Add(end - planned);
        return new(late.ToImmutable(), days.ToImmutable());
    }

    /// <summary>What follows by itself does not begin before the end of a step by the clock has been noticed.</summary>
    private static bool IsFollowed(Plan plan, PlantSetting setting, int index)
    {
        var spec = plan.Steps[index].Spec;
        if (spec.Kind.EndsBy() != EndsBy.Clock)
            return false;
        var vessels = PlantModel.VesselsOf(setting, spec);
        return plan.Steps.Skip(index + 1).FirstOrDefault(s => PlantModel.VesselsOf(setting, s.Spec).Intersect(vessels).Any())?.Spec.Kind.FollowsOn() == true;
    }

    /// <summary>A boil goes on until its end has been noticed.</summary>
    private static StepSpec Longer(StepSpec spec) => spec with { Minutes = (spec.Minutes ?? 0) + UsualPace.MeanNoticeS / 60 };

    /// <summary>From when a step could start to when it does.</summary>
    /// <remarks>An addition is what the end of the boil before it is noticed for.</remarks>
    public static double BeforeS(StepSpec spec) => spec.Kind.FollowsOn() || spec.Kind.EndsBy() == EndsBy.Act ? 0 : UsualPace.MeanNoticeS;

    /// <summary>From when a step has reached its end to when it is ended; one by the clock is ended by starting the next.</summary>
    public static double AfterS(PlanStep step)
    {
        var readingsS = step.Expected.Length * UsualPace.MeanMeasureS;
        return step.Spec.Kind.EndsBy() switch
        {
            EndsBy.Act => 0,
            EndsBy.Clock => Math.Max(0, readingsS - BeforeEndS),
            _ => readingsS + UsualPace.MeanNoticeS,
        };
    }

    /// <summary>Variance of what passes until a step is ended after some readings, s².</summary>
    public static double AfterVariance(int readings) =>
        Variance(UsualPace.MeanNoticeS, UsualPace.NoticeLogSd) + readings * Variance(UsualPace.MeanMeasureS, UsualPace.MeasureLogSd);

    private static double Variance(double meanS, double logSd) => meanS * meanS * (Math.Exp(logSd * logSd) - 1);

    /// <summary>What waits goes on cooling, and hops in hot wort on giving bitterness.</summary>
    private static PlantState Later(PlantSetting setting, StepSpec spec, StepOutcome outcome, double lateS)
    {
        var waited = PlantModel.WaitUntil(setting, outcome.State, outcome.EndS + lateS);
        var (vessels, hops) = (outcome.State.Vessels.ToBuilder(), outcome.State.Hops);
        foreach (var i in PlantModel.VesselsOf(setting, spec))
        {
            vessels[i] = waited.Vessels[i] with { AtS = outcome.EndS + lateS };
            hops = i == setting.IndexOf(setting.Brewhouse.Kettle.Id) ? waited.Hops : hops;
        }
        return outcome.State with { Vessels = vessels.ToImmutable(), Hops = hops };
    }

    private static double HandsS(StepSpec spec, StepOutcome outcome, double lateS) =>
        spec.Kind.EndsBy() == EndsBy.Hands ? outcome.EndS + lateS : 0;
}
