using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Asks;

/// <summary>A line that acts with every letter; Esc leaves it as it was.</summary>
/// <param name="before">What stands there already.</param>
/// <param name="search">Told what is typed.</param>
/// <param name="found">What that found, in words.</param>
internal sealed class SearchAsk(Page page, string question, string before, Action<string> search, Func<string> found) : Ask
{
    public override KeyContext Context => KeyContext.Entry;

    public override Overlay Show() => new EntryOverlay(question, before, Line.Of(found(), Tone.Muted), null);

    public override void Typed(string text) => search(text);

    public override void Submitted(string text, DateTimeOffset now)
    {
        search(text);
        page.Close(this);
    }

    public override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command != Command.Back)
            return;
        search(before);
        page.Close(this);
    }
}
