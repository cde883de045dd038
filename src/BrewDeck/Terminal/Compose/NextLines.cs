using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The next steps: when, what, how long.</summary>
internal static class NextLines
{
    public static ImmutableArray<Line> Of(ImmutableArray<NextStep> steps, int width)
    {
        if (steps.IsEmpty) return [];
        var clock = steps.Max(s => Lines.Width(s.Clock));
        return [.. steps.Select((step, index) => One(step, index == 0, clock, width))];
    }

    private static Line One(NextStep step, bool first, int clock, int width)
    {
        var length = step.Length == "" ? "" : $", {step.Length}";
        var room = width - Labels.NextWidth - clock - 2 - Lines.Width(length);
        return Lines.Join(
            Line.Of(Lines.Fit(first ? Labels.Next : Labels.Then, Labels.NextWidth), Tone.Muted),
            Line.Of(Lines.Fit(step.Clock, clock) + "  ", first ? Tone.Strong : Tone.Normal),
            Line.Of(step.Text).CutTo(room),
            Line.Of(length, Tone.Muted)).CutTo(width);
    }
}
