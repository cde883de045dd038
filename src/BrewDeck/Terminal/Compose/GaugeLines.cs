using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>Vessels and circuits: name, bar, words; one under the other.</summary>
internal static class GaugeLines
{
    private const int ShortestBar = 5;
    private const int LongestBar = 24;

    public static ImmutableArray<Line> Of(ImmutableArray<Gauge> gauges, int width)
    {
        if (gauges.IsEmpty) return [];
        if (Least(gauges) > width) gauges = [.. gauges.Select(g => g.Brief == "" ? g : g with { Name = g.Brief })];
        var name = gauges.Max(g => Lines.Width(g.Name));
        var text = gauges.Max(g => Lines.Width(g.Text));
        var bar = Math.Min(LongestBar, width - name - Labels.Mark(Tone.Normal).Length - text - 2);
        return [.. gauges.Select(g => One(g, name, bar < ShortestBar ? 0 : bar, width))];
    }

    /// <summary>What they take without their bars.</summary>
    public static int Least(ImmutableArray<Gauge> gauges) =>
        gauges.IsEmpty ? 0 : gauges.Max(g => Lines.Width(g.Name)) + 1 + Labels.Mark(Tone.Normal).Length + gauges.Max(g => Lines.Width(g.Text));

    private static Line One(Gauge gauge, int name, int bar, int width) => Lines.Join(
        Line.Of(Lines.Fit(gauge.Name, name) + " ", Tone.Muted),
        Line.Of(Labels.Mark(gauge.Tone), gauge.Tone),
        bar == 0 ? Lines.Empty : Bar(gauge, bar),
        Line.Of(gauge.Text, gauge.Tone)).CutTo(width);

    /// <summary>In steps of half a cell; anything in it shows, and it is only full when it is full.</summary>
    private static Line Bar(Gauge gauge, int width)
    {
        var fraction = double.IsFinite(gauge.Fraction) ? Math.Clamp(gauge.Fraction, 0, 1) : 0;
        var halves = (int)(fraction * 2 * width);
        if (fraction > 0) halves = Math.Max(1, halves);
        var full = new string('━', halves / 2) + (halves % 2 == 1 ? "╸" : "");
        return Lines.Join(
            Line.Of(full, gauge.Tone == Tone.Alarm ? Tone.Warning : gauge.Tone),
            Line.Of(new string('─', width - full.Length), Tone.Muted),
            Line.Of(" "));
    }
}
