using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Offers the ways back to plan with their cost and what they give.</summary>
internal sealed class RemedyKey(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    public void Strike(DateTimeOffset now)
    {
        var ranked = day.RemediesAsked(now);
        if (ranked.IsEmpty)
        {
            shell.Say(shell.Ports.Rehearsal is { Signs: [{ Acts.IsEmpty: false }, ..] }
                ? shell.Notation.Text("What shows itself asks for hands: m. r has ways back only once it is read (t) or reported (f).")
                : shell.Notation.Text("Nothing is off plan that a remedy would mend; f reports what no reading shows."));
            // the next key is meant for a list that did not come
            shell.Guard.LeaveAlone(shell.Wall(now));
            return;
        }
        // leaving it always stands last, so that the eye finds it; where nothing does better, it says so
        ImmutableArray<Remedy> offers = [.. ranked.OrderBy(r => r.Kind == RemedyKind.LeaveIt).DistinctBy(Does)];
        var leaveItIsBest = offers.Length > 1 && ranked[0].Kind == RemedyKind.LeaveIt;
        page.Ask(new ChoiceAsk(
            page,
            leaveItIsBest ? shell.Notation.Text($"Which remedy? Leaving it, number {offers.Length}, keeps nearest to the plan.") : offers.Length > 2 ? shell.Notation.Text("Which remedy? Nearest to the plan first.") : shell.Notation.Text("Which remedy?"),
            [.. Cause(now), .. OffPlan(ranked), .. offers.Any(Replugs) ? TroubleWords.OfCurrent(shell.Notation).Select(l => Line.Of(l, Tone.Warning)) : []],
            [.. offers.Select(Offer), .. CanGiveUp(offers) ? [GiveUp()] : Array.Empty<Row>()],
            (row, at) =>
            {
                if (row < offers.Length)
                    Choose(offers[row], at);
                else
                    new TypedKeys(shell, page, day, acts).Ask(Command.Abort, at);
            },
            selected: leaveItIsBest ? offers.Length - 1 : 0));
    }

    /// <summary>What went in late is the same hops by the same hand, weighed anew or not, where both are as many grams.</summary>
    private (bool GoesIn, string Words) Does(Remedy remedy) => remedy is { Insert: [{ Charges: { Length: > 0 } charges }, ..], Kind: RemedyKind.AddNow or RemedyKind.Reweigh, Replace.IsEmpty: true }
        ? (true, Charges.All(charges, shell.Notation))
        : (false, RemedyWords.Title(remedy, page.Brewhouse, shell.Notation));

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

    /// <summary>No way is left to boil the wort: nothing is offered but to leave it.</summary>
    private static bool CanGiveUp(ImmutableArray<Remedy> offers) =>
        offers is [{ Kind: RemedyKind.LeaveIt, Ahead: false, Never: StepKind.HeatToBoil or StepKind.HotBreak or StepKind.Boil }];

    private Row GiveUp() => new([shell.Notation.Text("Give the day up: all heat off, lid on"), shell.Notation.Text("the batch ends here; what was read stays in its record")]);

    /// <summary>What is off and by how much, in one sentence.</summary>
    private IEnumerable<Line> OffPlan(ImmutableArray<Remedy> ranked) =>
        RemedyWords.OffPlan(ranked, shell.Notation) is { Length: > 0 } off ? [Line.Of(shell.Notation.Text($"Off plan: {off}."))] : [];

    /// <summary>What was left out, and what was reported or read last since then; a reading that shows what was expected is no cause where there is another.</summary>
    private IEnumerable<Line> Cause(DateTimeOffset now)
    {
        var moment = day.Moment(now, shell.Notation);
        var slip = Slips.Last(day.State);
        var told = Told(moment).Where(c => c.AtMs > (slip?.EndedMs ?? long.MinValue)).OrderBy(c => c.AtMs).TakeLast(1).Select(c => c.Words).ToList();
        if (slip is not null)
            told.Insert(0, SlipWords.Of(slip, moment));
        return (told.Count == 0 && day.State.Readings is [.., var last] ? [Read(last)] : told).Select(c => Line.Of(c));
    }

    /// <summary>Of each kind the last since a remedy was chosen.</summary>
    private IEnumerable<(long AtMs, string Words)> Told(DeckMoment moment)
    {
        var since = day.State.LastChosenMs;
        if (day.State.Troubles.LastOrDefault(t => t.AtMs > since) is { } trouble)
            yield return (trouble.AtMs, Names.Sentence(TroubleWords.Happens(trouble.Trouble, page.Brewhouse, moment.Title, shell.Notation)) + ".");
        if (day.State.BagMs is { } weighed && weighed > since && day.Events.OfType<BagWeighed>().LastOrDefault() is { } bag)
            yield return (weighed, Names.Sentence(BagWords.Of(bag.Bag, shell.Notation)) + ".");
        if (day.State.Readings.LastOrDefault(r => r.AtMs > since && !IsAsExpected(r)) is { } read)
            yield return (read.AtMs, Read(read));
    }

    private string Read(TakenReading read)
    {
        var verdict = Verdict.Of(day.State, read, shell.Notation);
        return Names.Sentence(ReadingWords.One(read.Reading, page.Brewhouse, shell.Notation)) + (verdict.Length > 0 ? $"; {verdict}." : ".");
    }

    private bool IsAsExpected(TakenReading read) => Verdict.Of(day.State, read, shell.Notation) == ReadingWords.AsExpected(shell.Notation);

    private Row Offer(Remedy remedy) => new([
        RemedyWords.Title(remedy, page.Brewhouse, shell.Notation),
        .. new[] { RemedyWords.Cost(remedy, shell.Notation), RemedyWords.Gives(remedy, shell.Notation) }.Where(c => c.Length > 0)]);
}
