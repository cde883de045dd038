using System.Collections.Immutable;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Asks;

/// <param name="chosen">Called with the index of the chosen row once the question is closed.</param>
/// <param name="left">Called when it was left without a choice.</param>
/// <param name="byArrows">No digit moves to a row: a reading that is typed while the question stands must not answer it.</param>
/// <param name="selected">Row that the choice begins at.</param>
internal sealed class ChoiceAsk(
    Page page,
    string question,
    ImmutableArray<Line> lines,
    ImmutableArray<Row> options,
    Action<int, DateTimeOffset> chosen,
    Action<DateTimeOffset>? left = null,
    bool byArrows = false,
    int selected = 0) : Ask
{
    private int _selected = selected;

    public override KeyContext Context => KeyContext.Choice;

    public override Overlay Show() => new ChoiceOverlay(question, lines, options, _selected);

    public override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Up:
                Select(_selected - 1);
                break;
            case Command.Down:
                Select(_selected + 1);
                break;
            case Command.PickRow when !byArrows:
                Select(stroke.Character - '1');
                break;
            case Command.Choose:
                page.Close(this);
                chosen(_selected, now);
                break;
            case Command.Back:
                page.Close(this);
                left?.Invoke(now);
                break;
        }
    }

    private void Select(int row)
    {
        if (row >= 0 && row < options.Length)
            _selected = row;
    }
}
