using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The big key: start or finish what the deck shows.</summary>
internal sealed class GoOnKey(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    public void Strike(DateTimeOffset now)
    {
        var moment = page.Moment(now);
        var (focus, step) = (moment.Focus, moment.Current);
        switch (focus.Act)
        {
            case FocusAct.Start when step is not null && GoOnDoubts.TooWarm(step, moment) is (var read, var planned):
                AskToPitch(moment, read, planned);
                break;
            case FocusAct.Start:
                acts.Do(new RunCommand.Start(focus.StepId), now);
                break;
            case FocusAct.Finish or FocusAct.Wait when step is not null && GoOnDoubts.Short(step, moment, shell.Ports.Rehearsal) is (var readL, var wantedL):
                AskWhatCame(step, readL, wantedL, moment);
                break;
            case FocusAct.Finish when step is not null && GoOnDoubts.IsUnread(step, moment):
                AskToRead(step, moment);
                break;
            case FocusAct.Finish when step is not null && GoOnDoubts.IsEarly(step, moment):
            case FocusAct.Wait:
                AskToEnd(moment);
                break;
            case FocusAct.Finish:
                acts.Do(new RunCommand.Finish(focus.StepId), now);
                break;
            case FocusAct.Resume when Possible.Standing(day.State).FirstOrDefault(t => t.About == focus.StepId) is { } trouble:
                AskWhetherOver(trouble, moment);
                break;
            case FocusAct.Resume:
                acts.Do(new RunCommand.Resume(focus.StepId), now);
                break;
            default:
                shell.Push(new BatchPage(shell, day.Number));
                if (shell.Ports is { Rehearsal: not null, Debrief: not null })
                    DebriefPage.Enter(shell, day.Number);
                break;
        }
    }

    // a pump that pulls on a closed bed breaks the false bottom: a knuckle that strikes twice does not start it
    private void AskWhetherOver(Trouble trouble, DeckMoment moment) => AskFirst(
        moment.Notation.Text($"{Names.Sentence(TroubleWords.Happens(trouble, page.Brewhouse, moment.Title, moment.Notation))}. Is that over?"),
        Line.Of(TroubleWords.AtOnce(trouble, moment.Plan, moment.Notation)),
        moment.Notation.Text("Not yet: it stays on hold"),
        (Names.Sentence(TroubleWords.Over(trouble, page.Brewhouse, moment.Title, moment.Notation)), new RunCommand.Clear(trouble)));

    private void AskToPitch(DeckMoment moment, double read, double planned) => AskFirst(
        moment.Notation.Text($"The wort reads {moment.Notation.Temp(read)}, the plan pitches at {moment.Notation.Target(planned)}. Pitch now?"),
        Line.Of(moment.Notation.Text("Yeast in wort that is too warm makes solvent-like flavours, or dies.")),
        moment.Notation.Text("Not yet: cool it in the fermenter, then read it again"),
        (moment.Notation.Text("Pitch all the same"), new RunCommand.Start(moment.Focus.StepId)));

    // the big key alone still goes on
    private void AskToRead(PlanStep step, DeckMoment moment) => page.Ask(new ChoiceAsk(
        page,
        moment.Notation.Text("Nothing has been read yet. Read it first?"),
        [Line.Of(moment.Notation.Text("Reckoned: ") + string.Join(", ", step.Expected.Select(e => Reckoned(e, moment.Notation))) + ".")],
        [new Row([moment.Notation.Text($"{moment.Title(step)}: done, without a reading")]), new Row([moment.Notation.Text("Read it now")])],
        (row, at) =>
        {
            if (row == 1)
                new ReadingKeys(shell, page, acts).Open(at);
            else
                acts.Do(new RunCommand.Finish(step.Spec.Id), at);
        }));

    private void AskWhatCame(PlanStep step, double? readL, double wantedL, DeckMoment moment)
    {
        if (readL is { } read)
            AskToEndShort(step, read, wantedL, moment);
        else
            AskToReadWhatCame(step, moment);
    }

    private void AskToEndShort(PlanStep step, double readL, double wantedL, DeckMoment moment) => AskFirst(
        moment.Notation.Text($"Read so far: {moment.Notation.Volume(readL)} of {moment.Notation.Volume(wantedL)}. Is the pump to run on?"),
        Line.Of(moment.Title(step), Tone.Strong),
        moment.Notation.Text("Let it run"),
        (moment.Notation.Text("It is there already: end it"), new RunCommand.Finish(step.Spec.Id)),
        (moment.Notation.Text("No more comes: end it with what was read"), new RunCommand.Finish(step.Spec.Id) { Short = true }));

    private void AskToReadWhatCame(PlanStep step, DeckMoment moment) => page.Ask(new ChoiceAsk(
        page,
        moment.Notation.Text("The pump did not run all the while: has all the liquor come over?"),
        [Line.Of(moment.Notation.Text("What is missing would be reckoned with as if it were there."))],
        [
            new Row([moment.Notation.Text("Read the level there first")]),
            new Row([moment.Notation.Text($"{moment.Title(step)}: all of it has come, done")]),
        ],
        (row, at) =>
        {
            if (row == 1)
                acts.Do(new RunCommand.Finish(step.Spec.Id), at);
            else
                new ReadingKeys(shell, page, acts).Open(ReadingKind.Volume, step.Spec.To, at);
        },
        byArrows: true));

    private string Reckoned(ExpectedReading e, Notation notation) =>
        $"{ReadingWords.What(e.Kind, e.Vessel, page.Brewhouse, notation)} {ReadingWords.Named(e.Kind, e.Value, notation)}";

    private void AskToEnd(DeckMoment moment)
    {
        var focus = moment.Focus;
        var left = Durations.Words((focus.DueMs - moment.NowMs) / 1000.0, moment.Notation);
        var question = moment.Notation.Text($"End it {left} early?");
        var title = Line.Of(moment.Title(focus.StepId), Tone.Strong);
        var run = moment.Notation.Text("Let it run");
        var end = new RunCommand.Finish(focus.StepId);
        if (SoFar(moment, focus.StepId) is { } reckoned)
            AskFirst(
                question, title, run,
                (moment.Notation.Text("It is there already: end it"), end),
                (moment.Notation.Text($"End it short of that, reckoned at {reckoned}"), end with { Short = true }));
        else
            AskFirst(question, title, run, (moment.Notation.Text($"End it now, {left} early"), end));
    }

    /// <summary>
    /// What a step is reckoned to have come to: a heat that is struck off early may have been quicker than reckoned, or given up. Null: it ends by the clock
    /// or the hands.
    /// </summary>
    private static string? SoFar(DeckMoment moment, string stepId)
    {
        if (moment.State.Step(stepId) is not { } run || moment.State.Live is not { } live)
            return null;
        if (live.Setting.IndexOf(run.Spec.To.Length > 0 ? run.Spec.To : run.Spec.Vessel) is not (>= 0 and var vessel))
            return null;
        var now = moment.Forecast.Now.Vessels[vessel];
        return run.Spec.Kind.EndsBy() switch
        {
            EndsBy.Temperature => moment.Notation.Temp(now.TempC),
            EndsBy.Level => moment.Notation.Volume(Contents.StandsL(now)),
            _ => null,
        };
    }

    // leaving it lies under the big key: a second knuckle changes nothing
    private void AskFirst(string question, Line why, string leave, params ImmutableArray<(string Row, RunCommand Command)> others) => page.Ask(new ChoiceAsk(
        page,
        question,
        [why],
        [new Row([leave]), .. others.Select(o => new Row([o.Row]))],
        (row, at) =>
        {
            if (row > 0)
                acts.Do(others[row - 1].Command, at);
        },
        byArrows: true));
}
