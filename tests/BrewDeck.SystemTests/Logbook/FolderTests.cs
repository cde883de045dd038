using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Logbook;

public sealed class FolderTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void OnlyTheOwnerMayLookIn()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the user's own data folder has that by itself");
        using var journal = Open("log");
        journal.Open(Days.Opened());
        Assert.Equal("rwx------", ModeOf(_temp.At("log")));
        Assert.Equal(Enumerable.Repeat("rw-------", 4), Directory.GetFiles(_temp.At("log")).Select(ModeOf));
    }

    [Fact]
    public void ASecondProgramIsRefusedAndTheFirstGoesOn()
    {
        using var first = Open("log");
        first.Open(Days.Opened());
        var e = Assert.Throws<LogbookException>(() => Open("log"));
        Assert.Equal($"{_temp.At("log")}: another brewdeck has this logbook open; close it, or give --logbook PATH", e.Message);
        first.Append(1, new NoteWritten(1, "still here"));
        first.Dispose();
        using var after = Open("log");
        Assert.Equal(2, after.Read(1).Count);
    }

    [Fact]
    public void AFileIsNoLogbook()
    {
        File.WriteAllText(_temp.At("notes.txt"), "x");
        var e = Assert.Throws<LogbookException>(() => Open("notes.txt"));
        Assert.Equal($"{_temp.At("notes.txt")}: is a file; a logbook is a folder, give one with --logbook PATH", e.Message);
    }

    [Fact]
    public void AFolderThatMayNotBeWrittenIsSaid()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "permissions are tried on Linux");
        var e = Assert.Throws<LogbookException>(() => Journal.Open(new FolderDisk(ReadOnlyFolder()), Days.StatusOf));
        Assert.EndsWith(": may not be written; change its permissions, or give --logbook PATH", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AFolderThatMayNotBeMadeIsSaid()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "permissions are tried on Linux");
        var e = Assert.Throws<LogbookException>(() => new FolderDisk(Path.Combine(ReadOnlyFolder(), "log")));
        Assert.Contains("--logbook PATH", e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', e.Message);
    }

    [Fact]
    public void ADatabaseThatIsNoneIsSaidAndRepaired()
    {
        using (var journal = Open("log"))
            journal.Open(Days.Opened());
        File.WriteAllText(_temp.At("log/batches.db"), new string('x', 3 * 8192));
        var e = Assert.Throws<LogbookException>(() => Open("log"));
        Assert.Contains("batches.db: the database is damaged; \"brewdeck log repair\"", e.Message, StringComparison.Ordinal);
        LogRepair.Run(new FolderDisk(_temp.At("log")), Days.StatusOf, TimeSpan.FromSeconds(10));
        AssertOneBatch();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void ADatabaseCutToLessThanAPageIsMadeAgain(int length)
    {
        using (var journal = Open("log"))
            journal.Open(Days.Opened());
        File.WriteAllText(_temp.At("log/batches.db"), new string('x', length));
        AssertOneBatch();
        AssertOneBatch();
    }

    private void AssertOneBatch()
    {
        using var journal = Open("log");
        Assert.Equal(1, Assert.Single(journal.List()).Number);
        Assert.Single(journal.Read(1));
    }

    /// <summary>Of our own where permissions bind us; root is above them, but not above the kernel's.</summary>
    private string ReadOnlyFolder()
    {
        if (Environment.IsPrivilegedProcess)
            return "/sys/kernel";
        Directory.CreateDirectory(_temp.At("closed"));
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(_temp.At("closed"), UnixFileMode.UserRead | UnixFileMode.UserExecute);
        return _temp.At("closed");
    }

    private Journal Open(string name) => Journal.Open(new FolderDisk(_temp.At(name)), Days.StatusOf);

    private static string ModeOf(string path)
    {
        var mode = OperatingSystem.IsWindows() ? 0 : (int)File.GetUnixFileMode(path);
        return string.Concat("rwxrwxrwx".Select((c, i) => (mode & (1 << (8 - i))) != 0 ? c : '-'));
    }
}
