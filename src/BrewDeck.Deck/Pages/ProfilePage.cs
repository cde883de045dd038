using System.Collections.Immutable;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>A list of files, the chosen one read and shown beside it; a bad file says what is wrong with it.</summary>
/// <param name="list">Lists the files; called again after one was written.</param>
internal abstract class ProfilePage<T>(Shell shell, Func<IReadOnlyList<ProfileEntry>> list) : ListPage(shell)
    where T : class
{
    private IReadOnlyList<ProfileEntry> _entries = list();
    private int _written = shell.ProfilesWritten;
    private readonly Dictionary<string, (T? Profile, string Fault)> _read = [];

    protected abstract string Title { get; }

    protected IReadOnlyList<ProfileEntry> Entries
    {
        get
        {
            if (_written != Shell.ProfilesWritten)
            {
                _written = Shell.ProfilesWritten;
                var chosen = Selected < _entries.Count ? _entries[Selected].Path : "";
                _entries = list();
                _read.Clear();
                // what was written may stand above it: the cursor stays on what it was on
                if (_entries.ToList().FindIndex(e => e.Path == chosen) is >= 0 and var at)
                    Select(at);
            }
            return _entries;
        }
    }

    protected override int Count => Entries.Count;

    protected abstract T Load(ProfileEntry entry);

    protected abstract void Chosen(T profile);

    protected abstract ImmutableArray<Line> Details(T profile);

    protected override void Choose(int row, DateTimeOffset now)
    {
        var (profile, fault) = Read(Entries[row]);
        if (profile is null)
            Shell.Say(fault, Tone.Warning);
        else
            Chosen(profile);
    }

    protected override Screen Compose(DateTimeOffset now)
    {
        var (profile, fault) = Read(Entries[Selected]);
        return new ListScreen(
            Title,
            Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
            [new Column("", 0)],
            [.. Entries.Select(e => new Row([e.Name]))],
            Selected,
            profile is null ? [Line.Of(fault, Tone.Warning)] : Details(profile),
            KeyMap.Hints(Context, Shell.Notation));
    }

    /// <summary>The profile of a row; null when its file cannot be read.</summary>
    protected T? Peek(int row) => Read(Entries[row]).Profile;

    private (T? Profile, string Fault) Read(ProfileEntry entry)
    {
        if (_read.TryGetValue(entry.Path, out var known))
            return known;
        try
        {
            known = (Load(entry), "");
        }
        catch (ProfileException bad)
        {
            known = (null, bad.Message);
        }
        return _read[entry.Path] = known;
    }
}
