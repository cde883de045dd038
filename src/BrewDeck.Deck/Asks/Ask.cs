using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Asks;

/// <summary>A question on top of a page. It is answered, left, or replaced by another one.</summary>
internal abstract class Ask
{
    public abstract KeyContext Context { get; }

    public abstract Overlay Show();

    public virtual void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
    }

    public virtual void Typed(string text)
    {
    }

    public virtual void Submitted(string text, DateTimeOffset now)
    {
    }
}
