using System.Collections.Immutable;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>A list of files, the chosen one read and shown beside it; a bad file says what is wrong with it.</summary>
internal abstract class ProfilePage<T>(Shell shell, IReadOnlyList<ProfileEntry> entries) : ListPage(shell)
    where T : class
{
    private readonly Dictionary<string, (T? Profile, string Fault)> _read = [];

    protected abstract string Title { get; }

    protected override int Count => entries.Count;

    protected abstract T Load(ProfileEntry entry);

    protected abstract void Chosen(T profile);

    protected abstract ImmutableArray<Line> Details(T profile);

    protected override void Choose(int row, DateTimeOffset now)
    {
        var (profile, fault) = Read(entries[row]);
        if (profile is null)
            Shell.Say(fault, Tone.Warning);
        else
            Chosen(profile);
    }

    protected override Screen Compose(DateTimeOffset now)
    {
        var (profile, fault) = Read(entries[Selected]);
        return new ListScreen(
            Title,
            Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
            [new Column("", 0)],
            [.. entries.Select(e => new Row([e.Name]))],
            Selected,
            profile is null ? [Line.Of(fault, Tone.Warning)] : Details(profile),
            KeyMap.Hints(Context));
    }

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
