using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>Everything the deck shows comes from this: the state, what the model says, and one reading of the clock.</summary>
/// <param name="NowMs">Unix ms.</param>
/// <param name="Events">In order; the log shows the last ones.</param>
public sealed record DeckMoment(
    RunState State, Forecast Forecast, RunFocus Focus, IReadOnlyList<RunEvent> Events, long NowMs, Notation Notation)
{
    /// <summary>A step with less than this to go has come to its end; s.</summary>
    private const double NothingS = 1;

    public Plan Plan => State.Plan ?? throw new InvalidOperationException("the batch is not open");

    /// <summary>Unix ms of second 0 of the day; before the first step, the day begins now.</summary>
    public long DayStartMs => State.DayStartMs ?? NowMs;

    /// <summary>Seconds of the day; they end with it.</summary>
    public double NowS => ((State.OverMs is { } over && over < NowMs ? over : NowMs) - DayStartMs) / 1000.0;

    /// <summary>The step that the big key acts on; null when the day is over.</summary>
    public PlanStep? Current => Step(Focus.StepId);

    /// <summary>What is waited for has no end: its heat or cold does not bring it there.</summary>
    public bool NeverGetsThere => Focus.Act == FocusAct.Wait && Current is { NeverGetsThere: true };

    /// <summary>Running and waiting steps as they are expected now. The forecast has what is left to do in a running one, people want the whole.</summary>
    public IEnumerable<PlanStep> Rest => Forecast.Rest.Select(Whole);

    /// <summary>As it is expected now; a step that is over, as it was planned.</summary>
    public PlanStep? Step(string id) => Ahead(id) ?? Plan.Step(id);

    /// <summary>As it is expected now; null: it is over.</summary>
    public PlanStep? Ahead(string id) => Forecast.Step(id) is { } left ? Whole(left) : null;

    public bool IsRunning(PlanStep step) => State.Step(step.Spec.Id) is { Status: RunStatus.Running };

    public string Title(PlanStep step) => StepTitles.Of(step, Plan, Notation);

    public string Title(string id) => Ahead(id) is { } step ? Title(step)
        : State.Step(id) is { } run ? StepTitles.Of(run, Plan, Notation)
        : Names.Sentence(Names.Plainly(id));

    public string Clock(double dayS) => Notation.Clock(DayStartMs + (long)(dayS * 1000));

    private PlanStep Whole(PlanStep left)
    {
        if (State.Step(left.Spec.Id) is not { } run)
            return left;
        // strike liquor is told by what is moved in all, other flows by the level they end at
        var moved = left.Spec.Kind == StepKind.TransferStrike && run.StartedMs is not null
            ? Plan.Step(left.Spec.Id)?.VolumeL ?? left.VolumeL
            : left.VolumeL;
        return Told(left with { Spec = run.Spec, VolumeL = moved }, run);
    }

    /// <summary>
    /// What has come to its end and waits for the brewer is told by the temperature that it was for, unless a remedy changed that: a mash cools
    /// meanwhile, and the target would go with it. Volumes and gravities are today's: nobody tops up to the morning's plan.
    /// </summary>
    private PlanStep Told(PlanStep step, RunStep run)
    {
        if (Plan.Step(run.Spec.Id) is not { } planned || planned.Expected.Length != step.Expected.Length)
            return step;
        if (run.Spec.Kind == StepKind.Fill)
            return WasReadFilling(run.Spec) ? step with { Expected = planned.Expected } : step;
        // of strike liquor the temperature that is wanted is reckoned anew each moment, and does not cool with it
        return run.Spec.Kind != StepKind.HeatStrike && IsAtItsEnd(run.Spec.Id) && planned.Spec.VolumeL == run.Spec.VolumeL
            ? step with { Expected = [.. planned.Expected.Select((e, i) => e.Kind == ReadingKind.Temperature ? e : step.Expected[i])] }
            : step;
    }

    /// <summary>A level that was read in a fill says how much is missing to its target, and does not become the target; one before the last draw is of other liquor.</summary>
    private bool WasReadFilling(StepSpec fill)
    {
        var drawnMs = State.Steps.Where(s => s.Spec.Kind != StepKind.Fill && s.Spec.Kind.EndsBy() == EndsBy.Level && Moves(s.Spec, fill.Vessel)).Max(s => s.EndedMs) ?? long.MinValue;
        return State.Readings.Any(r => r.Reading.Is(ReadingKind.Volume, fill.Vessel) && r.AtMs > drawnMs);
    }

    /// <summary>A flow that by the reckoning has come to its end, while nobody has read its level.</summary>
    public bool IsReckonedOver(PlanStep step) => step.Spec.Kind.EndsBy() == EndsBy.Level && IsAtItsEnd(step.Spec.Id)
        && Unread(step).Any(e => e.Kind == ReadingKind.Volume);

    /// <summary>A level that is where the plan would have it: a flow has changed it, or should have, and nobody has looked since.</summary>
    public bool IsGuessed(string vesselId) => Rest.Any(s => IsReckonedOver(s) && Moves(s.Spec, vesselId))
        || (State.LastDone(s => s.Kind.EndsBy() == EndsBy.Level && Moves(s, vesselId)) is { } done
            && Step(done.Spec.Id) is { } flow && Unread(flow).Any(e => e.Kind == ReadingKind.Volume && e.Vessel == vesselId));

    /// <summary>The vessel has been cleaned: its day is over.</summary>
    public bool IsCleaned(string vesselId) => State.LastDone(s => s.Kind == StepKind.Clean && s.Vessel == vesselId) is not null;

    private bool Moves(StepSpec flow, string vesselId) =>
        flow.Vessel == vesselId || flow.To == vesselId || (flow.SpargeL > 0 && Plan.Brewhouse.HotLiquorTank.Id == vesselId);

    private bool IsAtItsEnd(string id) =>
        State.Step(id) is { Status: RunStatus.Running } && Forecast.Step(id) is { DurationS: < NothingS };

    /// <summary>What is expected of a step as things stand, the target left aside.</summary>
    public ImmutableArray<ExpectedReading> ExpectedNow(PlanStep step) =>
        step.Spec.Kind == StepKind.Fill ? step.Expected : Forecast.Step(step.Spec.Id)?.Expected ?? step.Expected;

    /// <summary>Of what the step that runs or has just ended expects, what nobody has read in its time.</summary>
    public IEnumerable<ExpectedReading> Unread(PlanStep step) => ReadSinceMs(step) is { } since
        ? step.Expected.Where(e => !State.Readings.Any(r => r.AtMs >= since && r.Reading.Is(e.Kind, e.Vessel) && r.Reading.StillRuns != true))
        : step.Expected;

    // the wort of a knock-out is the same from the end of the boil on
    private long? ReadSinceMs(PlanStep step) => step.Spec.Kind == StepKind.KnockOut && State.LastDone(s => s.Kind == StepKind.Boil)?.EndedMs is { } boiled
        ? boiled
        : State.Step(step.Spec.Id)?.StartedMs;
}
