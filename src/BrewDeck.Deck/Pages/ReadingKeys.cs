using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Takes readings: the expected one by its digits, any other by choice; asks again about the implausible.</summary>
internal sealed class ReadingKeys(Shell shell, DeckPage page, Acts acts)
{
    public void Type(char digit, DateTimeOffset now) => page.Ask(Entry(ReadingPlace.All(page.Moment(now))).With(digit.ToString()));

    /// <summary>Asks for what the step expects first.</summary>
    public void Open(DateTimeOffset now) => page.Ask(Entry(ReadingPlace.All(page.Moment(now))).With(""));

    public void Pick(DateTimeOffset now)
    {
        var places = ReadingPlace.All(page.Moment(now));
        page.Ask(new ChoiceAsk(
            page,
            shell.Notation.Text("Which reading?"),
            [],
            [.. places.Select(p => new Row([Names.Sentence(ReadingWords.What(p.Kind, p.Vessel, page.Brewhouse, shell.Notation)), Expected(p)]))],
            (row, _) => page.Ask(Entry(places).For(row))));
    }

    private string Expected(ReadingPlace place) =>
        place.Expected is { } value ? shell.Notation.Text("expected ") + ReadingWords.Value(place.Kind, value, shell.Notation) : "";

    private ReadingAsk Entry(ImmutableArray<ReadingPlace> places)
    {
        var typing = new ReadingTyping(shell.Typed, page.Brewhouse, shell.Notation);
        return new ReadingAsk(page, places, typing, shell.Notation, Look(), Probed, Take);
    }

    private Func<ReadingPlace, Shown?>? Look() =>
        shell.Ports.Rehearsal is { HandsOn: true } rehearsal ? place => rehearsal.Look(place.Kind, place.Vessel) : null;

    private ProbeOffer? Probed(ReadingPlace place) => shell.Probe.Offer(place.Kind, place.Vessel, page.Believes);

    private void Take(Reading reading, ReadingAsk entry, DateTimeOffset now)
    {
        if (acts.Do(new RunCommand.Take(reading), now) is Decision.AskAgain again)
            AskAgain(again, entry);
    }

    private void AskAgain(Decision.AskAgain again, ReadingAsk entry) => page.Ask(new ChoiceAsk(
        page,
        ReadingWords.Outside(again.Reading, again.Low, again.High, page.Brewhouse, shell.Notation),
        [Line.Of(shell.Notation.Text("Enter takes it all the same, Esc types again."))],
        [new Row([shell.Notation.Text("Take it all the same")]), new Row([shell.Notation.Text("Type again")])],
        (row, at) =>
        {
            if (row == 0)
                acts.Do(new RunCommand.Take(again.Reading, Confirmed: true), at);
            else
                page.Ask(entry.With(""));
        },
        _ => page.Ask(entry.With(""))));
}
