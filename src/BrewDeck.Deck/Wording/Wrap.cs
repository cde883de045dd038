using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Breaks long lines between words; what follows hangs under the first word.</summary>
public static class Wrap
{
    public static ImmutableArray<Line> Lines(IEnumerable<Line> lines, int width) => [.. lines.SelectMany(l => One(l, width))];

    private static IEnumerable<Line> One(Line line, int width)
    {
        var text = line.ToString();
        if (text.Length <= width || line.Spans.Length != 1)
            return line.Spans.Length == 1 || text.Length <= width ? [line] : Spans(line, width);
        return Text(text, width).Select(t => Line.Of(t, line.Spans[0].Tone));
    }

    // a line of several tones: the last span takes the break, the ones before it are its margin
    private static IEnumerable<Line> Spans(Line line, int width)
    {
        var margin = line.Spans.Take(line.Spans.Length - 1).Sum(s => s.Text.Length);
        var last = line.Spans[^1];
        if (margin >= width - 10)
            return [line];
        var parts = Text(last.Text, width - margin);
        return parts.Select((t, i) => i == 0
            ? new Line(line.Spans.SetItem(line.Spans.Length - 1, last with { Text = t }))
            : Line.Of(new string(' ', margin) + t, last.Tone));
    }

    private static List<string> Text(string text, int width)
    {
        var indent = new string(' ', Math.Min(text.Length - text.TrimStart().Length, width / 2));
        var parts = new List<string>();
        var current = indent;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (current.Length + word.Length > width && current.Length > indent.Length)
            {
                parts.Add(current.TrimEnd());
                current = indent;
            }
            current += word + " ";
        }
        parts.Add(current.TrimEnd());
        return parts;
    }
}
