using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Mishaps;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>How the stand-in brewer meets what goes wrong.</summary>
/// <param name="Mends">False: takes no remedy for an off reading.</param>
public sealed record Manner(bool Mends = true)
{
    public static Manner Practised { get; } = new();

    /// <summary>What is done instead of what a practised brewer would do.</summary>
    public ImmutableDictionary<MishapKind, Answer> Answers { get; init; } = ImmutableDictionary<MishapKind, Answer>.Empty;

    /// <summary>A makeshift that did not hold is not tried a second time; null: nothing can be done.</summary>
    public Answer? To(LiveMishap live) =>
        live.Asked == 1 && Answers.TryGetValue(live.Mishap.Kind, out var own) ? own
        : live.Answers.IsEmpty ? null
        : live.Answers[0];
}
