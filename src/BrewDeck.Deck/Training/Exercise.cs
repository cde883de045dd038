using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Training;

/// <summary>A graded exercise on the simulated brewhouse: what it is for, what to watch, what counts as passed.</summary>
/// <param name="Number">From 1, the easiest first.</param>
public sealed record Exercise(int Number, Phrase Name, Phrase Aim, ImmutableArray<Phrase> Watch, ImmutableArray<Criterion> Passes)
{
    /// <summary>Name of a bundled brewhouse.</summary>
    public string Brewhouse { get; init; } = "quayside-65";

    /// <summary>Name of a bundled recipe.</summary>
    public string Recipe { get; init; } = "quayside-amber";

    /// <summary>Draws what the brewhouse really does that day.</summary>
    public int Seed { get; init; } = 1;

    public ImmutableArray<Mishap> Mishaps { get; init; } = [];

    /// <summary>What goes wrong is for the trainee to find: nothing names it beforehand. The others train what they name.</summary>
    public bool Unannounced { get; init; }

    /// <summary>The exercise is over when a step of this kind is done; null: a whole day.</summary>
    public StepKind? Until { get; init; }
}
