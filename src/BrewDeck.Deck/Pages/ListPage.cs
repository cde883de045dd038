using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>Rows with one of them chosen.</summary>
internal abstract class ListPage(Shell shell) : Page(shell)
{
    private const int PageRows = 10;

    public override KeyContext Context => KeyContext.List;

    protected int Selected { get; private set; }

    protected abstract int Count { get; }

    protected abstract void Choose(int row, DateTimeOffset now);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Up:
                Select(Selected - 1);
                break;
            case Command.Down:
                Select(Selected + 1);
                break;
            case Command.PickRow when stroke.Character - '1' is var row && row >= 0 && row < Count:
                Select(row);
                break;
            case Command.PageUp:
                Select(Selected - PageRows);
                break;
            case Command.PageDown:
                Select(Selected + PageRows);
                break;
            case Command.First:
                Select(0);
                break;
            case Command.Last:
                Select(Count - 1);
                break;
            case Command.Whole when Compose(now) is ListScreen { Details.IsEmpty: false } list:
                Shell.Push(new WholePage(Shell, list));
                break;
            case Command.Choose when Selected < Count:
                Choose(Selected, now);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected void Select(int row) => Selected = Math.Clamp(row, 0, Math.Max(0, Count - 1));
}
