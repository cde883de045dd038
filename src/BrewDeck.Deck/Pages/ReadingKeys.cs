using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Takes readings: the expected one by its digits, any other by choice; asks again about the implausible.</summary>
internal sealed class ReadingKeys(Shell shell, DeckPage page, Acts acts)
{
    public void Type(char digit, DateTimeOffset now) => page.Ask(Entry(ReadingPlace.All(page.Moment(now)), now).With(digit.ToString()));

    /// <summary>Asks for what the step expects first.</summary>
    public void Open(DateTimeOffset now) => page.Ask(Entry(ReadingPlace.All(page.Moment(now)), now).With(""));

    public void Open(ReadingKind kind, string vessel, DateTimeOffset now)
    {
        var places = ReadingPlace.All(page.Moment(now));
        var at = places.Select((p, i) => (p, i)).First(x => x.p.Kind == kind && x.p.Vessel == vessel).i;
        page.Ask(Entry(places, now).For(at).With(""));
    }

    public void Pick(DateTimeOffset now)
    {
        var moment = page.Moment(now);
        var places = ReadingPlace.All(moment);
        page.Ask(new ChoiceAsk(
            page,
            shell.Notation.Text("Which reading?"),
            [],
            [.. places.Select(p => new Row([Names.Sentence(ReadingWords.What(p.Kind, p.Vessel, page.Brewhouse, shell.Notation)), Expected(p, moment)]))],
            (row, at) => page.Ask(Entry(places, at).For(row))));
    }

    // the same as the prompt will say: what stands there now, not what the step is to end at
    private string Expected(ReadingPlace place, DeckMoment moment) =>
        place.Expected is not null && Expects(place, moment) is { } value ? shell.Notation.Text("expected ") + ReadingWords.Value(place.Kind, value, shell.Notation) : "";

    private ReadingAsk Entry(ImmutableArray<ReadingPlace> places, DateTimeOffset now)
    {
        var typing = new ReadingTyping(shell.Typed, page.Brewhouse, shell.Notation);
        return new ReadingAsk(page, places, typing, shell.Notation, place => Expects(place, page.Moment(now)), Look(), Probed, Take);
    }

    /// <summary>What the reading is held against at this moment; a mash that is doughed in and a fill are told by what they are to come to.</summary>
    private static double? Expects(ReadingPlace place, DeckMoment moment)
    {
        var byItsEnd = place.Kind == ReadingKind.Temperature ? RestReadings.WantedC(moment.State, place.Vessel) is not null
            : place.Kind == ReadingKind.Volume && (Filling.In(moment.State, place.Vessel) is not null || moment.Rest.Any(s => s.Spec.To == place.Vessel && moment.IsReckonedOver(s)));
        return place.Expected is { } end && !byItsEnd ? RunDesk.Expects(moment.State, place.Kind, place.Vessel, moment.NowMs) ?? end : place.Expected;
    }

    private Func<ReadingPlace, Shown?>? Look() =>
        shell.Ports.Rehearsal is { HandsOn: true } rehearsal ? place => rehearsal.Look(place.Kind, place.Vessel) : null;

    private ProbeOffer? Probed(ReadingPlace place) => shell.Probe.Offer(place.Kind, place.Vessel, page.Believes);

    private void Take(Reading reading, ReadingAsk entry, DateTimeOffset now)
    {
        if (Unbegun(reading, now) is { } fill)
            AskToBegin(fill, reading, entry, page.Moment(now));
        else if (ShortOfMarkL(reading, page.Moment(now)) is { } mark)
            AskWhetherItRuns(reading, mark, entry);
        else
            TakeIt(reading, entry, now);
    }

    private void TakeIt(Reading reading, ReadingAsk entry, DateTimeOffset now)
    {
        switch (acts.Do(new RunCommand.Take(reading), now))
        {
            case Decision.AskAgain again:
                AskAgain(reading, ReadingWords.Doubt(again, page.Brewhouse, shell.Notation), entry, again.Fits);
                break;
            case Decision.Quarrel quarrel:
                AskAgain(reading, ReadingWords.Quarrel(quarrel, shell.Notation), entry);
                break;
        }
    }

