using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Offers what the hands can do about what shows itself at the plant of a rehearsal.</summary>
internal sealed class TendKey(Shell shell, DeckPage page, Acts acts)
{
    public void Strike()
    {
        if (shell.Ports.Rehearsal?.Signs is not [var sign, ..])
        {
            shell.Say(shell.Ports.Rehearsal?.Tending is [var tending, ..]
                ? PlantLines.Of(tending, shell.Notation)
                : shell.Notation.Text("Nothing is wrong that can be seen."));
            return;
        }
        // what may hurt someone stands behind leaving it, never beside what is right
        HandAct[] offered = [.. sign.Acts.Where(a => !Safety.IsUnsafe(a)), HandAct.LeaveIt, .. sign.Acts.Where(Safety.IsUnsafe)];
        page.Ask(new ChoiceAsk(
            page,
            shell.Notation.Text("What do you do?"),
            [.. Lines(sign)],
            [.. offered.Select(a => new Row([MishapWords.Act(a, shell.Notation), .. Takes(a)], Safety.IsUnsafe(a) ? Tone.Alarm : Tone.Normal))],
            (row, at) => acts.Do(new RunCommand.Tend(offered[row]), at)));
    }

    /// <summary>The same minutes as those of the run sheet's remedy.</summary>
    private IEnumerable<string> Takes(HandAct act) =>
        HandWork.StandsMin(act) is { } minutes ? [shell.Notation.Text($"nothing runs for {Durations.Short(60 * minutes)}")] : [];

    private IEnumerable<Line> Lines(Sign sign)
    {
        yield return Line.Of(MishapWords.Sign(sign, page.Brewhouse, shell.Notation));
        if (sign.Acts.IsEmpty)
            yield return Line.Of(shell.Notation.Text("Read it first (t); then r shows the ways back to plan."));
        foreach (var rule in MishapWords.Rules(sign.Kind, shell.Notation))
            yield return Line.Of(rule, Tone.Warning);
        foreach (var caution in CautionWords.Of(MishapWords.CautionsOf(sign.Kind), shell.Notation))
            yield return Line.Of(caution, Tone.Warning);
    }
}
