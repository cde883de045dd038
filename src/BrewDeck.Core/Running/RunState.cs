using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>ISA-88 states of a run and of a step.</summary>
public enum RunStatus
{
    Idle,
    Running,
    Held,
    Complete,
    Skipped,
    Aborted,
}

/// <summary>A step of the live run sheet.</summary>
/// <param name="Spec">As it stands now; remedies change it.</param>
/// <param name="StartedMs">Unix ms; null before.</param>
/// <param name="EndedMs">Unix ms; null before.</param>
/// <param name="HeldMs">Since when it is held; null when it is not.</param>
public sealed record RunStep(
    StepSpec Spec, RunStatus Status, long? StartedMs = null, long? EndedMs = null, long? HeldMs = null)
{
    /// <summary>How long it has been on hold in all, the hold that goes on not counted.</summary>
    public long HeldForMs { get; init; }

    /// <summary>Ended before the temperature or the level that it was for was reached.</summary>
    public bool EndedShort { get; init; }

    public bool Open => Status is RunStatus.Idle or RunStatus.Running or RunStatus.Held;
}

/// <summary>A reading as it was taken.</summary>
/// <param name="StepId">The step that ran in its vessel, else the one in whose time it fell; empty before the first.</param>
/// <param name="Expected">What the model said just before, same unit.</param>
public sealed record TakenReading(int Seq, long AtMs, string StepId, Reading Reading, double Expected, ImmutableArray<Shift> Moved);

public sealed record WrittenNote(long AtMs, string Text);

public sealed record TakenRemedy(int Seq, long AtMs, Remedy Remedy);

/// <summary>Everything the events say: a pure fold, valid after any prefix of them.</summary>
public sealed record RunState
{
    /// <summary>Plan as drawn; null before the batch is opened.</summary>
    public Plan? Plan { get; init; }

    public bool Rehearsed { get; init; }

    /// <summary>What a rehearsal was dealt; null on a real day.</summary>
    public RehearsalCard? Card { get; init; }

    public RunStatus Status { get; init; } = RunStatus.Idle;

    /// <summary>Unix ms of second 0 of the day: when the first step was started; null before.</summary>
    public long? DayStartMs { get; init; }

    public ImmutableArray<RunStep> Steps { get; init; } = [];

    public ImmutableArray<TakenReading> Readings { get; init; } = [];

    public ImmutableArray<TakenRemedy> Remedies { get; init; } = [];

    /// <summary>When a remedy was chosen last, Unix ms; before all time: none was.</summary>
    public long LastChosenMs => Remedies is [.., var last] ? last.AtMs : long.MinValue;

    /// <summary>What the brewer said goes wrong, oldest first.</summary>
    public ImmutableArray<ReportedTrouble> Troubles { get; init; } = [];

    /// <summary>When the brewer last said that a bag is not as planned, Unix ms; null: never.</summary>
    public long? BagMs { get; init; }

    /// <summary>Ingredients of which the scale has told how much there is.</summary>
    public ImmutableHashSet<string> AmountsTold { get; init; } = [];

    public ImmutableArray<WrittenNote> Notes { get; init; } = [];

    /// <summary>What is abnormal and not yet over, oldest first.</summary>
    public ImmutableArray<StandingAlarm> Alarms { get; init; } = [];

    /// <summary>The batch from pitching on.</summary>
    public FermentState Ferment { get; init; } = new();

    /// <summary>Number of events folded.</summary>
    public int Count { get; init; }

    /// <summary>Sequence number of the event that undo would take back; null when there is none.</summary>
    public int? UndoSeq { get; init; }

    public string AbortReason { get; init; } = "";

    /// <summary>It ended where its exercise ends: nobody has given it up.</summary>
    public bool ExerciseOver => Status == RunStatus.Aborted && AbortReason == RunAborted.ExerciseOver;

    /// <summary>The plant as the model has it after all that happened; null before the batch is opened, and in a record that is only read.</summary>
    public LivePlant? Live { get; init; }

    /// <summary>The plant as it is set now; as the plan has it, where none is followed. Only of a batch that has been opened.</summary>
    public PlantSetting Setting() => Live?.Setting ?? PlantSetting.Of(Plan!.Brewhouse, Plan.Choices);

    /// <summary>Unix ms at which the last step of a day ended that is over; null before, and of a day without an ended step.</summary>
    public long? OverMs => Status is RunStatus.Complete or RunStatus.Aborted ? Steps.Max(s => s.EndedMs) : null;

    public RunStep? Step(string id)
    {
        foreach (var step in Steps)
        {
            if (step.Spec.Id == id)
                return step;
        }
        return null;
    }

    public IEnumerable<RunStep> Done(Func<StepSpec, bool> wanted) => Steps.Where(s => s.Status == RunStatus.Complete && wanted(s.Spec));

    public RunStep? LastDone(Func<StepSpec, bool> wanted) => Done(wanted).LastOrDefault();

    /// <summary>Seconds since the start of the day; 0 before it began.</summary>
    public double SecondsAt(long ms) => DayStartMs is { } start ? Math.Max(0, (ms - start) / 1000.0) : 0;

    /// <summary>Unix ms of a second of the day, counted from <paramref name="nowMs"/> while it has not begun.</summary>
    public long MsAt(double seconds, long nowMs) => (DayStartMs ?? nowMs) + (long)Math.Round(1000 * seconds);
}
