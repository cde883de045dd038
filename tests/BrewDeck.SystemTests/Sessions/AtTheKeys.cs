using System.Diagnostics;
using System.Globalization;
using System.Text;
using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Terminal;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>
/// Somebody at the keys of the real program, with a clock that only moves when told to: real session, real journal on a folder,
/// real window. Every screen that a key brings up is kept.
/// </summary>
internal sealed class AtTheKeys : IDisposable
{
    public const string Space = " ", Enter = "\r", Escape = "\e", Up = "\e[A", Down = "\e[B", Left = "\e[D", PageDown = "\e[6~";

    private static readonly DateTimeOffset Morning = new(2026, 5, 30, 8, 0, 0, TimeSpan.Zero);
    private static readonly TimeSpan Hands = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan LoneEscape = TimeSpan.FromMilliseconds(60);

    private readonly StringBuilder _kept = new();
    private readonly List<TempFolder> _folders = [new()];
    private readonly (int Columns, int Rows) _size;
    private readonly Tongue _tongue;
    private Journal _journal = null!;
    private Bench _bench = null!;

    public AtTheKeys(int columns = 80, int rows = 24, Tongue? tongue = null)
    {
        _tongue = tongue ?? Tongue.English;
        _size = (columns, rows);
        ImportedRecipe.ImportInto(Folder);
        Open("start");
    }

    public SteppedTime Time { get; } = new(Morning);

    public Session Session { get; private set; } = null!;

    public string Folder => _folders[^1].Path;

    public string Kept => _kept.ToString();

    public string Text => _bench.Text();

    /// <summary>Every key that was struck, as sent.</summary>
    public List<string> Struck { get; } = [];

    public IReadOnlyList<RunEvent> Events => _journal.Read(Session.Batch!.Value);

    /// <summary>The batch's lines as they are kept.</summary>
    public IReadOnlyList<string> Record => [.. Events.Select(LineOf)];

    /// <summary>How often the bell rang.</summary>
    public int Rings { get; private set; }

    public DateTimeOffset Now => Time.GetUtcNow();

    public AtTheKeys Strike(string key, string? name = null, bool keep = true)
    {
        Time.Pass(Hands);
        Send(key);
        if (key == Escape)
        {
            Time.Pass(LoneEscape);
            _bench.Step();
        }
        if (keep)
            Keep(name ?? NameOf(key));
        return this;
    }

    public AtTheKeys Strike(params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
            Strike(key, null);
        return this;
    }

    /// <summary>A line key by key, and Enter. The first digit may open it.</summary>
    public AtTheKeys Line(string text)
    {
        Time.Pass(Hands);
        foreach (var key in text)
            Send(key.ToString());
        Keep($"typed {text}");
        return Strike(Enter);
    }

    public static string LineOf(RunEvent happened) => Encoding.ASCII.GetString(EventCodec.Encode(happened));

    /// <summary>The arrow down to a row of a list.</summary>
    public void DownTo(int row)
    {
        for (var i = 0; i < row; i++)
            Strike(Down);
    }

    /// <summary>Moves to the row of a list that begins so, and takes it.</summary>
    public AtTheKeys Pick(string row)
    {
        MoveTo(row);
        return Strike(Enter);
    }

    /// <summary>Moves to the row of a list that begins so.</summary>
    public AtTheKeys MoveTo(string row)
    {
        var list = Assert.IsType<ListScreen>(Session.Screen);
        var at = list.Rows.ToList().FindIndex(r => r.Cells[0].StartsWith(row, StringComparison.Ordinal));
        Assert.True(at >= 0, $"no row {row} in {Text}");
        for (var i = list.Selected; i != at; i += Math.Sign(at - i))
            Strike(at > i ? Down : Up);
        return this;
    }

    /// <summary>As the disk has it now.</summary>
    public string CopyOfFolder()
    {
        var copy = new TempFolder();
        CopyAsItIs(Folder, copy.Path);
        _folders.Insert(0, copy);
        return copy.Path;
    }

    public AtTheKeys Resize(int columns, int rows)
    {
        _bench.Resize(columns, rows);
        return this;
    }

    public AtTheKeys Wait(TimeSpan time)
    {
        Time.Pass(time);
        _bench.Step();
        return this;
    }

    /// <summary>Until what the deck shows is due; at once when it is.</summary>
    public AtTheKeys WaitUntilDue()
    {
        var focus = Session.Focus!;
        var dueMs = focus.Act == FocusAct.Finish ? EndMs(focus.StepId) : focus.DueMs;
        var left = TimeSpan.FromMilliseconds(dueMs - Now.ToUnixTimeMilliseconds());
        return left > TimeSpan.Zero ? Wait(left) : this;
    }

    /// <summary>The program is killed: nothing of it is left but what its files hold, and it is started again.</summary>
    public AtTheKeys KillAndStartAgain()
    {
        var left = new TempFolder();
        CopyAsItIs(Folder, left.Path);
        _bench.Dispose();
        _journal.Dispose();
        _folders.Add(left);
        Open("killed and started again");
        return this;
    }

    public void Dispose()
    {
        _bench.Dispose();
        _journal.Dispose();
        foreach (var folder in _folders)
            folder.Dispose();
    }

    /// <summary>What the brewer sees, without the line that says what has just happened.</summary>
    public string WithoutNotice() => StillOf(Session.Screen with { Notice = null });

    private string StillOf(Screen screen) => BrewDeck.Terminal.Stills.StillScreen.Of(screen, _size.Columns, _size.Rows).ToText();

    private void Open(string how)
    {
        _journal = Journal.Open(new FolderDisk(Folder), Workplace.StatusOf);
        Session = new Session(
            new SessionPorts(_journal, ProfileFolder.BesideProgram(Folder), Writer: new ProfileWriter(Folder, ProfileFolder.BesideProgram(Folder))), new SessionSettings { ProgramVersion = "test", Tongue = _tongue }, Now);
        _bench = new Bench(Session, Time, _size.Columns, _size.Rows);
        _bench.Pump.Ring += () => Rings++;
        Keep(how);
    }

    private void Send(string key)
    {
        Struck.Add(key);
        _bench.Type(key);
    }

    private void Keep(string how) => _kept.Append(CultureInfo.InvariantCulture, $"=== {Now:HH:mm:ss} {how}\n{Text}");

    private long EndMs(string stepId) =>
        Session.State!.MsAt(Session.Forecast!.Rest.FirstOrDefault(s => s.Spec.Id == stepId)?.EndS ?? 0, Now.ToUnixTimeMilliseconds());

    // by another program: the locks of the one that has the files open do not keep it out
    private static void CopyAsItIs(string from, string to)
    {
        using var copy = Process.Start("cp", ["-r", Path.Combine(from, "."), to]);
        copy.WaitForExit();
        Assert.Equal(0, copy.ExitCode);
    }

    private static string NameOf(string key) => key switch
    {
        Space => "space",
        Enter => "enter",
        Escape => "esc",
        Up => "up",
        Down => "down",
        PageDown => "page down",
        _ => key,
    };
}
