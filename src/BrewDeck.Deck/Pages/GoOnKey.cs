using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
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
        var focus = day.Focus(now);
        switch (focus.Act)
        {
            case FocusAct.Start:
                acts.Do(new RunCommand.Start(focus.StepId), now);
                break;
            case FocusAct.Finish when page.Moment(now) is var moment && moment.Current is { Spec.Kind: StepKind.CastOut } step && moment.Unread(step).Count() == step.Expected.Length:
                AskToRead(focus, step, moment);
                break;
            case FocusAct.Finish:
                acts.Do(new RunCommand.Finish(focus.StepId), now);
                break;
            case FocusAct.Resume:
                acts.Do(new RunCommand.Resume(focus.StepId), now);
                break;
            case FocusAct.Wait:
                AskFirst(focus, page.Moment(now));
                break;
            default:
                shell.Push(new BatchPage(shell, day.Number));
                if (shell.Ports is { Rehearsal: not null, Debrief: not null })
                    DebriefPage.Enter(shell, day.Number);
                break;
        }
    }

    // what comes of the day is known by nothing else: the one step whose reading is asked for; the big key alone still goes on
    private void AskToRead(RunFocus focus, PlanStep step, DeckMoment moment) => page.Ask(new ChoiceAsk(
        page,
        moment.Notation.Text("Nothing has been read yet. Read it first?"),
        [Line.Of(Names.Sentence(string.Join(", ", step.Expected.Select(e => ReadingWords.What(e.Kind, e.Vessel, page.Brewhouse, moment.Notation)))) + ".")],
        [new Row([moment.Notation.Text($"{moment.Title(step)}: done, without a reading")]), new Row([moment.Notation.Text("Read it now")])],
        (row, at) =>
        {
            if (row == 1)
                new ReadingKeys(shell, page, acts).Open(at);
            else
                acts.Do(new RunCommand.Finish(focus.StepId), at);
        }));

    // "let it run" lies under the big key: a second knuckle changes nothing
    private void AskFirst(RunFocus focus, DeckMoment moment)
    {
        var left = Durations.Words((focus.DueMs - moment.NowMs) / 1000.0, moment.Notation);
        page.Ask(new ChoiceAsk(
            page,
            moment.Notation.Text($"End it {left} early?"),
            [Line.Of(moment.Title(focus.StepId), Tone.Strong)],
            [new Row([moment.Notation.Text("Let it run")]), new Row([moment.Notation.Text($"End it now, {left} early")])],
            (row, at) =>
            {
                if (row == 1)
                    acts.Do(new RunCommand.Finish(focus.StepId), at);
            }));
    }
}
