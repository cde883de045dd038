using System.Collections.Immutable;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>What came of a foreign document.</summary>
/// <param name="Notes">A line for everything that was assumed or could not be carried over: place, value, why.</param>
public sealed record Converted(ImmutableArray<Recipe> Recipes, ImmutableArray<string> Notes);
