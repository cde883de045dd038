using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Logbook;

public sealed class LogFolderTests
{
    [Fact]
    public void ALogbookInUseSaysByWhichProcessAndSinceWhen()
    {
        using var folder = new TempFolder();
        var time = new Terminal.SteppedTime(new DateTimeOffset(2026, 5, 30, 8, 0, 0, TimeSpan.Zero));
        var place = new Workplace(folder.Path, time, TextWriter.Null, TextWriter.Null);
        using var first = place.OpenJournal();

        var said = Assert.Throws<LogbookException>(place.OpenJournal);

        Assert.Contains($"another brewdeck (process {Environment.ProcessId} since 2026-05-30 ", said.Message, StringComparison.Ordinal);
        Assert.True(DiskTrouble.IsInUse(said));
    }

    [Fact]
    public void LessonsDebriefsAndTrendsAreReadBesideAnOpenDeck()
    {
        using var folder = new TempFolder();
        var (output, errors) = (new StringWriter { NewLine = "\n" }, new StringWriter());
        var place = new Workplace(folder.Path, new Terminal.SteppedTime(new DateTimeOffset(2026, 5, 30, 8, 0, 0, TimeSpan.Zero)), output, errors);
        using var open = place.OpenJournal();
        var events = Days.Events(2).ToList();
        var batch = open.Open((BatchOpened)events[0]);
        foreach (var happened in events.Skip(1))
            open.Append(batch, happened);

        Assert.Equal(ExitCode.Done, LessonsCommand.Run(place, "quayside-65", rehearsed: false, json: false, Notation.Metric));
        Assert.StartsWith("Lessons for Quayside 65 from 0 batches\n", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, place.LogCommands(UnitSystem.Metric).Trends(LogFormat.Csv, rehearsed: false, ""));
        Assert.Contains("\r\n1,2026-09-21T", output.ToString(), StringComparison.Ordinal);
        Assert.Empty(errors.ToString());
    }

    [Theory]
    [InlineData(DataFolders.Xdg, "HOME=/home/b", "/home/b/.local/share/brewdeck")]
    [InlineData(DataFolders.Xdg, "HOME=/home/b;XDG_DATA_HOME=/data", "/data/brewdeck")]
    [InlineData(DataFolders.Xdg, "HOME=/home/b;XDG_DATA_HOME=data", "/home/b/.local/share/brewdeck")]
    [InlineData(DataFolders.Xdg, "XDG_DATA_HOME=/data", "/data/brewdeck")]
    [InlineData(DataFolders.MacOs, "HOME=/home/b", "/home/b/Library/Application Support/brewdeck")]
    [InlineData(DataFolders.Windows, "LOCALAPPDATA=/home/b", "/home/b/brewdeck")]
    public void TheUsersOwnDataFolder(object system, string variables, string folder) =>
        Assert.Equal(folder, Resolve(null, (DataFolders)system, variables).Replace('\\', '/'));

    [Theory]
    [InlineData(DataFolders.Xdg, "", "HOME: is not set")]
    [InlineData(DataFolders.Xdg, "HOME=", "HOME: is not set")]
    [InlineData(DataFolders.Xdg, "HOME=/gone", "/gone: there is no such home folder")]
    [InlineData(DataFolders.MacOs, "", "HOME: is not set")]
    [InlineData(DataFolders.Windows, "", "LOCALAPPDATA: is not set")]
    public void AHomeThatIsMissingIsSaid(object system, string variables, string says)
    {
        var e = Assert.Throws<LogbookException>(() => Resolve(null, (DataFolders)system, variables));
        Assert.StartsWith(says, e.Message, StringComparison.Ordinal);
        Assert.EndsWith("or give --logbook PATH", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOptionNeedsNoHome() =>
        Assert.Equal(Path.GetFullPath("shed"), Resolve("shed", DataFolders.Xdg, ""));

    [Fact]
    public void AnEmptyOptionIsRefused() =>
        Assert.Throws<LogbookException>(() => Resolve("", DataFolders.Xdg, "HOME=/home/b"));

    private static string Resolve(string? option, DataFolders system, string variables)
    {
        var set = variables.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1]);
        return LogFolder.Resolve(option, set.GetValueOrDefault, path => path != "/gone", system);
    }
}
