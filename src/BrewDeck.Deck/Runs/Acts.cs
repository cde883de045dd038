using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>Does a command and says what became of it; keys and the stand-in brewer come this way.</summary>
internal sealed class Acts(Shell shell, BrewDay day)
{
    /// <summary>Asking again about an implausible reading is left to the caller.</summary>
    public Decision Do(RunCommand command, DateTimeOffset now)
    {
        var before = day.Focus(now);
        var count = day.Events.Count;
        // what is left out or ended early costs something, and nobody reads the outlook just then
        var outlook = command is RunCommand.Skip || (command is RunCommand.Finish && before.Act == FocusAct.Wait) ? day.Forecast(now) : null;
        var outcome = day.Do(command, now);
        if (day.Focus(now).StepId != before.StepId)
            shell.Guard.LeaveAlone(shell.Wall(now));
        if (outcome.Trouble is { } trouble)
        {
            shell.Say(shell.Notation.Text($"Not written, so it does not count: {trouble}"), Tone.Alarm);
            return new Decision.Refused(DecisionCode.StoreTrouble);
        }
        if (outcome.Decision is Decision.Refused refused)
            shell.Say(DecisionWords.Refused(refused.Code, shell.Notation), refused.Code == DecisionCode.NoAlarm ? Tone.Normal : Tone.Warning);
        else if (outcome.Decision is Decision.Accepted && day.Events.Count > count)
            Tell([.. day.Events.Skip(count)], now, outlook is null ? [] : Shifts.Between(outlook, day.Forecast(now)));
        return outcome.Decision;
    }

    private void Tell(IReadOnlyList<RunEvent> happened, DateTimeOffset now, ImmutableArray<Shift> moved)
    {
        switch (happened[0])
        {
            case ReadingTaken taken:
                TellReading(taken, now);
                break;
            case BagWeighed weighed:
                TellBag(weighed, now);
                break;
            case TroubleReported reported:
                TellTrouble(reported.Trouble, now);
                break;
            default:
                TellAny(happened, now, moved);
                break;
        }
    }

    private void TellAny(IReadOnlyList<RunEvent> happened, DateTimeOffset now, ImmutableArray<Shift> moved)
    {
        var words = Words(now);
        var told = happened.Where(e => !EventWords.IsDoneAtOnce(e, happened)).Select(e => words.Of(e, day.Events));
        if (FigureWords.Briefly(moved.Where(s => s.Figure != "finish_ms"), shell.Notation) is { Length: > 0 } costs)
        {
            shell.Say($"{Names.Sentence(string.Join("; ", told.Append(costs)))}{WaysBack(now)}.", Tone.Warning);
            return;
        }
        var off = BeginsRest(happened) && !day.Remedies(now).IsEmpty;
        shell.Say(
            Names.Sentence(string.Join("; ", told)) + (off ? shell.Notation.Text(". The mash is off: r shows ways back.") : "." + Unread(happened, now) + ToTell(happened)),
            off ? Tone.Warning : Tone.Normal);
    }

    /// <summary>The kettle is filled or emptied once: what of it was not read, digits still take.</summary>
    private string Unread(IReadOnlyList<RunEvent> happened, DateTimeOffset now)
    {
        var moment = day.Moment(now, shell.Notation);
        var unread = happened.OfType<StepFinished>().Select(e => moment.Step(e.StepId))
            .Where(s => s?.Spec.Kind is StepKind.Lauter or StepKind.RunOff or StepKind.KnockOut)
            .SelectMany(s => moment.Unread(s!)).Select(e => ReadingWords.What(e.Kind, e.Vessel, day.Plan.Brewhouse, shell.Notation)).ToList();
        return unread.Count == 0 ? "" : shell.Notation.Text($" Not read yet: {string.Join(", ", unread)}; a digit takes it.");
    }

    /// <summary>What hands have done at the plant the deck does not know of: how it is told.</summary>
    private string ToTell(IReadOnlyList<RunEvent> happened) => happened[0] switch
    {
        HandsActed { Act: HandAct.TurnDown } => shell.Notation.Text(" Then read the kettle (t): what went over is gone."),
        RehearsalMarked { Mark: RehearsalMark.OwnHands } => shell.Notation.Text(" Dials show the instruments, each look a little otherwise; gauges what is reckoned."),
        HandsActed when Possible.Standing(day.State).Any() => shell.Notation.Text(" f reports when it is over."),
        _ => "",
    };

