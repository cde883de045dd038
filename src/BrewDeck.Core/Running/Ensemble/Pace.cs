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

    public static Paced Over(Plan plan, PlantSetting setting)
    {
        var late = ImmutableArray.CreateBuilder<double>(plan.Steps.Length + 1);
        var days = ImmutableArray.CreateBuilder<PlanStep>(plan.Steps.Length);
        var state = plan.Start;
        double end = 0, planned = 0;
        var ends = new Dictionary<string, double>();
        for (var i = 0; i < plan.Steps.Length; i++)
        {
            var step = plan.Steps[i];
            var spec = step.Spec.Kind is StepKind.HotBreak or StepKind.Boil ? Longer(step.Spec) : step.Spec;
            var after = ends.GetValueOrDefault(spec.AfterStepId);
            var start = PlantModel.After(setting, spec, state, after).StartS + BeforeS(spec);
            var outcome = PlantModel.After(setting, spec, state, Math.Max(after, start));
            var lateS = spec == step.Spec ? AfterS(step) + (IsFollowed(plan, setting, i) ? UsualPace.MeanNoticeS : 0) : 0;
            state = Later(setting, spec, outcome, lateS) with { HandsFreeS = Math.Max(outcome.State.HandsFreeS, HandsS(spec, outcome, lateS)) };
            ends[spec.Id] = outcome.EndS + lateS;
            late.Add(outcome.StartS - step.StartS);
            days.Add(step with { After = state });
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
