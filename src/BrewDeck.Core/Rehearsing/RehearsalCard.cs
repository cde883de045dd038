using System.Collections.Immutable;

namespace BrewDeck.Core.Rehearsing;

/// <summary>What a rehearsed batch was dealt: with the events it makes the day again, for taking it up and for the debrief.</summary>
/// <param name="Seed">Draws what the brewhouse really does.</param>
/// <param name="Exercise">Number of the exercise; null: none.</param>
public sealed record RehearsalCard(int Seed, ImmutableArray<Mishap> Mishaps, int? Exercise = null);
