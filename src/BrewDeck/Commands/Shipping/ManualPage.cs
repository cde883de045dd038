using System.CommandLine;
using System.Text;

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
        return page.ToString();
    }

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
