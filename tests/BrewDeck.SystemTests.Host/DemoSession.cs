using System.Globalization;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.SystemTests.Terminal;

namespace BrewDeck.SystemTests.Host;

/// <summary>
/// A running clock on a sample screen. q ends, x throws, t throws on another thread, b rings, l and s and d choose the
/// screen, a digit opens a line to type; every other key is named in the notice.
/// </summary>
internal sealed class DemoSession : ISession
{
    private DateTimeOffset _now;
    private Screen _base = SampleScreens.Rest;
    private Line? _notice;
    private EntryOverlay? _entry;

    public Screen Screen => _base is DeckScreen deck
        ? deck with { Corner = Clock, Big = _now.ToString("mm:ss", CultureInfo.InvariantCulture), Notice = _notice, Overlay = _entry }
        : _base with { Corner = Clock, Notice = _notice, Overlay = _entry };

    public DateTimeOffset? NextTick => _now.AddMilliseconds(1000 - _now.Millisecond);

    public bool Ended { get; private set; }

    private bool _bell;

    public bool TakeBell() => _bell;

    private string Clock => _now.ToString("HH:mm:ss", CultureInfo.InvariantCulture);

    public void Receive(Input input, DateTimeOffset now)
    {
        _now = now;
        _bell = false;
        switch (input)
        {
            case Input.Typed(var text) when _entry is not null:
                _entry = _entry with { Hint = Line.Of($"understood as [{text}]") };
                break;
            case Input.Submitted(var text):
                (_entry, _notice) = (null, Line.Of($"taken [{text}]"));
                break;
            case Input.Key(var stroke):
                Strike(stroke);
                break;
            case Input.Resized(var columns, var rows):
                _notice = Line.Of($"size {columns}x{rows}");
                break;
        }
    }

    private void Strike(KeyStroke stroke)
    {
        _notice = Line.Of($"key {stroke.Name} {stroke.Character}".Trim());
        switch (stroke)
        {
            case { Name: KeyName.Escape }:
                _entry = null;
                break;
            case { Character: 'q' }:
                Ended = true;
                break;
            case { Character: 'x' }:
                throw new InvalidOperationException("thrown by the session");
            case { Character: 't' }:
                new Thread(() => throw new InvalidOperationException("thrown on another thread")).Start();
                break;
            case { Character: 'b' }:
                _bell = true;
                break;
            case { Character: 'd' }:
                _base = SampleScreens.Rest;
                break;
            case { Character: 'l' }:
                _base = SampleScreens.LongList;
                break;
            case { Character: 's' }:
                _base = SampleScreens.Sheet;
                break;
            case { Character: >= '0' and <= '9' }:
                _entry = new EntryOverlay("Reading of the tun", stroke.Character.ToString(), Line.Of("°C"), null);
                break;
        }
    }
}
