using System.Text;
using BrewDeck.Deck;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>The toolkit's keys in the words of the session.</summary>
internal static class KeyTable
{
    private static readonly Dictionary<KeyCode, KeyName> Named = new()
    {
        [KeyCode.Space] = KeyName.Space,
        [KeyCode.Enter] = KeyName.Enter,
        [KeyCode.Esc] = KeyName.Escape,
        [KeyCode.Backspace] = KeyName.Backspace,
        [KeyCode.CursorUp] = KeyName.Up,
        [KeyCode.CursorDown] = KeyName.Down,
        [KeyCode.CursorLeft] = KeyName.Left,
        [KeyCode.CursorRight] = KeyName.Right,
        [KeyCode.PageUp] = KeyName.PageUp,
        [KeyCode.PageDown] = KeyName.PageDown,
        [KeyCode.Home] = KeyName.Home,
        [KeyCode.End] = KeyName.End,
        [KeyCode.Tab] = KeyName.Tab,

        // a keyboard that sends line feed for Enter or backspace for Backspace: the toolkit takes both for Ctrl
        [KeyCode.Enter | KeyCode.CtrlMask] = KeyName.Enter,
        [KeyCode.Backspace | KeyCode.CtrlMask] = KeyName.Backspace,
    };

    /// <returns>Null for a key that the session has no word for: chords, function keys, characters beyond 16 bits.</returns>
    public static KeyStroke? Stroke(Key key)
    {
        if (Named.TryGetValue(key.KeyCode, out var name)) return new KeyStroke(name);
        if (key.IsCtrl || key.IsAlt) return null;
        var rune = key.AsRune;
        return rune.IsBmp && rune.Value > ' ' && !Rune.IsControl(rune) ? KeyStroke.Of((char)rune.Value) : null;
    }
}
