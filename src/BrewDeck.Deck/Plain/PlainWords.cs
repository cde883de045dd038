using System.Globalization;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Plain;

/// <summary>What a typed line asks for, as the keys that would ask for it on the deck.</summary>
public static class PlainWords
{
    /// <summary>Places where a digit begins to type a value; elsewhere it is the number of a row.</summary>
    private const KeyContext TypesValues = KeyContext.Deck | KeyContext.SetUp | KeyContext.Choices | KeyContext.Sum | KeyContext.Recipe | KeyContext.Water;

    /// <returns>Null: nothing here is called that.</returns>
    public static IReadOnlyList<Input>? Of(string line, Screen screen, KeyContext where, Notation notation)
    {
        var word = line.Trim();
        if (where.HasFlag(KeyContext.Entry))
            return Entered(word, where, notation);
        if (word.StartsWith("row ", StringComparison.OrdinalIgnoreCase) && Row(word[4..], screen) is { } moves)
            return moves;
        if (word.Length > 0 && char.IsAsciiDigit(word[0]))
            return (where & TypesValues) != 0 ? Value(word) : Row(word, screen) is { } to ? [.. to, Key(KeyName.Enter)] : null;
        if (Find(word, where, notation) is { } stroke)
            return [new Input.Key(stroke)];
        return where.HasFlag(KeyContext.Choice) && Leaves(word, notation) ? [Key(KeyName.Escape)]
            : where.HasFlag(KeyContext.Naming) && word.Length > 0 && char.IsAsciiLetter(word[0]) ? Value(word)
            : null;
    }

    /// <summary>In a question these words mean the question itself, not the page of keys.</summary>
    public static bool AsksForHelp(string line, Notation notation) => line.Trim() is var word && (word is "?" || Same(Words(Command.Help), word) || Same(notation.Name(Words(Command.Help)), word));

    /// <summary>The words that work here, one sentence.</summary>
    public static string Said(KeyContext where, Notation notation)
    {
        if (where.HasFlag(KeyContext.Entry))
            return notation.Text($"Type it and press Enter; back leaves it as it was{(where.HasFlag(KeyContext.Kinds) ? notation.Text(", tab turns to another kind") : "")}.");
        var numbers = (where & TypesValues) != 0 ? notation.Text("a value") : notation.Text("the number of a row");
        return notation.Text($"Words: {string.Join(", ", Bindings(where).Select(b => Name(b, notation)).Where(n => n.Length > 0).Distinct())}; or {numbers}. An empty line says all again.");
    }

    private static IEnumerable<KeyBinding> Bindings(KeyContext where) => KeyMap.Table.Where(b => (b.Where & where) != 0);

    /// <summary>The name of a command in words; of those that only move about, none.</summary>
    private static string Name(KeyBinding binding, Notation notation) => binding.Command switch
    {
        Command.Up or Command.Down or Command.PageUp or Command.PageDown or Command.First or Command.Last or Command.PickRow or Command.WipeLock => "",
        Command.Reading => "",
        var command => notation.Name(Words(command)),
    };

    private static string Words(Command command) =>
        string.Concat(command.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static KeyStroke? Find(string word, KeyContext where, Notation notation) => Bindings(where)
        .Where(b => (b.Command == Command.GoOn && Same(Words(b.Command).Split(' ')[^1], word)) || Same(b.Shown, word) || Same(notation.Text(b.Hint), word) || Same(notation.Name(Words(b.Command)), word) || Same(Words(b.Command), word))
        .Select(b => (KeyStroke?)b.Strokes[0]).FirstOrDefault();

    private static bool Same(string name, string word) => name.Length > 0 && name.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static Input[] Entered(string word, KeyContext where, Notation notation) =>
        Leaves(word, notation) ? [Key(KeyName.Escape)]
        : where.HasFlag(KeyContext.Kinds) && word.ToUpperInvariant() is "TAB" ? [Key(KeyName.Tab)]
        : [new Input.Typed(word), new Input.Submitted(word)];

    /// <summary>A question, whether it is answered by a row or by a value, is left by the same words.</summary>
    private static bool Leaves(string word, Notation notation) =>
        word.ToUpperInvariant() is "ESC" or "BACK" or "Q" or "QUIT" || Same(notation.Text("back"), word) || Same(notation.Name(Words(Command.Back)), word);

    private static Input[] Value(string word) => [new Input.Key(KeyStroke.Of(word[0])), new Input.Typed(word), new Input.Submitted(word)];

    private static Input[]? Row(string number, Screen screen)
    {
        var (selected, count) = screen switch
        {
            { Overlay: ChoiceOverlay choice } => (choice.Selected, choice.Options.Length),
            ListScreen list => (list.Selected, list.Rows.Length),
            ChartScreen chart => (chart.Selected, chart.Drawings.Length),
            _ => (0, 0),
        };
        if (!int.TryParse(number, CultureInfo.InvariantCulture, out var row) || row < 1 || row > count)
            return null;
        var step = Key(screen is ChartScreen ? row - 1 < selected ? KeyName.Left : KeyName.Right : row - 1 < selected ? KeyName.Up : KeyName.Down);
        return [.. Enumerable.Repeat(step, Math.Abs(row - 1 - selected))];
    }

    private static Input Key(KeyName name) => new Input.Key(new KeyStroke(name));
}
