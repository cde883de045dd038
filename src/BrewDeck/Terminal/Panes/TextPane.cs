using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes;

/// <summary>Text to read, from the line that the session says; a mark at the right tells where in the text that is.</summary>
internal sealed class TextPane : Pane
{
    private const int WidestText = 100;

    public override IEnumerable<Patch> Of(Screen screen, Size whole, Rectangle room)
    {
        var text = (TextScreen)screen;
        var page = Page(whole, room);
        var width = Math.Min(WidestText, page.Width - 2);
        // only a page that is not full from there has to look for the last one that is
        var first = text.Lines.Length - text.Offset >= page.Height ? text.Offset : Math.Clamp(text.Offset, 0, LastOffset(text, width, page.Height));
        var lines = Wrapped(text.Lines.Skip(first).Take(Math.Max(0, page.Height)), width);
        return
        [
            new Patch([.. lines.Take(page.Height)], page with { Width = width }),
            Place(PlaceLines.Of(first, text.Lines.Length, page.Height), page.Right - 1, page.Y),
        ];
    }

    /// <summary>The last line stays at the bottom: what wraps at this width counts as the rows it takes.</summary>
    private static int LastOffset(TextScreen text, int width, int height)
    {
        var rows = 0;
        for (var line = text.Lines.Length - 1; line >= 0; line--)
        {
            rows += Wrapped([text.Lines[line]], width).Length;
            if (rows > height) return line + 1;
        }

        return 0;
    }

    /// <summary>What wraps stays under its own beginning.</summary>
    private static ImmutableArray<Line> Wrapped(IEnumerable<Line> lines, int width) =>
        [.. lines.SelectMany(line => line.Wrap(width, LeadingBlanks(line.ToString())))];

    private static int LeadingBlanks(string text) => text.Length - text.TrimStart(' ').Length;
}
