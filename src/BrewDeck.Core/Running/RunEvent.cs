using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>
/// What happened, in the order in which it happened: the truth of a batch. The place in the list is an event's sequence number.
/// </summary>
/// <param name="AtMs">Unix time, milliseconds, UTC.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(BatchOpened), "batch_opened")]
[JsonDerivedType(typeof(StepStarted), "step_started")]
[JsonDerivedType(typeof(StepFinished), "step_finished")]
[JsonDerivedType(typeof(StepHeld), "step_held")]
[JsonDerivedType(typeof(StepResumed), "step_resumed")]
[JsonDerivedType(typeof(StepSkipped), "step_skipped")]
[JsonDerivedType(typeof(ReadingTaken), "reading_taken")]
[JsonDerivedType(typeof(RemedyChosen), "remedy_chosen")]
[JsonDerivedType(typeof(BagWeighed), "bag_weighed")]
[JsonDerivedType(typeof(NoteWritten), "note_written")]
[JsonDerivedType(typeof(TroubleReported), "trouble_reported")]
[JsonDerivedType(typeof(TroubleCleared), "trouble_cleared")]
[JsonDerivedType(typeof(RunAborted), "run_aborted")]
[JsonDerivedType(typeof(FermenterRead), "fermenter_read")]
[JsonDerivedType(typeof(AdditionMade), "addition_made")]
[JsonDerivedType(typeof(DateSet), "date_set")]
[JsonDerivedType(typeof(BeerPackaged), "beer_packaged")]
[JsonDerivedType(typeof(PackagingEnded), "packaging_ended")]
[JsonDerivedType(typeof(BeerTasted), "beer_tasted")]
[JsonDerivedType(typeof(Undone), "undone")]
[JsonDerivedType(typeof(AlarmRaised), "alarm_raised")]
[JsonDerivedType(typeof(AlarmCleared), "alarm_cleared")]
[JsonDerivedType(typeof(AlarmAcknowledged), "alarm_acknowledged")]
[JsonDerivedType(typeof(AlarmShelved), "alarm_shelved")]
[JsonDerivedType(typeof(HandsActed), "hands_acted")]
[JsonDerivedType(typeof(RehearsalMarked), "rehearsal_marked")]
public abstract record RunEvent(long AtMs)
{
    /// <summary>0 for the first event of an act; those that follow from it in the same act count up. Undo takes back whole acts.</summary>
    public int Part { get; init; }
}

/// <summary>The batch with its plan as drawn; always the first event, and only that.</summary>
public sealed record BatchOpened(long AtMs, Plan Plan, string ProgramVersion, bool Rehearsed) : RunEvent(AtMs)
{
    /// <summary>What a rehearsal was dealt; null on a real day, and on rehearsed days from before there were mishaps.</summary>
    public RehearsalCard? Card { get; init; }

    /// <summary>Who brews, as they call themselves; null: it was not said.</summary>
    public string? Brewer { get; init; }
}

public sealed record StepStarted(long AtMs, string StepId) : RunEvent(AtMs);

public sealed record StepFinished(long AtMs, string StepId) : RunEvent(AtMs)
{
    /// <summary>The brewer says that what it was for was not reached: a temperature, a level. Null: it was, or the step ends by the clock or the hands.</summary>
    public bool? Short { get; init; }
}

public sealed record StepHeld(long AtMs, string StepId, string Reason) : RunEvent(AtMs);

public sealed record StepResumed(long AtMs, string StepId) : RunEvent(AtMs);

public sealed record StepSkipped(long AtMs, string StepId, string Reason) : RunEvent(AtMs);

/// <param name="Moved">What the reading changed, as the brewer was told it: kept so that a replay shows the same words later.</param>
public sealed record ReadingTaken(long AtMs, Reading Reading, ImmutableArray<Shift> Moved) : RunEvent(AtMs)
{
    /// <summary>What the model said just before, same unit; NaN: nothing. Null in records from before it was kept.</summary>
    public double? Expected { get; init; }
}

public sealed record RemedyChosen(long AtMs, Remedy Remedy, ImmutableArray<Shift> Moved) : RunEvent(AtMs);

