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
