using System.CommandLine;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck recipes</c>, <c>brewhouses</c>, <c>waters</c>: what there is, by the words that the options take.</summary>
internal static class StockCommand
{
    public static IEnumerable<Command> All(Func<ParseResult, Workplace> place) =>
    [
        Of(place, "recipes", "--recipe", p => p.Recipes()),
        Of(place, "brewhouses", "--brewhouse", p => p.Brewhouses()),
        Of(place, "waters", "--water", p => p.Waters()),
    ];

    private static Command Of(Func<ParseResult, Workplace> place, string name, string option, Func<ProfileFolder, IReadOnlyList<ProfileEntry>> entries)
    {
        var command = new Command(name, $"Lists the {name} there are, your own first: what {option} takes, and what each is called.");
        command.SetAction(p =>
        {
            var at = place(p);
            return at.Guard(() => Write(at.Output, entries(at.Profiles())));
        });
        return command;
    }

    private static int Write(TextWriter output, IReadOnlyList<ProfileEntry> entries)
    {
        var width = entries.Select(e => Word(e).Length).DefaultIfEmpty(0).Max();
        foreach (var entry in entries)
            output.WriteLine($"{Word(entry).PadRight(width)}  {entry.Name}");
        return ExitCode.Done;
    }

    private static string Word(ProfileEntry entry) => Path.GetFileNameWithoutExtension(entry.Path);
}
