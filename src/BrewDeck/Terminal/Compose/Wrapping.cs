using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>Breaks lines at blanks so that they fit into a width.</summary>
internal static class Wrapping
{
    /// <param name="line">Any tones; each word keeps its own.</param>
    /// <param name="width">Cells; a word wider than this is cut.</param>
    /// <param name="indent">Cells before every line but the first.</param>
    public static ImmutableArray<Line> Wrap(this Line line, int width, int indent = 0)
    {
        if (line.Width() <= width) return [line];
        if (width <= indent + 1) return [line.CutTo(width)];
        var done = ImmutableArray.CreateBuilder<Line>();
        var spans = ImmutableArray.CreateBuilder<Span>();
        var used = 0;
        foreach (var word in Words(line))
        {
            var wide = word.Sum(part => Lines.Width(part.Text));
            if (used > 0 && used + wide > width)
            {
                done.Add(Finish(spans));
                spans.Add(new Span(new string(' ', indent)));
                used = indent;
            }

            spans.AddRange(word);
            used += wide;
        }

        done.Add(Finish(spans));
        return [.. done.Select(l => l.CutTo(width))];
    }

    public static ImmutableArray<Line> Wrap(IEnumerable<Line> lines, int width, int indent = 0) =>
        [.. lines.SelectMany(line => line.Wrap(width, indent))];

    private static Line Finish(ImmutableArray<Span>.Builder spans)
    {
        if (spans.Count > 0) spans[^1] = spans[^1] with { Text = spans[^1].Text.TrimEnd() };
        return new Line(spans.DrainToImmutable());
    }

    /// <summary>A word with the blanks after it; one that spans two tones stays together.</summary>
    private static IEnumerable<List<Span>> Words(Line line)
    {
        List<Span> word = [];
        foreach (var span in line.Spans)
        {
            var from = 0;
            while (from < span.Text.Length)
            {
                var blank = span.Text.IndexOf(' ', from);
                var to = blank < 0 ? span.Text.Length : EndOfBlanks(span.Text, blank);
                word.Add(span with { Text = span.Text[from..to] });
                from = to;
                if (blank < 0) continue;
                yield return word;
                word = [];
            }
        }

        if (word.Count > 0) yield return word;
    }

    private static int EndOfBlanks(string text, int at)
    {
        while (at < text.Length && text[at] == ' ') at++;
        return at;
    }
}
