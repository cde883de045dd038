using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>How long one person takes for the steps of a plan: every act is noticed late, and readings take their time.</summary>
internal sealed class Pace
{
    /// <summary>A reading is taken within this long before a step by the clock ends; s.</summary>
    private const double BeforeEndS = 60;

    private readonly ImmutableArray<double> _beforeS;
    private readonly ImmutableArray<double> _afterS;

    public Pace(Plan plan, PlantSetting setting)
    {
        ImmutableArray<ImmutableArray<int>> vessels = [.. plan.Steps.Select(s => PlantModel.VesselsOf(setting, s.Spec))];
        StepKind? Neighbour(int of, IEnumerable<int> steps) =>
            steps.Where(i => vessels[i].Intersect(vessels[of]).Any()).Select(i => (StepKind?)plan.Steps[i].Spec.Kind).FirstOrDefault();
        var all = Enumerable.Range(0, plan.Steps.Length);
        _beforeS = [.. all.Select(i => BeforeS(plan.Steps[i].Spec.Kind, Neighbour(i, Enumerable.Range(0, i).Reverse())))];
        _afterS = [.. all.Select(i => AfterS(plan.Steps[i], Neighbour(i, all.Skip(i + 1))))];
    }

    /// <summary>From when a step of the plan could start to when it does.</summary>
    public double BeforeS(int step) => _beforeS[step];

    /// <summary>From when a step of the plan has reached its end to when it is ended; one that hands over is ended by starting the next.</summary>
    public double AfterS(int step) => _afterS[step];

    /// <remarks>An addition is what the end of the boil before it is noticed for; the fall of the foam is noticed for itself.</remarks>
    private static double BeforeS(StepKind kind, StepKind? before) =>
        kind.FollowsOn() || (kind.EndsBy() == EndsBy.Act && before?.HandsOver() is not false) ? 0 : UsualPace.MeanNoticeS;

    private static double AfterS(PlanStep step, StepKind? next)
    {
        var readingsS = step.Expected.Length * UsualPace.MeanMeasureS;
        return step.Spec.Kind.EndsBy() switch
        {
            EndsBy.Act => 0,
            EndsBy.Clock => Math.Max(0, readingsS - BeforeEndS) + (next?.FollowsOn() is true ? UsualPace.MeanNoticeS : 0),
            _ => readingsS + UsualPace.MeanNoticeS,
        };
    }

    /// <summary>Variance of what passes until a step is ended after some readings, s²: by chance, and because people differ.</summary>
    public static double AfterVariance(int readings) =>
        Variance(UsualPace.MeanNoticeS, UsualPace.NoticeLogSd) + readings * Variance(UsualPace.MeanMeasureS, UsualPace.MeasureLogSd)
        + Math.Pow(UsualSpreads.Pace.Sd * (UsualPace.MeanNoticeS + readings * UsualPace.MeanMeasureS), 2);

    private static double Variance(double meanS, double logSd) => meanS * meanS * (Math.Exp(logSd * logSd) - 1);
}
