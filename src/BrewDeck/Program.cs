using BrewDeck.Commands;

namespace BrewDeck;

internal static class Program
{
    private static int Main(string[] args)
    {
        var parsed = CommandTable.Root(TimeProvider.System, StandardStreams.Output(), StandardStreams.Errors()).Parse(args);
        if (parsed.Errors.Count == 0)
            return parsed.Invoke();
        foreach (var error in parsed.Errors)
            StandardStreams.Errors().WriteLine($"brewdeck: {error.Message} \"brewdeck --help\" lists what is known.");
        return ExitCode.Usage;
    }
}