/// <summary>The brewer says that something goes wrong which shows in no reading.</summary>
public sealed record TroubleReported(long AtMs, Trouble Trouble) : RunEvent(AtMs);

/// <summary>It is over: the breaker is in again, the wort runs.</summary>
public sealed record TroubleCleared(long AtMs, Trouble Trouble) : RunEvent(AtMs);

/// <summary>An ingredient is not as planned: a short bag, or what its label says.</summary>
/// <param name="Moved">What it changed, as the brewer was told.</param>
public sealed record BagWeighed(long AtMs, Bag Bag, ImmutableArray<Shift> Moved) : RunEvent(AtMs);

public sealed record NoteWritten(long AtMs, string Text) : RunEvent(AtMs);

public sealed record RunAborted(long AtMs, string Reason) : RunEvent(AtMs)
{
    /// <summary>Reason where nobody has given anything up: an exercise that is of the day's beginning has come to its end.</summary>
    public const string ExerciseOver = "the exercise is over";

    /// <summary>Reason of a day without a screen that did not come to its end.</summary>
    public const string OutOfTime = "rehearsal_out_of_time";
}

/// <summary>A reading at the fermenter after pitching.</summary>
public sealed record FermenterRead(long AtMs, FermenterReading Reading) : RunEvent(AtMs);

/// <summary>Dry hops or something else went into the fermenter.</summary>
public sealed record AdditionMade(long AtMs, DatedAddition Addition) : RunEvent(AtMs);

/// <summary>The brewer has set the date of something that is to be done after the day.</summary>
public sealed record DateSet(long AtMs, DueItem Item) : RunEvent(AtMs);

/// <summary>A lot of the batch: bottles or a keg.</summary>
public sealed record BeerPackaged(long AtMs, Packaging Packaging) : RunEvent(AtMs)
{
    /// <summary>What the fermenter then still held, beer and lees, L; null in records from before a batch had several lots: that was all.</summary>
    public double? LeftL { get; init; }
}

/// <summary>The brewer says that nothing more is packaged: the rest is lees.</summary>
public sealed record PackagingEnded(long AtMs) : RunEvent(AtMs);

/// <param name="Rating">1 to 5; null: none given.</param>
public sealed record BeerTasted(long AtMs, string Text, int? Rating) : RunEvent(AtMs);

/// <summary>Takes back the act that begins with that sequence number; the original stays in the log.</summary>
public sealed record Undone(long AtMs, int Seq) : RunEvent(AtMs);

/// <summary>Something is abnormal, as it was found. Alarm events are no acts: undo neither takes them back nor meets them.</summary>
public sealed record AlarmRaised(long AtMs, Alarm Alarm) : RunEvent(AtMs);

/// <summary>It is over.</summary>
public sealed record AlarmCleared(long AtMs, AlarmKind Alarm, string About) : RunEvent(AtMs);

/// <summary>The brewer has heard it.</summary>
public sealed record AlarmAcknowledged(long AtMs, AlarmKind Alarm, string About) : RunEvent(AtMs);

/// <summary>Silent and out of sight until then, Unix ms.</summary>
public sealed record AlarmShelved(long AtMs, AlarmKind Alarm, string About, long UntilMs) : RunEvent(AtMs);

/// <summary>Something beside the run itself that only a rehearsed day has. It changes nothing that the model knows, and is no act: undo neither takes it back nor meets it.</summary>
public abstract record RehearsalEvent(long AtMs) : RunEvent(AtMs);

/// <summary>The hands did something at the plant that no step and no remedy has.</summary>
public sealed record HandsActed(long AtMs, HandAct Act) : RehearsalEvent(AtMs);

/// <summary>Who does the work from here on, or that the laptop went off: the debrief and a rehearsal that is taken up again need to know.</summary>
public sealed record RehearsalMarked(long AtMs, RehearsalMark Mark) : RehearsalEvent(AtMs);

/// <summary>A figure of the outlook before and after, in its canonical unit.</summary>
/// <param name="Figure">Stable name, snake_case with its unit, such as <c>original_gravity_sg</c>.</param>
public sealed record Shift(string Figure, double Before, double After)
{
    /// <summary>80 % band of <see cref="After"/>; null where no spread is known.</summary>
    public double? Low { get; init; }

    public double? High { get; init; }
}
