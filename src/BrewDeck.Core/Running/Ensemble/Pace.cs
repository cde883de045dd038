using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>How long one person takes: every act is noticed late, and readings take their time.</summary>
internal static class Pace
{
    /// <summary>A reading is taken within this long before a step by the clock ends; s.</summary>
    private const double BeforeEndS = 60;

    /// <summary>Steps by the clock whose end has to be noticed before what follows by itself begins: the next in their vessels.</summary>
    public static ImmutableArray<bool> Followed(Plan plan, PlantSetting setting)
    {
        ImmutableArray<ImmutableArray<int>> vessels = [.. plan.Steps.Select(s => PlantModel.VesselsOf(setting, s.Spec))];
        bool IsFollowed(int step) => plan.Steps[step].Spec.Kind.EndsBy() == EndsBy.Clock
            && Enumerable.Range(step + 1, plan.Steps.Length - step - 1).FirstOrDefault(i => vessels[i].Intersect(vessels[step]).Any(), -1) is var next and >= 0
            && plan.Steps[next].Spec.Kind.FollowsOn();
        return [.. Enumerable.Range(0, plan.Steps.Length).Select(IsFollowed)];
    }

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
}
