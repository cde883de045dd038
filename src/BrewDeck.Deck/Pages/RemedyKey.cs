using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Offers the ways back to plan with their cost and what they give.</summary>
internal sealed class RemedyKey(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    public void Strike(DateTimeOffset now)
    {
        var ranked = day.Remedies(now);
        if (ranked.IsEmpty)
        {
            shell.Say(shell.Notation.Text("Nothing is off plan that a remedy would mend; f reports what no reading shows."));
            // the next key is meant for a list that did not come
            shell.Guard.LeaveAlone(shell.Wall(now));
            return;
        }
        // leaving it always stands last, so that the eye finds it; where nothing does better, it says so
        ImmutableArray<Remedy> offers = [.. ranked.OrderBy(r => r.Kind == RemedyKind.LeaveIt)];
        var leaveItIsBest = offers.Length > 1 && ranked[0].Kind == RemedyKind.LeaveIt;
        page.Ask(new ChoiceAsk(
            page,
            leaveItIsBest ? shell.Notation.Text("Which remedy? Leaving it keeps nearest to the plan.") : shell.Notation.Text("Which remedy?"),
            [.. Cause(now), .. offers.Any(Replugs) ? TroubleWords.OfCurrent(shell.Notation).Select(l => Line.Of(l, Tone.Warning)) : []],
            [.. offers.Select(Offer)],
            (row, at) => Choose(offers[row], at),
            selected: leaveItIsBest ? offers.Length - 1 : 0));
    }

    private static bool Replugs(Remedy remedy) => remedy.Kind == RemedyKind.OtherCircuit;

    private void Choose(Remedy remedy, DateTimeOffset now)
    {
        if (Replugs(remedy))
            AskDry(remedy);
        else
            acts.Do(new RunCommand.Choose(remedy), now);
    }

    // nothing on the deck knows whether a plug is dry: who holds it says so, and "no" lies under the key
    private void AskDry(Remedy remedy) => page.Ask(new ChoiceAsk(
        page,
        shell.Notation.Text("Are plug and socket dry, and is the cause found?"),
        [
            .. TroubleWords.OfCurrent(shell.Notation).Select(l => Line.Of(l, Tone.Warning)),
            Line.Of(shell.Notation.Text($"{shell.Notation.Power(remedy.PowerW ?? 0)} more on circuit {remedy.CircuitId}: first switch off what else it feeds.")),
        ],
        [new Row([shell.Notation.Text("No: it stays unplugged")]), new Row([shell.Notation.Text($"Yes: plug it into circuit {remedy.CircuitId}")])],
        (row, at) =>
        {
            if (row == 1)
                acts.Do(new RunCommand.Choose(remedy), at);
        }));

    // what was read or reported last
    private IEnumerable<Line> Cause(DateTimeOffset now)
    {
        var read = day.State.Readings is [.., var last] ? last : null;
        if (day.State.Troubles.LastOrDefault(t => t.AtMs > (read?.AtMs ?? 0)) is { } trouble)
            return [Line.Of(Names.Sentence(TroubleWords.Happens(trouble.Trouble, page.Brewhouse, day.Moment(now, shell.Notation).Title, shell.Notation)) + ".")];
        if (day.State.BagMs is { } weighed && weighed > (read?.AtMs ?? 0) && day.Events.OfType<BagWeighed>().LastOrDefault() is { } bag)
            return [Line.Of(Names.Sentence(BagWords.Of(bag.Bag, shell.Notation)) + ".")];
        if (read is null)
            return [];
        var verdict = Verdict.Of(day.State, read, shell.Notation);
        return [Line.Of(Names.Sentence(ReadingWords.One(read.Reading, page.Brewhouse, shell.Notation)) + (verdict.Length > 0 ? $"; {verdict}." : "."))];
    }

    private Row Offer(Remedy remedy) => new([
        RemedyWords.Title(remedy, page.Brewhouse, shell.Notation),
        .. new[] { RemedyWords.Cost(remedy, shell.Notation), RemedyWords.Gives(remedy, shell.Notation) }.Where(c => c.Length > 0)]);
}
