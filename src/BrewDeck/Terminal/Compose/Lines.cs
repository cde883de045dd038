using System.Collections.Immutable;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.Drawing;

namespace BrewDeck.Terminal.Compose;

/// <summary>Measures, cuts and joins lines, in cells of the screen.</summary>
internal static class Lines
{
    public const string Cut = "…";

    public static readonly Line Empty = new([]);

    public static int Width(string text) => CellWidth.Of(text);

    public static int Width(this Line line)
    {
        var cells = 0;
        foreach (var span in line.Spans) cells += Width(span.Text);
        return cells;
    }

    public static Line Join(params ReadOnlySpan<Line> lines)
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        foreach (var line in lines) spans.AddRange(line.Spans);
        return new Line(spans.DrainToImmutable());
    }

    public static Line Blank(int width) => Line.Of(new string(' ', Math.Max(0, width)));

    /// <summary>Exactly as wide as asked: cut with an ellipsis or filled with blanks.</summary>
    public static Line Fit(this Line line, int width, bool right = false)
    {
        var cut = line.CutTo(width);
        var fill = Blank(width - cut.Width());
        return right ? Join(fill, cut) : Join(cut, fill);
    }

    public static string Fit(string text, int width, bool right = false) =>
        Line.Of(text).Fit(width, right).ToString();

    /// <summary>At most as wide as asked; an ellipsis shows that something was cut off.</summary>
    public static Line CutTo(this Line line, int width)
    {
        if (line.Width() <= width) return line;
        if (width <= 0) return Empty;
        var spans = ImmutableArray.CreateBuilder<Span>();
        var room = width - 1;
        foreach (var span in line.Spans)
        {
            var head = Head(span.Text, room);
            spans.Add(span with { Text = head });
            room -= Width(head);
            if (head.Length < span.Text.Length) break;
        }

        spans.Add(new Span(Cut, spans[^1].Tone));
        return new Line(spans.DrainToImmutable());
    }

    public static bool Same(ImmutableArray<Line> one, ImmutableArray<Line> other) =>
        one.AsSpan().SequenceEqual(other.AsSpan(), SameSpans.Instance);

    private static string Head(string text, int room)
    {
        var end = 0;
        foreach (var grapheme in GraphemeHelper.GetGraphemes(text))
        {
            room -= Width(grapheme);
            if (room < 0) break;
            end += grapheme.Length;
        }

        return text[..end];
    }

    private sealed class SameSpans : IEqualityComparer<Line>
    {
        public static readonly SameSpans Instance = new();

        public bool Equals(Line? x, Line? y) => x!.Spans.AsSpan().SequenceEqual(y!.Spans.AsSpan());

        public int GetHashCode(Line obj) => obj.Spans.Length;
    }
}
