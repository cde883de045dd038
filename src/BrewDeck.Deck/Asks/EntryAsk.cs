using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Asks;

/// <summary>One typed line.</summary>
/// <param name="hint">What is expected, and how the text so far is understood.</param>
/// <param name="replaces">What stands there at first is replaced by what is typed.</param>
/// <param name="take">Takes the text; returns why it cannot be taken, or null. The question is closed before it is called.</param>
internal sealed class EntryAsk(
    Page page, string question, string initial, Func<string, Line> hint, Func<string, DateTimeOffset, string?> take, bool replaces = false) : Ask
{
    private string? _text;
    private Line? _fault;

    public override KeyContext Context => KeyContext.Entry;

    public override Overlay Show() => new EntryOverlay(question, initial, hint(_text ?? initial), _fault) { Replaces = replaces };

    public override void Typed(string text) => (_text, _fault) = (text, null);

    public override void Submitted(string text, DateTimeOffset now)
    {
        _text = text;
        page.Close(this);
        if (take(text, now) is not { } fault)
            return;
        _fault = Line.Of(fault, Tone.Warning);
        page.Ask(this);
    }

    public override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.Back)
            page.Close(this);
    }
}
