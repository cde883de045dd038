using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Wording;

/// <summary>What happened, as one line of the log.</summary>
/// <param name="TitleOf">Names a step by its id.</param>
public sealed record EventWords(Brewhouse Brewhouse, Notation Notation, Func<string, string> TitleOf)
{
    public string Of(RunEvent happened, IReadOnlyList<RunEvent> all) => happened switch
    {
        ReadingTaken e => With(Plain(e, all), FigureWords.Moved(e.Moved, Notation)),
        RemedyChosen e => With(Plain(e, all), FigureWords.Moved(e.Moved, Notation)),
        _ => Plain(happened, all),
    };

    private string Plain(RunEvent happened, IReadOnlyList<RunEvent> all) => happened switch
    {
        BatchOpened opened => $"batch opened: {opened.Plan.Recipe.Name}",
        StepStarted e => $"started: {TitleOf(e.StepId)}",
        StepFinished e => $"done: {TitleOf(e.StepId)}",
        StepHeld e => With($"held: {TitleOf(e.StepId)}", e.Reason),
        StepResumed e => $"resumed: {TitleOf(e.StepId)}",
        StepSkipped e => With($"skipped: {TitleOf(e.StepId)}", e.Reason),
        ReadingTaken e => ReadingWords.One(e.Reading, Brewhouse, Notation) + (e.Reading.AsTyped.EndsWith(Probes.ProbeRule.Mark, StringComparison.Ordinal) ? " (probe, by rule)" : ""),
        RemedyChosen e => Lowered(RemedyWords.Title(e.Remedy, Brewhouse, Notation)),
        TroubleReported e => TroubleWords.Happens(e.Trouble, Brewhouse, TitleOf),
        TroubleCleared e => TroubleWords.Over(e.Trouble, Brewhouse, TitleOf),
        BagWeighed e => With(BagWords.Of(e.Bag, Notation), FigureWords.Moved(e.Moved, Notation)),
        NoteWritten e => $"note: {e.Text}",
        RunAborted e => With("aborted", e.Reason),
        AlarmRaised e => $"alarm: {Alarms.Cause(e.Alarm)}".TrimEnd('.'),
        AlarmCleared e => $"alarm over: {AlarmName(e.Alarm, e.About)}",
        AlarmAcknowledged e => $"alarm heard: {AlarmName(e.Alarm, e.About)}",
        AlarmShelved e => $"alarm shelved until {Notation.Clock(e.UntilMs)}: {AlarmName(e.Alarm, e.About)}",
        HandsActed e => $"by hand: {Lowered(MishapWords.Act(e.Act))}",
        FermenterRead e => FermentWords.Of(e.Reading, Notation),
        AdditionMade e => FermentWords.Of(e.Addition),
        DateSet e => $"date set: {FermentWords.Day(e.Item.DueMs, Notation)} for {(e.Item.Name.Length > 0 ? e.Item.Name : (e.Item.Kind == DueKind.Packaging ? "packaging" : "gravity"))}",
        BeerPackaged e => FermentWords.Of(e.Packaging, Notation),
        BeerTasted e => FermentWords.Taste(e.Text, e.Rating),
        Undone e => Undo(e.Seq, all),
        _ => Names.Plainly(happened.GetType().Name),
    };

    /// <summary>The start of a step that one act both starts and ends: only its end is worth telling.</summary>
    public static bool IsDoneAtOnce(RunEvent happened, IReadOnlyList<RunEvent> all) => happened is StepStarted start
        && all.Any(e => e is StepFinished end && end.StepId == start.StepId && end.AtMs == start.AtMs);

    /// <summary>One or two words for the key that would take it back.</summary>
    public static string Short(RunEvent happened) => happened switch
    {
        StepStarted => "start",
        StepFinished => "finish",
        StepHeld => "hold",
        StepResumed => "resume",
        StepSkipped => "skip",
        ReadingTaken e => Names.Kind(e.Reading.Kind),
        RemedyChosen => "remedy",
        TroubleReported or TroubleCleared => "report",
        BagWeighed => "bag",
        NoteWritten => "note",
        RunAborted => "abort",
        FermenterRead => "reading",
        AdditionMade => "addition",
        DateSet => "date",
        BeerPackaged => "packaging",
        BeerTasted => "tasting",
        _ => "",
    };

    public static bool IsOfAlarms(RunEvent happened) => happened is AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved;

    private AlarmWords Alarms => new(Brewhouse, Notation, TitleOf);

    private static string AlarmName(AlarmKind kind, string about) => $"{Names.Alarm(kind)}{(about.Contains('.', StringComparison.Ordinal) ? "" : $", {about}")}";

    private string Undo(int seq, IReadOnlyList<RunEvent> all) =>
        seq >= 0 && seq < all.Count && all[seq] is not Undone ? $"taken back: {Plain(all[seq], all)}" : "taken back";

    private static string With(string text, string more) => more.Length == 0 ? text : $"{text} ({more})";

    private static string Lowered(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
