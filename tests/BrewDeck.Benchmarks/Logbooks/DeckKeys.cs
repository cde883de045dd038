using BrewDeck.Deck;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>Keys into a session, each with the screen that it gives.</summary>
/// <param name="begin">A fresh session.</param>
internal sealed class DeckKeys(Func<Session> begin, DateTimeOffset now)
{
    private Session _session = begin();

    public int Begin()
    {
        _session = begin();
        return Seen();
    }

    /// <summary>Moves to a row of the opening screen and enters it.</summary>
    public int Pick(string row)
    {
        var list = (ListScreen)_session.Screen;
        var at = list.Rows.Select(r => r.Cells[0]).ToList().IndexOf(row);
        for (var i = list.Selected; i != at; i += Math.Sign(at - i))
            Named(at > i ? KeyName.Down : KeyName.Up);
        return Named(KeyName.Enter);
    }

    public int Back() => Letter('q');

    public int Named(KeyName name) => Strike(new KeyStroke(name));

    public int Letter(char letter) => Strike(KeyStroke.Of(letter));

    public int Typed(string text)
    {
        _session.Receive(new Input.Typed(text), now);
        return Seen();
    }

    private int Strike(KeyStroke stroke)
    {
        _session.Receive(new Input.Key(stroke), now);
        return Seen();
    }

    private int Seen() => _session.Screen.Title.Length;
}
