using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.RecipeMaking;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>An ingredient is not as planned: which one, what of it, and the number.</summary>
internal sealed class BagKey(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    private sealed record Figure(string Label, string Planned, Dimension Dimension, string Unit, double Least, double Most, string Example, Func<double, Bag> Of);

    public void Strike()
    {
        ImmutableArray<PlannedBag> bags = [.. BagSheet.Of(day.State)];
        if (bags.IsEmpty)
        {
            shell.Say(shell.Notation.Text("Everything that is weighed is in already."));
            return;
        }
        page.Ask(new ChoiceAsk(
            page, shell.Notation.Text("Which bag?"), [], [.. bags.Select(b => new Row([$"{BagWords.Amount(b, shell.Notation)} {b.Name}"]))], (row, _) => AskWhat(bags[row])));
    }

    private void AskWhat(PlannedBag bag)
    {
        var figures = Figures(bag);
        page.Ask(new ChoiceAsk(
            page, shell.Notation.Text($"What about the {bag.Name}?"), [], [.. figures.Select(f => new Row([shell.Notation.Text($"{f.Label}, planned {f.Planned}")]))], (row, _) => AskNumber(bag, figures[row])));
    }

    private void AskNumber(PlannedBag bag, Figure figure) => page.Ask(new EntryAsk(
        page, $"{bag.Name}: {figure.Label}?", "", _ => Line.Of(shell.Notation.Text($"planned {figure.Planned}; such as {shell.Notation.Decimals(figure.Example)}"), Tone.Muted), (text, now) =>
        {
            if (RecipeReaders.One(figure.Dimension, figure.Unit, figure.Least, figure.Most, figure.Example, text, shell.Notation, out var fault) is not { } value)
                return fault;
            var weigh = new RunCommand.Weigh(figure.Of(value));
            switch (day.Look(weigh, now))
            {
                case Decision.Refused refused:
                    return DecisionWords.Refused(refused.Code, shell.Notation);
                case Decision.Accepted { Events: [BagWeighed weighed, ..] }:
                    AskToTake(weigh, weighed, bag, figure);
                    break;
            }
            return null;
        }));

    /// <summary>Before and after, before it counts: what is typed for one bag may be meant for another.</summary>
    private void AskToTake(RunCommand.Weigh weigh, BagWeighed weighed, PlannedBag bag, Figure figure)
    {
        var moved = FigureWords.Moved(weighed.Moved, shell.Notation);
        var far = weigh.Bag.Amount is { } amount ? BagWords.Far(amount, bag.Amount, shell.Notation) : null;
        page.Ask(new ChoiceAsk(
            page,
            shell.Notation.Text($"{BagWords.Of(weigh.Bag, shell.Notation)}, planned {figure.Planned}?") + (far is null ? "" : " " + Names.Sentence(far)),
            [Line.Of(moved.Length > 0 ? moved : shell.Notation.Text("nothing moves that you would notice"))],
            [new Row([shell.Notation.Text("Take it")]), new Row([shell.Notation.Text("Type it again")])],
            (row, at) =>
            {
                if (row == 1)
                {
                    AskNumber(bag, figure);
                    return;
                }
                acts.Do(weigh, at);
                // the next Enter is meant for this question, not for the step below
                shell.Guard.LeaveAlone(shell.Wall(at));
            },
            byArrows: true,
            selected: far is null ? 0 : 1));
    }

    private ImmutableArray<Figure> Figures(PlannedBag bag)
    {
        var notation = shell.Notation;
        var amount = BagWords.Amount(bag, notation);
        var named = new Bag(bag.Kind, bag.Name);
        return bag.Kind == ChargeKind.Hop
            ?
            [
                new(shell.Notation.Text("there is less of it, or more"), amount, Dimension.Mass, "g", 0, 50_000, "25 g", v => named with { Amount = v }),
                new(shell.Notation.Text("alpha acid"), notation.Percent(bag.AlphaFraction), Dimension.Fraction, "%", 0, 30, "4.5 %", v => named with { AlphaFraction = v / 100 }),
            ]
            :
            [
                new(shell.Notation.Text("there is less of it, or more"), amount, Dimension.Mass, "kg", 0, 1000, "4.8 kg", v => named with { Amount = v }),
                new(shell.Notation.Text("moisture"), notation.Percent(bag.MoistureFraction), Dimension.Fraction, "%", 0, 95, "4.5 %", v => named with { MoistureFraction = v / 100 }),
                new(shell.Notation.Text("extract, on dry basis"), notation.Percent(bag.ExtractFraction), Dimension.Fraction, "%", 1, 100, "80 %", v => named with { ExtractFraction = v / 100 }),
            ];
    }
}
