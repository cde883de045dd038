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
        BatchOpened opened => Notation.Text($"batch opened: {opened.Plan.Recipe.Name}"),
        StepStarted e => Notation.Text($"started: {TitleOf(e.StepId)}"),
        StepFinished { Short: true } e => Notation.Text($"ended short: {TitleOf(e.StepId)}"),
        StepFinished e => Notation.Text($"done: {TitleOf(e.StepId)}"),
        StepHeld e => With(Notation.Text($"held: {TitleOf(e.StepId)}"), Notation.Name(e.Reason)),
        StepResumed e => Notation.Text($"resumed: {TitleOf(e.StepId)}"),
        StepSkipped e => With(Notation.Text($"skipped: {TitleOf(e.StepId)}"), e.Reason),
        ReadingTaken e => ReadingWords.One(e.Reading, Brewhouse, Notation) + (Probes.ProbeRule.Took(e.Reading) ? Notation.Text(" (probe, by rule)") : ""),
        RemedyChosen e => Notation.Lowered(RemedyWords.Title(e.Remedy, Brewhouse, Notation)),
        TroubleReported e => TroubleWords.Happens(e.Trouble, Brewhouse, TitleOf, Notation),
        TroubleCleared e => TroubleWords.Over(e.Trouble, Brewhouse, TitleOf, Notation),
        BagWeighed e => With(BagWords.Of(e.Bag, Notation), FigureWords.Moved(e.Moved, Notation)),
        NoteWritten e => Notation.Text($"note: {e.Text}"),
        RunAborted { Reason: RunAborted.ExerciseOver } e => AbortWords.Reason(e.Reason, Notation),
        RunAborted e => With(Notation.Text("aborted"), AbortWords.Reason(e.Reason, Notation)),
        AlarmRaised e => Notation.Text($"alarm: {Alarms.Cause(e.Alarm)}").TrimEnd('.'),
        AlarmCleared e => Notation.Text($"alarm over: {AlarmName(e.Alarm, e.About)}"),
        AlarmAcknowledged e => Notation.Text($"alarm heard: {AlarmName(e.Alarm, e.About)}"),
        AlarmShelved e => Notation.Text($"alarm shelved until {Notation.Clock(e.UntilMs)}: {AlarmName(e.Alarm, e.About)}"),
        HandsActed e => Notation.Text($"by hand: {Notation.Lowered(MishapWords.Act(e.Act, Notation))}"),
        RehearsalMarked e => RehearsalWords.Of(e.Mark, Notation),
        FermenterRead { Reading.TakenMs: { } taken } e => With(FermentWords.Of(e.Reading, Notation), Notation.Text($"read {FermentWords.Day(taken, Notation)}")),
        FermenterRead e => FermentWords.Of(e.Reading, Notation),
        AdditionMade e => FermentWords.Of(e.Addition, Notation),
        DateSet e => Notation.Text($"date set: {FermentWords.Day(e.Item.DueMs, Notation)} for {(e.Item.Name.Length > 0 ? e.Item.Name : (e.Item.Kind == DueKind.Packaging ? Notation.Text("packaging") : Notation.Text("gravity")))}"),
        BeerPackaged e => FermentWords.Of(e.Packaging, Notation),
        PackagingEnded => FermentWords.RestIsLees(Notation),
        BeerTasted e => FermentWords.Taste(e.Text, e.Rating, Notation),
        Undone e => Undo(e.Seq, all),
        _ => Names.Plainly(happened.GetType().Name),
    };

    /// <summary>The start of a step that one act both starts and ends: only its end is worth telling.</summary>
    public static bool IsDoneAtOnce(RunEvent happened, IReadOnlyList<RunEvent> all) => happened is StepStarted start
        && all.Any(e => e is StepFinished end && end.StepId == start.StepId && end.AtMs == start.AtMs);

    /// <summary>A few words for the key that would take it back.</summary>
    public string Short(RunEvent happened) => happened switch
    {
        StepStarted e => Notation.Text($"start of {Brief(e.StepId)}"),
        StepFinished e => Notation.Text($"end of {Brief(e.StepId)}"),
        StepHeld e => Notation.Text($"hold of {Brief(e.StepId)}"),
        StepResumed e => Notation.Text($"going on with {Brief(e.StepId)}"),
        StepSkipped e => Notation.Text($"skipping {Brief(e.StepId)}"),
        ReadingTaken e => Names.Kind(e.Reading.Kind, Notation),
        RemedyChosen => Notation.Text("remedy"),
        TroubleReported or TroubleCleared => Notation.Text("report"),
        BagWeighed => Notation.Text("bag"),
        NoteWritten => Notation.Text("note"),
        RunAborted => Notation.Text("abort"),
        FermenterRead => Notation.Text("reading"),
        AdditionMade => Notation.Text("addition"),
        DateSet => Notation.Text("date"),
        BeerPackaged or PackagingEnded => Notation.Text("packaging"),
        BeerTasted => Notation.Text("tasting"),
        _ => "",
    };

    public static bool IsOfAlarms(RunEvent happened) => happened is AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved;

    private AlarmWords Alarms => new(Brewhouse, Notation, TitleOf);

    /// <summary>The bottom line has room for so much of a step's title.</summary>
    private const int BriefLength = 12;

    private string Brief(string stepId)
    {
        var title = TitleOf(stepId);
        return title.Length <= BriefLength ? title : title[..Math.Max(1, title.LastIndexOf(' ', BriefLength - 1))] + "…";
    }

    // a step is not named: the line beside it is about the same one
    private string AlarmName(AlarmKind kind, string about) => kind switch
    {
        AlarmKind.LimitAhead => $"{Names.Alarm(kind, Notation)}, {Notation.Lowered(LimitWords.Name(about, Notation))}",
        AlarmKind.VesselTooFull or AlarmKind.ElementsDry => $"{Names.Alarm(kind, Notation)}, {Names.Vessel(Brewhouse, about, Notation)}",
        AlarmKind.CircuitOverloaded => $"{Names.Alarm(kind, Notation)}, {about}",
        _ => Names.Alarm(kind, Notation),
    };

    private string Undo(int seq, IReadOnlyList<RunEvent> all) =>
        seq >= 0 && seq < all.Count && all[seq] is not Undone ? Notation.Text($"taken back: {Plain(all[seq], all)}") : Notation.Text("taken back");

    private static string With(string text, string more) => more.Length == 0 ? text : $"{text} ({more})";
}
