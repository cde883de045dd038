using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The lines at the edges of every screen: title and corner at the top, notice and keys at the bottom.</summary>
internal static class EdgeLines
{
    private const int Apart = 3;

    private const string Between = " · ";

    /// <summary>So much of a name still tells whose day it is.</summary>
    private const int NameLeast = 8;

    /// <summary>The corner (the clock is in it) keeps its place. The name at its head is cut first, then the title.</summary>
    public static Line Top(Screen screen, int width)
    {
        var corner = Corner(screen.Corner, width - Apart - Line.Of(screen.Title).Width()).CutTo(width);
        var room = width - corner.Width() - Apart;
        var title = Line.Of(screen.Title, Tone.Strong).CutTo(room);
        return Lines.Join(title, Lines.Blank(width - title.Width() - corner.Width()), corner);
    }

    /// <summary>What stands first is cut first, and left away where less than a word of it would be left; the clock stays.</summary>
    private static Line Corner(string text, int room)
    {
        var whole = Line.Of(text, Tone.Muted);
        var end = text.IndexOf(Between, StringComparison.Ordinal);
        if (end < 0 || whole.Width() <= room)
            return whole;
        var after = Line.Of(text[end..], Tone.Muted);
        var left = room - after.Width();
        return left < NameLeast ? Corner(text[(end + Between.Length)..], room) : Lines.Join(Line.Of(text[..end], Tone.Muted).CutTo(left), after);
    }

    /// <summary>In at most so many rows; an ellipsis shows that there was more.</summary>
    public static ImmutableArray<Line> Notice(Screen screen, int width, int rows)
    {
        if (screen.Notice is not { } notice || rows < 1) return [];
        var lines = Labels.Marked(notice).Wrap(width, indent: 2);
        if (lines.Length <= rows) return lines;
        var last = Lines.Join(lines[rows - 1], Line.Of(" " + Lines.Cut, Tone.Muted));
        return [.. lines[..(rows - 1)], last.CutTo(width)];
    }

    /// <summary>The key that leads to all the others.</summary>
    private const string Help = "?";

    /// <summary>Hints in their order, whole, as many as fit into the rows; where that of the help would not, it comes last in place of another.</summary>
    public static ImmutableArray<Line> Keys(ImmutableArray<KeyHint> hints, int width, int rows)
    {
        var all = Filled(hints, width);
        var help = hints.FirstOrDefault(h => h.Key == Help);
        if (help is null || all.Length <= rows || all.Take(rows).Any(l => l.Spans.Any(s => s.Text == Help)))
            return [.. all.Take(rows)];
        var before = hints[..hints.IndexOf(help)];
        while (before.Length > 0 && Filled([.. before, help], width).Length > rows) before = before[..^1];
        return [.. Filled([.. before, help], width).Take(rows)];
    }

    private static ImmutableArray<Line> Filled(ImmutableArray<KeyHint> hints, int width)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        var line = Lines.Empty;
        foreach (var hint in hints)
        {
            var next = Hint(hint);
            if (line.Spans.IsEmpty)
            {
                line = next.CutTo(width);
            }
            else if (line.Width() + Apart + next.Width() <= width)
            {
                line = Lines.Join(line, Lines.Blank(Apart), next);
            }
            else
            {
                lines.Add(line);
                line = next.CutTo(width);
            }
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    private static Line Hint(KeyHint hint) =>
        new([new Span(hint.Key, Tone.Strong), new Span(" " + hint.Does, Tone.Muted)]);
}
