using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The day as a line: heavy behind now, light before it, a tick where a part begins, the names below.</summary>
internal static class StripLines
{
    public static ImmutableArray<Line> Of(ImmutableArray<StripPart> parts, double now, int width)
    {
        if (parts.IsEmpty || width < 8) return [];
        var at = Column(now, width);
        return [Bar(parts, at, width), Names(parts, now, width)];
    }

    private static int Column(double fraction, int width) =>
        double.IsFinite(fraction) ? Math.Clamp((int)(fraction * width), 0, width - 1) : 0;

    private static Line Bar(ImmutableArray<StripPart> parts, int now, int width)
    {
        var begins = parts.Select(part => Column(part.From, width)).ToHashSet();
        string Stretch(int from, int to, char line, char tick) =>
            string.Concat(Enumerable.Range(from, to - from).Select(c => begins.Contains(c) ? tick : line));
        return new Line(
        [
            new Span(Stretch(0, now, '━', '┯'), Tone.Normal),
            new Span("●", Tone.Strong),
            new Span(Stretch(now + 1, width, '─', '┬'), Tone.Muted),
        ]);
    }

    /// <summary>The part that runs is named first and whole; the others where they still fit.</summary>
    private static Line Names(ImmutableArray<StripPart> parts, double now, int width)
    {
        var running = parts.LastOrDefault(part => part.From <= now) ?? parts[0];
        var cells = new string(' ', width).ToCharArray();
        var start = Math.Max(0, Math.Min(Column(running.From, width), width - Lines.Width(running.Label)));
        var own = Lines.Fit(running.Label, Math.Min(width, Lines.Width(running.Label)));
        own.CopyTo(cells.AsSpan(start));
        foreach (var part in parts)
        {
            if (part != running) PutName(cells, part, width);
        }

        return new Line(
        [
            new Span(new string(cells[..start]), Tone.Muted),
            new Span(own, Tone.Strong),
            new Span(new string(cells[(start + own.Length)..]), Tone.Muted),
        ]);
    }

    /// <summary>Blank, with a blank at both sides.</summary>
    private static bool IsFree(char[] cells, int at) =>
        cells.AsSpan(Math.Max(0, at - 1), Math.Min(3, cells.Length - Math.Max(0, at - 1))).IndexOfAnyExcept(' ') < 0;

    /// <summary>As many words of a name as there is room for: half a word is harder to read than none.</summary>
    private static string WholeWords(string name, int room)
    {
        while (Lines.Width(name) > room)
            name = name.LastIndexOf(' ') is > 0 and var blank ? name[..blank] : "";
        return name;
    }

    private static void PutName(char[] cells, StripPart part, int width)
    {
        var (start, end) = (Column(part.From, width), Column(part.To, width));
        while (start < end && !IsFree(cells, start)) start++;
        var room = 0;
        while (start + room < width && IsFree(cells, start + room)) room++;
        WholeWords(part.Label, room).CopyTo(cells.AsSpan(start));
    }
}
