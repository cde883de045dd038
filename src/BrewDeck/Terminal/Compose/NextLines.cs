using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The next steps: when, what, how long.</summary>
internal static class NextLines
{
    public static ImmutableArray<Line> Of(ImmutableArray<NextStep> steps, int width, int most)
    {
        if (steps.IsEmpty) return [];
        steps = [.. steps.Take(most)];
        var clock = steps.Max(s => Lines.Width(s.Clock));
        return [.. steps.SelectMany((step, index) => One(step, index == 0, clock, width))];
    }

    private static ImmutableArray<Line> One(NextStep step, bool first, int clock, int width) =>
        Lines.Join(
            Line.Of(Lines.Fit(first ? Labels.Next : Labels.Then, Labels.NextWidth), Tone.Muted),
            Line.Of(Lines.Fit(step.Clock, clock) + "  ", first ? Tone.Strong : Tone.Normal),
            Line.Of(step.Text),
            Line.Of(step.Length == "" ? "" : $", {step.Length}", Tone.Muted)).Wrap(width, indent: Labels.NextWidth + clock + 2);
}
