using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The running brew day.</summary>
internal sealed class DeckPage(Shell shell, BrewDay day) : Page(shell)
{
    private readonly Acts _acts = new(shell, day);

    public override KeyContext Context =>
        Shell.Ports.Rehearsal is null ? KeyContext.Deck : KeyContext.Deck | KeyContext.Rehearsal;

    public Brewhouse Brewhouse => day.Plan.Brewhouse;

    public bool HasDepth(string vessel) => Brewhouse.Vessels.Any(v => v.Id == vessel && v.DiameterM is not null);

    /// <summary>Whether a reading would be taken without asking.</summary>
    public bool Believes(Reading reading, DateTimeOffset now) => RunDesk.Believes(day.State, reading, day.Ms(now));

    /// <summary>The countdown's next second; in a fast rehearsal at most four times a second of the wall.</summary>
    public override DateTimeOffset? NextTick(DateTimeOffset now)
    {
        if (day.Over || Shell.Ports.Rehearsal is { Paused: true })
            return null;
        var left = (day.Focus(now).DueMs - day.Ms(now)) % 1000;
        return now.AddMilliseconds((left > 0 ? left : 1000 + left) + Math.Max(0, (Shell.Pace / 4 - 1) * 1000));
    }

    public DeckMoment Moment(DateTimeOffset now) => day.Moment(now, Shell.Notation);

    protected override Screen Compose(DateTimeOffset now) =>
        Compose(Moment(now));

    private DeckScreen Compose(DeckMoment moment)
    {
        ImmutableArray<KeyHint> heard = AlarmLines.Unheard(moment).Count > 0 ? [new KeyHint("a", moment.Notation.Text("heard"))] : [];
        return DeckComposer.Of(moment, [.. heard, .. Hints(moment).Where(h => h.Key != "u" || day.State.UndoSeq is not null).Select(h => Precise(h, moment))], RehearsalWords.Of(Shell.Ports.Rehearsal, moment.Notation)) with
        {
            Alarms = AlarmLines.Of(moment, Shell.Pace),
            Plant = PlantLines.Of(Shell.Ports.Rehearsal, Brewhouse, moment.Current?.Spec.Cautions ?? Cautions.None, Shell.Notation),
        };
    }

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.GoOn:
                new GoOnKey(Shell, this, day, _acts).Strike(now);
                break;
            case Command.Reading:
                new ReadingKeys(Shell, this, _acts).Type(stroke.Character, now);
                break;
            case Command.OtherReading:
                new ReadingKeys(Shell, this, _acts).Pick(now);
                break;
            case Command.Remedies:
                new RemedyKey(Shell, this, day, _acts).Strike(now);
                break;
            case Command.Trouble:
                new TroubleKey(Shell, this, day, _acts).Strike(now);
                break;
            case Command.Weigh:
                new BagKey(Shell, this, day, _acts).Strike();
                break;
            case Command.Undo:
                _acts.Do(new RunCommand.Undo(), now);
                break;
            case Command.Acknowledge:
                _acts.Do(new RunCommand.Acknowledge(), now);
                break;
            case Command.Alarms:
                Shell.Push(new AlarmsPage(Shell, day));
                break;
            case Command.Hold:
                Hold(now);
                break;
            case Command.Note or Command.Skip or Command.Abort:
                new TypedKeys(Shell, this, day, _acts).Ask(command, now);
                break;
            case Command.RunSheet:
                Shell.Push(new RunSheetPage(Shell, day));
                break;
            case Command.Charts:
                Shell.Push(new ChartsPage(Shell, day));
                break;
            case Command.WipeLock:
                Shell.WipeLock.Lock();
                break;
            case Command.Tend:
                new TendKey(Shell, this, _acts).Strike();
                break;
            case Command.OwnHands when Shell.Ports.Rehearsal is { } rehearsal:
                rehearsal.HandsOn = !rehearsal.HandsOn;
                _acts.Do(new RunCommand.Mark(rehearsal.HandsOn ? RehearsalMark.OwnHands : RehearsalMark.StandIn), now);
                break;
            case Command.Faster or Command.Slower or Command.Pause or Command.Leap:
                RehearsalKeys.Strike(Shell.Ports.Rehearsal, command);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    private void Hold(DateTimeOffset now)
    {
        var step = OnHold()?.Spec.Id ?? day.Focus(now).StepId;
        switch (Moment(now).State.Step(step)?.Status)
        {
            case RunStatus.Held:
                _acts.Do(new RunCommand.Resume(step), now);
                break;
            case RunStatus.Running:
                _acts.Do(new RunCommand.Hold(step, ""), now);
                break;
            default:
                Shell.Say(Shell.Notation.Text("Nothing to hold: the step has not begun."), Tone.Warning);
                break;
        }
    }

    // what is held comes first, wherever the focus has moved meanwhile; a rest that waits for its own heating is not the brewer's to resume
    private RunStep? OnHold() => day.State.Steps.LastOrDefault(held => held.Status == RunStatus.Held
        && !day.State.Steps.Any(s => s.Status == RunStatus.Running && s.Spec.Vessel == held.Spec.Vessel));

    /// <summary>When the day is over the keys that do nothing then are not shown.</summary>
    private ImmutableArray<KeyHint> Hints(DeckMoment moment)
    {
        var hints = KeyMap.Hints(Context, moment.Notation);
        return day.Over
            ?
            [
                hints[0] with { Does = moment.Notation.Text("batch and log") },
                .. hints.Where(h => h.Key == "q"),
                new KeyHint("c", moment.Notation.Text("charts")),
                .. hints.Where(h => h.Key is "u" or "?" or "n" or "p"),
            ]
            : Steered(hints, moment);
    }

    /// <summary>Of a rehearsal's keys the one that is wanted most, where it is seen: behind the two that carry the day.</summary>
    private ImmutableArray<KeyHint> Steered(ImmutableArray<KeyHint> hints, DeckMoment moment) =>
        Steering(moment) is { } key && hints.FirstOrDefault(h => h.Key == key) is { } hint ? hints.Remove(hint).Insert(2, hint) : hints;

    private string? Steering(DeckMoment moment) => Shell.Ports.Rehearsal switch
    {
        null => null,
        { Signs.Count: > 0 } => "m",
        { HandsOn: false } => "o",
        _ => moment.Focus.Act is FocusAct.Start or FocusAct.Finish or FocusAct.Resume && moment.Focus.DueMs <= moment.NowMs ? null : "j",
    };

    // undo says what it would take back
    private KeyHint Precise(KeyHint hint, DeckMoment moment) => hint.Key == "u" && day.State.UndoSeq is { } seq && seq < day.Events.Count
        ? hint with { Does = Shell.Notation.Text("undo ") + new EventWords(Brewhouse, moment.Notation, moment.Title).Short(day.Events[seq]) }
        : hint;
}
