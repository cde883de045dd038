using System.Globalization;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Asks what priming or keg pressure need, one after the other.</summary>
internal sealed class PackagingAsks(Shell shell, Page page, FermentState state, Func<RunCommand, DateTimeOffset, string?> act)
{
    private static readonly PrimingSugar[] Sugars = Enum.GetValues<PrimingSugar>();

    public void Bottles()
    {
        if (FermentFigures.Of(state) is { Steady: true })
            Volume(litres => Co2(volumes => Temperature(shell.Notation.Text("Warmest since fermentation ended?"), Warmest(), highest => Sugar(litres, volumes, highest))));
        else
            page.Ask(new ChoiceAsk(
                page,
                shell.Notation.Text("The gravity is not known to be steady"),
                [Line.Of(shell.Notation.Text("Bottles burst when beer ferments on: two gravities two days apart should agree within 0.001."), Tone.Warning)],
                [new Row([shell.Notation.Text("Wait")]), new Row([shell.Notation.Text("Bottle it all the same")])],
                (row, _) =>
                {
                    if (row == 1)
                        Volume(litres => Co2(volumes => Temperature(shell.Notation.Text("Warmest since fermentation ended?"), Warmest(), highest => Sugar(litres, volumes, highest))));
                }));
    }

    public void Keg() => Volume(litres => Co2(volumes => Temperature(shell.Notation.Text("Beer under pressure at?"), "4", (celsius, at) =>
        act(new RunCommand.After.Package(Packaging.InKeg(litres, volumes, celsius)), at))));

    private void Volume(Action<double> next) => Quantity(shell.Notation.Text("How much beer?"), "38 L", ReadingKind.Volume, (value, _) =>
    {
        next(value);
        return null;
    });

    private void Co2(Action<double> next) => page.Ask(new EntryAsk(page, shell.Notation.Text("Volumes of CO2?"), "", _ => Line.Of(shell.Notation.Text("such as 2.4; 1.8 cask-like, 2.8 lively"), Tone.Muted), (text, _) =>
    {
        if (!double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var volumes) || volumes is not (>= 0.5 and <= 5))
            return shell.Notation.Text("Write 0.5 to 5, such as 2.4.");
        next(volumes);
        return null;
    }));

    private void Temperature(string question, string example, Func<double, DateTimeOffset, string?> take) =>
        Quantity(question, example, ReadingKind.Temperature, take);

    private void Temperature(string question, string example, Action<double> next) => Quantity(question, example, ReadingKind.Temperature, (value, _) =>
    {
        next(value);
        return null;
    });

    private void Sugar(double litres, double volumes, double highestC) => page.Ask(new ChoiceAsk(
        page,
        shell.Notation.Text("Which sugar?"),
        [],
        [.. Sugars.Select(s => new Row([Names.Sentence(FermentWords.Sugar(s, shell.Notation)), shell.Notation.Grams(Packaging.InBottles(litres, volumes, highestC, s).SugarG ?? 0)]))],
        (row, at) => act(new RunCommand.After.Package(Packaging.InBottles(litres, volumes, highestC, Sugars[row])), at)));

    private void Quantity(string question, string example, ReadingKind kind, Func<double, DateTimeOffset, string?> take) =>
        page.Ask(new EntryAsk(page, question, "", _ => Line.Of(shell.Notation.Text($"such as {example}"), Tone.Muted), (text, at) =>
            shell.Typed.TryRead(kind, text, out var value, out var reason) ? take(value, at) : reason));

    /// <summary>The warmest reading of the last third of the time since pitching, as a hint.</summary>
    private string Warmest()
    {
        var temperatures = state.Readings.Where(r => r.Reading.Figure == FermenterFigure.Temperature).ToList();
        if (temperatures.Count == 0 || state.PitchedMs is not { } pitched)
            return "20";
        var since = pitched + (temperatures[^1].AtMs - pitched) * 2 / 3;
        return shell.Notation.Text($"{shell.Notation.Temp(temperatures.Where(t => t.AtMs >= since).Max(t => t.Reading.Value))} as read");
    }
}
