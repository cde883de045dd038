using System.CommandLine;
using BrewDeck.Commands;

namespace BrewDeck;

internal static class Program
{
    private static readonly InvocationConfiguration ThrowsFaults = new() { EnableDefaultExceptionHandler = false };

    private static int Main(string[] args)
    {
        var parsed = CommandTable.Root(TimeProvider.System, StandardStreams.Output(), StandardStreams.Errors()).Parse(args);
        if (parsed.Errors.Count == 0)
            return new FaultGuard(() => CommandTable.FolderOf(parsed), TimeProvider.System, StandardStreams.Errors()).Run(() => parsed.Invoke(ThrowsFaults));
        foreach (var error in parsed.Errors)
            StandardStreams.Errors().WriteLine($"brewdeck: {error.Message} \"brewdeck --help\" lists what is known.");
        return ExitCode.Usage;
    }
}
