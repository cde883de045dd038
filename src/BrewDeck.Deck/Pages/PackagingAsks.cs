using System.Globalization;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Asks what priming or keg pressure need of one lot, one after the other.</summary>
internal sealed class PackagingAsks(Shell shell, Page page, FermentState state, PackageKind kind, Func<RunCommand, DateTimeOffset, string?> act)
{
    private static readonly PrimingSugar[] Sugars = Enum.GetValues<PrimingSugar>();

    /// <summary>More than there is, and the brewer has said so.</summary>
    private bool _moreThanThereIs;

    private bool Bottles => kind == PackageKind.Bottles;

    public void Begin()
    {
        if (!Bottles || FermentFigures.Of(state) is { Steady: true })
            Volume();
        else
            Choice(
                shell.Notation.Text("The gravity is not known to be steady"),
                shell.Notation.Text("Bottles burst when beer ferments on: two gravities two days apart should agree within 0.001."),
                [shell.Notation.Text("Wait"), shell.Notation.Text("Bottle it all the same")],
                (row, _) =>
                {
                    if (row == 1)
                        Volume();
                });
    }

    private void Volume() => Quantity(shell.Notation.Text("How much beer?"), "38 L", ReadingKind.Volume, (litres, _) =>
    {
        if (PackagingRules.Refusal(Lot(litres, PackagingRules.LeastCo2Volumes, 0)) is { } code)
            return DecisionWords.Refused(code, shell.Notation);
        _moreThanThereIs = PackagingRules.IsMoreThanThereIs(state, litres);
        if (_moreThanThereIs)
            AskAgain(litres);
        else
            Co2(litres);
        return null;
    });

    private void AskAgain(double litres) => Choice(
        shell.Notation.Text($"{shell.Notation.Volume(litres)} are more than is there: {shell.Notation.Volume(state.LeftL)}. Take it?"),
        shell.Notation.Text("More comes of fruit or water alone, or of a level misread on the brew day."),
        [shell.Notation.Text("Type it again"), shell.Notation.Text("Take it all the same")],
        (row, _) =>
        {
            if (row == 0)
                Volume();
            else
                Co2(litres);
        });

    private void Co2(double litres) => Entry(shell.Notation.Text("Volumes of CO2?"), shell.Notation.Text("2.4; 1.8 cask-like, 2.8 lively"), (text, _) =>
    {
        if (!double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var volumes))
            volumes = double.NaN;
        if (PackagingRules.Refusal(Lot(litres, volumes, 0)) is { } code)
            return DecisionWords.Refused(code, shell.Notation);
        if (Bottles && volumes >= PackagingRules.HeavyBottlesFrom)
            AskOfBottles(litres, volumes);
        else
            Temperature(litres, volumes);
        return null;
    });

    private void AskOfBottles(double litres, double volumes) => Choice(
        shell.Notation.Text($"Are the bottles rated for {shell.Notation.Number(volumes, "0.0#")} volumes?"),
        shell.Notation.Text("Usual bottles are made for less than 3, and burst: take heavy ones, none with a scratch or a chip, and no more than they are rated for (common practice, no source)."),
        [shell.Notation.Text("Type it again"), shell.Notation.Text("They are rated for it")],
        (row, _) =>
        {
            if (row == 0)
                Co2(litres);
            else
                Temperature(litres, volumes);
        });

    private void Temperature(double litres, double volumes) => Quantity(
        Bottles
            ? shell.Notation.Text($"Warmest since fermentation ended, in {shell.Notation.TempUnit}?")
            : shell.Notation.Text($"Temperature of the beer under pressure, in {shell.Notation.TempUnit}?"),
        Bottles ? Warmest() : shell.Notation.Target(4),
        ReadingKind.Temperature,
        (celsius, _) =>
        {
            if (PackagingRules.Refusal(Lot(litres, volumes, celsius)) is { } code)
                return DecisionWords.Refused(code, shell.Notation);
            if (Bottles)
                Sugar(litres, volumes, celsius);
            else
                Pressure(Packaging.InKeg(litres, volumes, celsius));
            return null;
        });

    private void Sugar(double litres, double volumes, double highestC) => page.Ask(new ChoiceAsk(
        page,
        shell.Notation.Text("Which sugar?"),
        [],
        [.. Sugars.Select(s => new Row([Names.Sentence(FermentWords.Sugar(s, shell.Notation)), shell.Notation.Grams(Packaging.InBottles(litres, volumes, highestC, s).SugarG ?? 0)]))],
        (row, at) => Take(Packaging.InBottles(litres, volumes, highestC, Sugars[row]), at)));

    private void Pressure(Packaging keg) => Choice(
        shell.Notation.Text($"{FermentWords.Pressure(keg.PressurePa ?? 0, shell.Notation)} gauge (above the air's) for beer at {shell.Notation.Temp(keg.TempC)}"),
        shell.Notation.Text("Never above the keg's rated pressure; use a regulator with a relief valve."),
        [shell.Notation.Text("Write it down"), shell.Notation.Text("Type it again")],
        (row, at) =>
        {
            if (row == 0)
                Take(keg, at);
            else
                Volume();
        });

    private void Take(Packaging lot, DateTimeOffset now) => act(new RunCommand.After.Package(lot, _moreThanThereIs), now);

    private Packaging Lot(double litres, double volumes, double celsius) => new(kind, litres, volumes, celsius);

    private void Choice(string question, string caution, string[] rows, Action<int, DateTimeOffset> chosen) =>
        page.Ask(new ChoiceAsk(page, question, [Line.Of(caution, Tone.Warning)], [.. rows.Select(r => new Row([r]))], chosen));

    private void Quantity(string question, string example, ReadingKind reading, Func<double, DateTimeOffset, string?> take) =>
        Entry(question, example, (text, at) => shell.Typed.TryRead(reading, text, out var value, out var reason) ? take(value, at) : reason);

    private void Entry(string question, string example, Func<string, DateTimeOffset, string?> take) =>
        page.Ask(new EntryAsk(page, question, "", _ => Line.Of(shell.Notation.Text($"such as {example}"), Tone.Muted), take));

    /// <summary>The warmest reading of the last third of the time since pitching, as a hint.</summary>
    private string Warmest()
    {
        var temperatures = state.Readings.Where(r => r.Reading.Figure == FermenterFigure.Temperature).ToList();
        if (temperatures.Count == 0 || state.PitchedMs is not { } pitched)
            return shell.Notation.Target(20);
        var since = pitched + (temperatures[^1].AtMs - pitched) * 2 / 3;
        return shell.Notation.Text($"{shell.Notation.Temp(temperatures.Where(t => t.AtMs >= since).Max(t => t.Reading.Value))} as read");
    }
}
