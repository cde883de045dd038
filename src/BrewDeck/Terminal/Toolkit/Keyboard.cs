using BrewDeck.Terminal.Panes;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Input = BrewDeck.Deck.Input;
using KeyName = BrewDeck.Deck.KeyName;
using KeyStroke = BrewDeck.Deck.KeyStroke;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>
/// Stands before every binding of the toolkit (Esc that quits, Ctrl-Z, Tab that moves the focus): a key goes to the session,
/// or to the line that is being typed, or nowhere.
/// </summary>
internal sealed class Keyboard
{
    private readonly DeckWindow _window;
    private readonly Action<Input> _receive;

    public Keyboard(IApplication application, DeckWindow window, Action<Input> receive)
    {
        (_window, _receive) = (window, receive);
        application.Keyboard.KeyDown += (_, key) => key.Handled = Take(key);
        application.Paste += (_, paste) => paste.Handled = TakePaste(paste.Text);
    }

    /// <summary>Ctrl-C was struck.</summary>
    public event Action? StopAsked;

    /// <summary>Ctrl-Z was struck.</summary>
    public event Action? SuspendAsked;

    /// <returns>False: the line being typed is to have it.</returns>
    private bool Take(Key key)
    {
        if (key == Key.C.WithCtrl)
            StopAsked?.Invoke();
        else if (key == Key.Z.WithCtrl)
            SuspendAsked?.Invoke();
        else if (_window.IsTyping)
            return TakeTyping(key);
        else if (KeyTable.Stroke(key) is { } stroke)
            _receive(new Input.Key(stroke));
        return true;
    }

    private bool TakeTyping(Key key)
    {
        var stroke = KeyTable.Stroke(key);
        switch (stroke?.Name)
        {
            // another kind of reading: the line has no use for them
            case KeyName.Tab or KeyName.Up or KeyName.Down:
                _receive(new Input.Key(stroke.Value));
                return true;
            case KeyName.Enter:
                _receive(new Input.Submitted(_window.Entry.Typed));
                return true;
            case KeyName.Escape:
                _receive(new Input.Key(new KeyStroke(KeyName.Escape)));
                return true;
            case KeyName.Backspace when key.IsCtrl:
                _window.Entry.Backspace();
                return true;
            case KeyName.Character or KeyName.Space or KeyName.Backspace or KeyName.Left or KeyName.Right or KeyName.Home or KeyName.End:
                return false;
            default:
                return key != Key.Delete;
        }
    }

    /// <summary>Pasted text goes into a line that is being typed; it is never taken for keys.</summary>
    private bool TakePaste(string text)
    {
        if (_window.IsTyping) _window.Entry.Paste(FirstLine(text));
        return true;
    }

    private static string FirstLine(string text)
    {
        var line = text.AsSpan().TrimStart("\r\n");
        var end = line.IndexOfAny('\r', '\n');
        return string.Concat((end < 0 ? line : line[..end]).ToString().Where(c => !char.IsControl(c)));
    }
}
