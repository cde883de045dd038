using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>A frame around lines.</summary>
internal static class FrameLines
{
    /// <summary>Cells that the frame and its margin take of the width.</summary>
    public const int Margin = 4;

    public static ImmutableArray<Line> Around(ImmutableArray<Line> lines, int width)
    {
        var edge = new string('─', Math.Max(0, width - 2));
        return
        [
            Line.Of($"╭{edge}╮", Tone.Muted),
            .. lines.Select(line => Side(line, width)),
            Line.Of($"╰{edge}╯", Tone.Muted),
        ];
    }

    private static Line Side(Line line, int width) =>
        Lines.Join(Line.Of("│ ", Tone.Muted), line.Fit(width - Margin), Line.Of(" │", Tone.Muted));
}
