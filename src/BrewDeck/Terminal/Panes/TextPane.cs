using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;
using BrewDeck.Terminal.Paint;

namespace BrewDeck.Terminal.Panes;

/// <summary>Text to read, from the line that the session says; a mark at the right tells where in the text that is.</summary>
internal sealed class TextPane : Pane
{
    private const int WidestText = 100;

    private readonly LinesView _text;
    private readonly LinesView _place;

    public TextPane(Look look)
        : base(look) => (_text, _place) = (AddLines(), AddLines());

    public override void Show(Screen screen, Size whole)
    {
        var text = (TextScreen)screen;
        var room = Room;
        room.Inflate(-1, 0);
        if (whole.Height >= 24) (room.Y, room.Height) = (1, room.Height - 1);
        var width = Math.Min(WidestText, room.Width - 2);
        var first = Math.Clamp(text.Offset, 0, LastOffset(text, width, room.Height));
        var lines = Wrapped(text.Lines.Skip(first).Take(Math.Max(0, room.Height)), width);
        if (lines.Length > room.Height) lines = lines[..Math.Max(0, room.Height)];
        _text.Show(lines, room with { Width = width });
        ShowPlace(first, text.Lines.Length, new Rectangle(room.Right - 1, room.Y, 1, room.Height));
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

    private void ShowPlace(int first, int count, Rectangle where)
    {
        var bar = PlaceLines.Of(first, count, where.Height);
        _place.Show(bar, bar.IsEmpty ? Rectangle.Empty : where);
    }
}
