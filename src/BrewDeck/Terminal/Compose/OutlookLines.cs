using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>What the rest of the day will give, running on where room is short, as a table where there is room.</summary>
internal static class OutlookLines
{
    private const int Apart = 3;

    public static ImmutableArray<Line> Running(ImmutableArray<OutlookItem> items, int width)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        var line = Lines.Empty;
        // where not all have room, what is off plan must
        foreach (var item in items.OrderBy(i => i.Tone == Tone.Normal))
        {
            var next = Item(item);
            if (!line.Spans.IsEmpty && line.Width() + Apart + next.Width() > width)
            {
                lines.Add(line.CutTo(width));
                line = Lines.Empty;
            }

            line = line.Spans.IsEmpty ? next : Lines.Join(line, Lines.Blank(Apart), next);
        }

        if (!line.Spans.IsEmpty) lines.Add(line.CutTo(width));
        return lines.DrainToImmutable();
    }

    public static ImmutableArray<Line> Table(ImmutableArray<OutlookItem> items, int width)
    {
        if (items.IsEmpty) return [];
        var label = items.Max(i => Lines.Width(i.Label));
        var value = items.Max(i => Lines.Width(i.Value));
        return [.. items.Select(i => Lines.Join(
            Line.Of(Lines.Fit(i.Label, label) + " ", Tone.Muted),
            Line.Of(Labels.Mark(i.Tone) + Lines.Fit(i.Value, value) + "  ", Seen(i.Tone)),
            Line.Of(i.Band, Tone.Muted)).CutTo(width))];
    }

    private static Line Item(OutlookItem item) => Lines.Join(
        Line.Of(item.Label + " ", Tone.Muted),
        Line.Of(Labels.Mark(item.Tone).TrimEnd() + item.Value, Seen(item.Tone)),
        item.Band == "" ? Lines.Empty : Line.Of($" ({item.Band})", Tone.Muted));

    private static Tone Seen(Tone tone) => tone == Tone.Normal ? Tone.Strong : tone;
}
