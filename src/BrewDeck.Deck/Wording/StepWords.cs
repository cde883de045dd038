using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>A step in words.</summary>
/// <param name="Title">Short order.</param>
/// <param name="Hands">Sentences for the hands.</param>
/// <param name="Cautions">One line for each danger.</param>
public sealed record StepWords(string Title, ImmutableArray<string> Hands, ImmutableArray<string> Cautions)
{
    /// <summary>The title and what the hands do as one text.</summary>
    public string Text => Hands.IsEmpty ? Title + "." : $"{Title}. {string.Join(" ", Hands)}";

    public static StepWords Of(PlanStep step, Plan plan) => Of(step, plan, Notation.Metric);

    public static StepWords Of(PlanStep step, Plan plan, Notation notation) => new(
        StepTitles.Of(step, plan, notation),
        HandsWords.OnPaper(step, plan, notation),
        CautionWords.Of(step.Spec.Cautions, notation));
}
