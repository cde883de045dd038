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
