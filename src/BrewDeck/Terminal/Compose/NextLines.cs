using System.Collections.Immutable;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Terminal.Compose;

/// <summary>The next steps: when, what, how long.</summary>
internal static class NextLines
{
    public static ImmutableArray<Line> Of(ImmutableArray<NextStep> steps, int width, int most, Notation notation)
    {
        if (steps.IsEmpty) return [];
        steps = [.. steps.Take(most)];
        var clock = steps.Max(s => Lines.Width(s.Clock));
        return [.. steps.SelectMany((step, index) => One(step, index == 0, clock, width, notation))];
    }

    private static ImmutableArray<Line> One(NextStep step, bool first, int clock, int width, Notation notation) =>
        Lines.Join(
            Line.Of(Lines.Fit(first ? LayoutWords.Next(notation) : LayoutWords.Then(notation), Labels.NextWidth), Tone.Muted),
            Line.Of(Lines.Fit(step.Clock, clock) + "  ", first ? Tone.Strong : Tone.Normal),
            Line.Of(step.Text),
            Line.Of(step.Length == "" ? "" : $", {step.Length}", Tone.Muted)).Wrap(width, indent: Labels.NextWidth + clock + 2);
}
