using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Crash;

/// <summary>
/// A second process that appends to a logbook until it is killed, and says on its standard output what it holds for acknowledged.
/// It is this assembly, started with a variable set.
/// </summary>
internal static class AppendingChild
{
    /// <summary>It ends by itself when nobody is left to kill it.</summary>
    private const int MostEvents = 5_000;

    private const string Folder = "BREWDECK_TEST_APPEND_TO";

    public static Process Start(string folder)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(start.FileName) == "dotnet")
            start.ArgumentList.Add(typeof(AppendingChild).Assembly.Location);
        start.Environment[Folder] = folder;
        return Process.Start(start)!;
    }

    [ModuleInitializer]
    internal static void RunWhenAsked()
    {
        if (Environment.GetEnvironmentVariable(Folder) is not { Length: > 0 } folder)
            return;
        using var journal = Journal.Open(new FolderDisk(folder), Days.StatusOf);
        var batch = journal.Open(Days.Opened(steps: 2));
        for (var seq = 0; seq < MostEvents; seq++)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{batch} {seq}"));
            journal.Append(batch, seq % 3 == 0 ? Days.Started(seq) : Days.Reading(seq, 66));
        }

        Environment.Exit(0);
    }
}
