using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>One sum: its inputs are typed, the result stands beside them at once.</summary>
/// <param name="texts">Inputs typed before; changed as they are typed.</param>
internal class SumPage(Shell shell, Sum sum, Dictionary<string, string>? texts) : ListPage(shell)
{
    private readonly Dictionary<string, string> _texts = texts ?? new(StringComparer.Ordinal);

    public override KeyContext Context => KeyContext.Sum;

    public override DateTimeOffset? NextTick(DateTimeOffset now) => Corners.NextTick(Shell, now);

    protected override int Count => sum.Inputs.Length;

    protected override void Choose(int row, DateTimeOffset now) => Change(row, "", now);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command is Command.Change or Command.PickRow)
            Change(Selected, command == Command.PickRow ? stroke.Character.ToString() : "", now);
        else
            base.Handle(command, stroke, now);
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text(sum.Title),
        Corners.Of(Shell, now),
        [new Column(Shell.Notation.Text("input"), 0), new Column(Shell.Notation.Text("value"), 20, Right: true)],
        [.. sum.Inputs.Select(i => new Row([Shell.Notation.Text(i.Label), Shown(i)])), .. MoreRows],
        Selected,
        [.. Result(), .. SumLines.About(sum, Shell.Notation).Select(Pair)],
        KeyMap.Hints(Context, Shell.Notation));

    /// <summary>Below the inputs.</summary>
    protected virtual IEnumerable<Row> MoreRows => [];

    /// <summary>What the inputs give; null while one is missing.</summary>
    protected double[]? Results => SumReader.Read(sum, _texts, Shell.Notation).Values is { } values ? sum.Reckon(values) : null;

    /// <summary>Told each input that was read.</summary>
    protected virtual void Read(SumInput input)
    {
    }

    protected virtual void Change(int row, string typed, DateTimeOffset now)
    {
        if (sum.Inputs[row] is SumInput.Choice choice)
        {
            var at = choice.Options.IndexOf(_texts.GetValueOrDefault(choice.Name, choice.Default!));
            _texts[choice.Name] = choice.Options[(at + 1) % choice.Options.Length];
            return;
        }
        var input = sum.Inputs[row];
        Ask(new EntryAsk(this, Sentence(Shell.Notation.Text(input.Label)) + "?", typed, _ => Line.Of(Shell.Notation.Text($"such as {Shell.Notation.Decimals(input.Example)}"), Tone.Muted), (text, _) => Take(row, text)));
    }

    private string? Take(int row, string text)
    {
        var input = sum.Inputs[row];
        if (SumReader.One(input, text, Shell.Notation, out var fault) is null)
            return Sentence(fault) + ".";
        _texts[input.Name] = text.Trim();
        Read(input);
        Select(row + 1);
        return null;
    }

    private string Shown(SumInput input)
    {
        var text = _texts.GetValueOrDefault(input.Name, "");
        return input is SumInput.Choice ? Shell.Notation.Name(text.Length > 0 ? text : input.Default!) : text.Length > 0 ? text : Shell.Notation.Decimals(input.Default ?? "?");
    }

    private ImmutableArray<Line> Result()
    {
        var read = SumReader.Read(sum, _texts, Shell.Notation);
        if (read.Values is not { } values)
            return [Line.Of(Shell.Notation.Text($"Still wanted: {Shell.Notation.Text(sum.Inputs.First(i => i.Name == read.Input).Label)}."), Tone.Due)];
        var results = sum.Reckon(values);
        var gives = SumLines.Results(sum, results, Shell.Notation).Select((r, i) =>
            new Line([new Span(r.Label + ": ", Tone.Muted), new Span(r.Value, i == 0 ? Tone.Strong : Tone.Normal)]));
        var beside = SumLines.Beside(sum, results, Shell.Notation);
        return beside.IsEmpty ? [.. gives] : [.. gives, Pair((Shell.Notation.Text("by other rules"), string.Join("; ", beside.Select(b => $"{b.Label}: {b.Value}"))))];
    }

    private static Line Pair((string Label, string Value) about) => new([new Span(about.Label + ": ", Tone.Muted), new Span(about.Value)]);

    private static string Sentence(string text) => Wording.Names.Sentence(text);
}
