using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>The planned day as one person does it, step after step, at the pace of <see cref="Pace"/>.</summary>
internal sealed class PacedDay
{
    private readonly Plan _plan;
    private readonly Pace _pace;
    private readonly List<PlanStep> _steps;
    private readonly List<double> _endsS;
    private readonly int _begun;
    private PlantState _state;
    private double _endS;
    private double _plannedS;

    /// <param name="begun">A step that has begun as planned: what was before it is over.</param>
    public PacedDay(Plan plan, Pace pace, int begun = 0)
    {
        (_plan, _pace, _begun) = (plan, pace, begun);
        _steps = [.. plan.Steps.Take(begun)];
        _endsS = [.. _steps.Select(s => s.EndS)];
        _state = begun > 0 ? plan.Steps[begun - 1].After : plan.Start;
        _endS = _plannedS = _steps.Select(s => s.EndS).DefaultIfEmpty().Max();
    }

    private PacedDay(PacedDay other, int steps)
        : this(other._plan, other._pace)
    {
        for (var i = 0; i < steps; i++)
            Done(other._steps[i], other._endsS[i]);
    }

    /// <summary>The steps done so far, and what each leaves.</summary>
    public ImmutableArray<PlanStep> Steps => [.. _steps];

    /// <summary>How much later than planned they end, s.</summary>
    public double LateS => _endS - _plannedS;

    /// <summary>The same day, from its beginning, after so many steps: to go on in another way.</summary>
    public PacedDay After(int steps) => new(this, steps);

    /// <summary>Does the next steps of the plan.</summary>
    /// <param name="specs">As they really go.</param>
    /// <param name="setting">The plant in them.</param>
    public PacedDay Go(IEnumerable<StepSpec> specs, PlantSetting setting)
    {
        foreach (var spec in specs)
            Go(spec, setting);
        return this;
    }

    private void Go(StepSpec really, PlantSetting setting)
    {
        var at = _steps.Count;
        var step = _plan.Steps[at];
        var boils = step.Spec.Kind is StepKind.HotBreak or StepKind.Boil;
        var spec = boils ? Longer(really, setting.Pace * UsualPace.MeanNoticeS) : really;
        var after = EndOf(spec.AfterStepId);
        var start = Math.Max(after, PlantModel.EarliestStartS(setting, spec, _state)) + (_begun > 0 && at == _begun ? 0 : setting.Pace * _pace.BeforeS(at));
        var outcome = PlantModel.After(setting, spec, _state, start);
        var lateS = boils ? 0 : setting.Pace * _pace.AfterS(at);
        var state = Later(setting, spec, outcome, lateS) with { HandsFreeS = Math.Max(outcome.State.HandsFreeS, HandsS(spec, outcome, lateS)) };
        Done(step with { StartS = outcome.StartS, DurationS = outcome.DurationS, After = state }, outcome.EndS + lateS);
    }

    private void Done(PlanStep step, double endS)
    {
        (_endS, _plannedS) = (Math.Max(_endS, endS), Math.Max(_plannedS, _plan.Steps[_steps.Count].EndS));
        _state = step.After;
        _steps.Add(step);
        _endsS.Add(endS);
    }

    /// <summary>When a step was noticed to be over; 0 without one.</summary>
    private double EndOf(string id) => id.Length > 0 && _steps.FindLastIndex(s => s.Spec.Id == id) is >= 0 and var at ? _endsS[at] : 0;

    /// <summary>A boil goes on until its end has been noticed.</summary>
    private static StepSpec Longer(StepSpec spec, double seconds) => spec with { Minutes = (spec.Minutes ?? 0) + seconds / 60 };

    /// <summary>What waits goes on cooling, and hops in hot wort on giving bitterness.</summary>
    private static PlantState Later(PlantSetting setting, StepSpec spec, StepOutcome outcome, double lateS) =>
        lateS > 0 ? PlantModel.WaitUntil(setting, outcome.State, outcome.EndS + lateS, spec) : outcome.State;

    private static double HandsS(StepSpec spec, StepOutcome outcome, double lateS) =>
        spec.Kind.EndsBy() == EndsBy.Hands ? outcome.EndS + lateS : 0;
}
