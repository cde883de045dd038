using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>One screen with what its keys do, and the question that may lie on top of it.</summary>
internal abstract class Page(Shell shell)
{
    private Ask? _ask;

    protected Shell Shell => shell;

    public abstract KeyContext Context { get; }

    /// <summary>The place where the next key is struck.</summary>
    public KeyContext Where => _ask?.Context ?? Context;

    public bool Typing => Where.HasFlag(KeyContext.Entry);

    public Screen Show(DateTimeOffset now)
    {
        var screen = Compose(now) with { Notice = shell.Notice, Notation = shell.Notation };
        return _ask is null ? screen : screen with { Overlay = _ask.Show(), Keys = KeyMap.Hints(_ask.Context, Shell.Notation) };
    }

    public void Handle(KeyBinding binding, KeyStroke stroke, DateTimeOffset now)
    {
        if (binding.Command == Command.Reckoner)
            ReckonerPage.Enter(shell);
        else if (_ask is { } ask)
            ask.Handle(binding.Command, stroke, now);
        else if (binding.Command == Command.Help)
            Help();
        else
            Handle(binding.Command, stroke, now);
    }

    private void Help()
    {
        // the same key closes it again
        if (this is HelpPage)
            shell.Pop();
        else
            shell.Push(new HelpPage(shell, Context));
    }

    /// <summary>A key that does nothing here.</summary>
    public void Unbound(KeyStroke stroke)
    {
        if (_ask is null)
            Ignored(stroke);
    }

    public void Typed(string text) => _ask?.Typed(text);

    public void Submitted(string text, DateTimeOffset now) => _ask?.Submitted(text, now);

    public void Ask(Ask ask) => _ask = ask;

    public void Close(Ask ask)
    {
        if (ReferenceEquals(_ask, ask))
            _ask = null;
    }

    /// <summary>When this screen changes by itself; null: it does not.</summary>
    public virtual DateTimeOffset? NextTick(DateTimeOffset now) => null;

    protected abstract Screen Compose(DateTimeOffset now);

    /// <summary>Mostly nobody need know.</summary>
    protected virtual void Ignored(KeyStroke stroke)
    {
    }

    protected virtual void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.Back)
            shell.Pop();
    }
}
