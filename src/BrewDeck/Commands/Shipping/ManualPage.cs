using System.CommandLine;
using System.Text;
using BrewDeck.Deck.Keys;
using Command = System.CommandLine.Command;

namespace BrewDeck.Commands.Shipping;

/// <summary>The manual page in roff, as man(7) describes it.</summary>
internal static class ManualPage
{
    public static string Of(RootCommand root)
    {
        var page = new StringBuilder()
            .Append(".TH BREWDECK 1\n.SH NAME\nbrewdeck \\- runs a brew day step by step\n.SH SYNOPSIS\n.B brewdeck\n[command] [options]\n")
            .Append(".SH DESCRIPTION\n").Append(Escaped(root.Description ?? "")).Append('\n')
            .Append("Exit status: 0 done, 1 refused or a check failed, 2 usage, 3 bad input file, 4 logbook trouble, 5 a fault of the program itself.\n.SH COMMANDS\n");
        foreach (var (path, command) in CommandTree.Of(root))
            Append(page, path, command);
        page.Append(".SH KEYS\nOn the deck, while a batch runs; ? shows those of each page.\n");
        foreach (var key in KeyMap.Table.Where(b => b.Where.HasFlag(KeyContext.Deck)))
            Item(page, key.Shown, key.Help.ToString());
        page.Append(".SH READINGS\nA bare number is in the unit that is asked for; any other is written behind it. A point and a comma both mark decimals.\n");
        foreach (var (written, means) in Written)
            Item(page, written, means);
        page.Append(".SH FILES\nIn the data folder, or where \\-\\-logbook says:\n");
        foreach (var (name, holds) in Files)
            Item(page, name, holds);
        return page.ToString();
    }

    private static readonly (string Written, string Means)[] Written =
    [
        ("66, 151f, 66c", "a temperature"),
        ("41.5, 11gal, 41@77, 32cm", "a volume; 41 L read at 77 °C; a depth in an upright vessel"),
        ("1.046, 1046, 1.046@40, 12.1p, 12.5bx", "a gravity by hydrometer; in a sample at 40 °C; in degrees Plato; by refractometer"),
        ("1:30, 90 min", "a time"),
    ];

    private static readonly (string Name, string Holds)[] Files =
    [
        ("~/.local/share/brewdeck", "the data folder (XDG_DATA_HOME counts; on other systems where they keep a user's data)"),
        ("batch-NUMBER.jsonl", "one batch, a line for each entry; they are the record, and all else is made from them"),
        ("brewhouses, recipes, waters, water-targets", "your own TOML files; they go before bundled ones of the same name"),
        ("catalogue.toml", "your own malts, hops and yeasts"),
    ];

    private static void Append(StringBuilder page, string path, Command command)
    {
        page.Append(".SS ").Append(Escaped(path)).Append('\n').Append(Escaped(command.Description ?? "")).Append('\n');
        foreach (var argument in command.Arguments.Where(a => !a.Hidden))
            Item(page, argument.Name, argument.Description);
        foreach (var option in command.Options.Where(o => !o.Hidden))
            Item(page, string.Join(", ", option.Aliases.Prepend(option.Name)) + (option.HelpName is { } value ? " " + value : ""), option.Description);
    }

    private static void Item(StringBuilder page, string name, string? does) =>
        page.Append(".TP\n.B ").Append(Escaped(name)).Append('\n').Append(Escaped(does ?? "")).Append('\n');

    /// <summary>A backslash and a leading dot or apostrophe mean something to roff; hyphens of options are to be copied as they stand.</summary>
    private static string Escaped(string text)
    {
        var plain = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return plain is ['.' or '\'', ..] ? "\\&" + plain : plain;
    }
}
