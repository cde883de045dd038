using System.CommandLine;
using BrewDeck.Commands;

namespace BrewDeck;

internal static class Program
{
    private static readonly InvocationConfiguration ThrowsFaults = new() { EnableDefaultExceptionHandler = false };

    private static int Main(string[] args)
    {
        var parsed = CommandTable.Root(TimeProvider.System, StandardStreams.Output(), StandardStreams.Errors()).Parse(args);
        if (UsageLine.Of(parsed) is not { } fault)
            return new FaultGuard(() => CommandTable.FolderOf(parsed), TimeProvider.System, StandardStreams.Errors()).Run(() => parsed.Invoke(ThrowsFaults));
        StandardStreams.Errors().WriteLine($"brewdeck: {fault}");
        return ExitCode.Usage;
    }
}