    // read while doughing in, a mash can be mended only once it rests
    private bool BeginsRest(IReadOnlyList<RunEvent> happened) =>
        happened.OfType<StepStarted>().Any(e => day.State.Step(e.StepId)?.Spec.Kind == StepKind.Rest);

    private void TellReading(ReadingTaken taken, DateTimeOffset now)
    {
        var offers = day.Remedies(now);
        var counted = Counted(taken.Reading, now);
        string[] parts =
        [
            ReadingWords.One(taken.Reading, day.Plan.Brewhouse, shell.Notation),
            Filled(taken.Reading, now) ?? Expected(taken.Reading, offers),
            counted,
            offers.IsEmpty ? "" : shell.Notation.Text("r shows ways back"),
        ];
        string With(int figures) =>
            Names.Sentence(string.Join("; ", parts.Append(FigureWords.Briefly(taken.Moved, shell.Notation, figures)).Where(p => p.Length > 0))) + ".";
        // of what it moves as much as there is room for; the outlook has the rest
        var figures = FigureWords.Told;
        while (figures > 0 && With(figures).Length > TwoRows)
            figures--;
        shell.Say(With(figures), offers.IsEmpty ? Tone.Normal : Tone.Warning);
    }

    /// <summary>Two rows of 80 columns, what their margins and the wrapping at words take left aside.</summary>
    private const int TwoRows = 144;

    private void TellBag(BagWeighed weighed, DateTimeOffset now)
    {
        var moved = FigureWords.Briefly(weighed.Moved, shell.Notation);
        shell.Say($"{Names.Sentence(BagWords.Of(weighed.Bag, shell.Notation))}: {(moved.Length > 0 ? moved : shell.Notation.Text("nothing moves that you would notice"))}{WaysBack(now)}.", moved.Length > 0 ? Tone.Warning : Tone.Normal);
    }

    private string WaysBack(DateTimeOffset now) => day.Remedies(now).IsEmpty ? "" : shell.Notation.Text("; r shows ways back");

    private void TellTrouble(Trouble trouble, DateTimeOffset now)
    {
        var ways = day.Remedies(now).IsEmpty ? "" : shell.Notation.Text(" r: ways on.");
        var over = trouble.CanEnd ? shell.Notation.Text(" f once it is over.") : "";
        shell.Say($"{Names.Sentence(TroubleWords.Happens(trouble, day.Plan.Brewhouse, Words(now).TitleOf, shell.Notation))}. {TroubleWords.AtOnce(trouble, day.Plan, shell.Notation)}{over}{ways}", Tone.Warning);
    }

    /// <summary>A level in a fill: not what the tap should have given by now is of use, but what it still has to give.</summary>
    private string? Filled(Reading reading, DateTimeOffset now)
    {
        if (reading.Kind != ReadingKind.Volume || Filling.In(day.State, reading.Vessel) is not { } fill)
            return null;
        var left = day.Forecast(now).Step(fill.Spec.Id)?.Spec.VolumeL ?? 0;
        return left > 0 ? shell.Notation.Text($"{shell.Notation.Volume(left)} still to fill") : shell.Notation.Text("filled");
    }

    // the day may be off plan by what was known before
    private string Expected(Reading reading, ImmutableArray<Remedy> offers)
    {
        if (day.State.Readings is not [.., var last] || last.Reading != reading)
            return "";
        var verdict = Verdict.Of(day.State, last, shell.Notation);
        if (offers.IsEmpty || verdict != ReadingWords.AsExpected(shell.Notation))
            return verdict;
        return RemedyWords.OffPlan(offers, shell.Notation, most: 1) is { Length: > 0 } off ? shell.Notation.Text($"as expected; still off plan: {off}") : shell.Notation.Text("as expected, and still off plan");
    }

    /// <summary>A reading is weighed with what was expected: what the gauge shows of it, where that reads otherwise.</summary>
    private string Counted(Reading reading, DateTimeOffset now)
    {
        if (day.State.Live is not { } live || live.Setting.IndexOf(reading.Vessel) is not (>= 0 and var index))
            return "";
        var counted = VesselGauges.Reads(reading, day.Forecast(now).Now.Vessels[index]);
        return double.IsFinite(counted) && !ReadingWords.IsNear(reading.Kind, reading.Value, counted)
            ? shell.Notation.Text($"the deck weighs both and goes on with {ReadingWords.Value(reading.Kind, counted, shell.Notation)}")
            : "";
    }

    private EventWords Words(DateTimeOffset now) => new(day.Plan.Brewhouse, shell.Notation, day.Moment(now, shell.Notation).Title);
}
