using System.Collections.Immutable;
using BrewDeck.Deck.Probes;

namespace BrewDeck.Deck;

/// <summary>Everything that can reach the session.</summary>
public abstract record Input
{
    private Input()
    {
    }

    /// <summary>A key, outside a line that is being typed.</summary>
    public sealed record Key(KeyStroke Stroke) : Input;

    /// <summary>The line being typed has changed to this.</summary>
    public sealed record Typed(string Text) : Input;

    /// <summary>The line being typed was finished with Enter.</summary>
    public sealed record Submitted(string Text) : Input;

    /// <summary>Time has passed.</summary>
    public sealed record Tick : Input;

    public sealed record Resized(int Columns, int Rows) : Input;

    /// <summary>A probe has measured.</summary>
    /// <param name="Unread">Lines of it that could not be read, since the start.</param>
    /// <param name="Why">Why the last of them could not; null: none yet.</param>
    public sealed record Offered(ImmutableArray<ProbeValue> Values, int Unread = 0, string? Why = null) : Input;

    /// <summary>The probe is not there any more, or not yet.</summary>
    public sealed record ProbeGone : Input;
}

public enum KeyName
{
    Character,
    Space,
    Enter,
    Escape,
    Backspace,
    Up,
    Down,
    Left,
    Right,
    PageUp,
    PageDown,
    Home,
    End,
    Tab,
}

/// <param name="Character">For <see cref="KeyName.Character"/> only.</param>
public readonly record struct KeyStroke(KeyName Name, char Character = '\0')
{
    public static KeyStroke Of(char character) => new(KeyName.Character, character);
}
