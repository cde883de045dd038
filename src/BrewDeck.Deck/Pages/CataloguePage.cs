using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>Something of the catalogue to choose: by arrows and page keys, or by its name, which a letter begins to type.</summary>
/// <param name="items">Name and what is typical of it.</param>
/// <param name="chosen">Called with the place of the chosen item, once this page is closed.</param>
internal sealed class CataloguePage(Shell shell, string title, ImmutableArray<(string Name, string Typical)> items, Action<int> chosen) : ListPage(shell)
{
    public override KeyContext Context => KeyContext.Naming;

    protected override int Count => items.Length + 1;

    protected override void Choose(int row, DateTimeOffset now)
    {
        if (row == 0)
        {
            AskName("");
            return;
        }
        Shell.Pop();
        chosen(row - 1);
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        title,
        Corners.Of(Shell, now),
        [new Column("", 0), new Column("", 34)],
        [new Row([Shell.Notation.Text("Find it by name"), ""], Tone.Strong), .. items.Select(i => new Row([i.Name, i.Typical]))],
        Selected,
        [Line.Of(Shell.Notation.Text("Typical values, common practice; the bag or the maltster's sheet knows better: type its values afterwards."), Tone.Muted)],
        KeyMap.Hints(Context, Shell.Notation));

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.PickRow)
            AskName(stroke.Character.ToString());
        else
            base.Handle(command, stroke, now);
    }

    private void AskName(string typed) => Ask(new EntryAsk(this, Shell.Notation.Text("Which one?"), typed, text => FoundSoFar(text.Trim()) is { } name ? Line.Of(name) : Line.Of(Shell.Notation.Text("part of its name"), Tone.Muted), (text, _) =>
    {
        var found = Found(text.Trim());
        if (found < 0)
            return Shell.Notation.Text($"Nothing in the catalogue is called {text.Trim()}.");
        Select(found + 1);
        return null;
    }));

    private string? FoundSoFar(string text) => text.Length > 0 && Found(text) is >= 0 and var at ? items[at].Name : null;

    private int Found(string text)
    {
        var names = items.Select(i => i.Name).ToList();
        var begins = names.FindIndex(n => n.StartsWith(text, StringComparison.OrdinalIgnoreCase));
        return begins >= 0 ? begins : names.FindIndex(n => n.Contains(text, StringComparison.OrdinalIgnoreCase));
    }
}