    /// <summary>The mark of a run-off that should have come to its end, and whose kettle is read well below it, litres; null: nothing of that.</summary>
    private static double? ShortOfMarkL(Reading reading, DeckMoment moment) =>
        reading.Kind == ReadingKind.Volume && moment.Rest.FirstOrDefault(s => s.Spec.Kind.RunsOff() && s.Spec.To == reading.Vessel && moment.IsReckonedOver(s)) is { } run
        && run.Expected.FirstOrDefault(e => e.Kind == ReadingKind.Volume)?.Value is { } mark && reading.Value < mark - Math.Max(1, 0.02 * mark)
            ? mark
            : null;

    /// <summary>The end of a run-off that fell short, or a slow bed: what is in the kettle is the same, what is still to come is not.</summary>
    private void AskWhetherItRuns(Reading reading, double markL, ReadingAsk entry) => page.Ask(new ChoiceAsk(
        page,
        shell.Notation.Text($"{shell.Notation.Volume(reading.Value)} of {shell.Notation.Volume(markL)}: does it still run off?"),
        [],
        [
            new Row([shell.Notation.Text("It still runs: that is the level so far")]),
            new Row([shell.Notation.Text("It has run off: no more comes")]),
            new Row([shell.Notation.Text("Type it again")]),
        ],
        (row, at) =>
        {
            if (row == 2)
                page.Ask(entry.With(""));
            else
                TakeIt(row == 0 ? reading with { StillRuns = true } : reading, entry, at);
        },
        byArrows: true));

    /// <summary>A level that only a fill can have made, though nobody has begun it in the deck.</summary>
    private RunStep? Unbegun(Reading reading, DateTimeOffset now)
    {
        var moment = page.Moment(now);
        return reading.Kind == ReadingKind.Volume && Filling.In(moment.State, reading.Vessel) is { Status: RunStatus.Idle } fill
            && reading.Value > Contents.StandsL(moment.Forecast.Now.Vessels[moment.State.Live!.Setting.IndexOf(reading.Vessel)]) + MoreL
                ? fill
                : null;
    }

    /// <summary>So many litres more than stands there were filled in; a brewer reads a level to half a litre.</summary>
    private const double MoreL = 0.5;

    private void AskToBegin(RunStep fill, Reading reading, ReadingAsk entry, DeckMoment moment) => page.Ask(new ChoiceAsk(
        page,
        shell.Notation.Text($"This has not been started: {moment.Title(fill.Spec.Id)}."),
        [Line.Of(Names.Sentence(ReadingWords.One(reading, page.Brewhouse, shell.Notation)) + ".")],
        [
            new Row([shell.Notation.Text("It is being filled: start it, and take the level")]),
            new Row([shell.Notation.Text("It stood there before: take it as the starting level")]),
            new Row([shell.Notation.Text("Type it again")]),
        ],
        (row, at) =>
        {
            if (row == 2)
                page.Ask(entry.With(""));
            else if (row == 1 || acts.Do(new RunCommand.Start(fill.Spec.Id), at) is Decision.Accepted)
                TakeIt(reading, entry, at);
        },
        byArrows: true));

    /// <param name="fits">Id of another vessel that shows just this; empty: none.</param>
    private void AskAgain(Reading reading, string why, ReadingAsk entry, string fits = "") => page.Ask(new ChoiceAsk(
        page,
        why,
        [],
        // typing it again lies under Enter: what no instrument shows is a slip of the fingers first
        [
            new Row([shell.Notation.Text("Type it again")]),
            new Row([shell.Notation.Text("Take it all the same")]),
            .. fits.Length == 0 ? [] : new[] { new Row([shell.Notation.Text($"Take it for {Names.The(page.Brewhouse, fits, shell.Notation)}")]) },
        ],
        (row, at) =>
        {
            if (row == 0)
                page.Ask(entry.With(""));
            else
                acts.Do(new RunCommand.Take(row == 1 ? reading : reading with { Vessel = fits }, Confirmed: true), at);
        },
        _ => page.Ask(entry.With("")),
        byArrows: true));
}
