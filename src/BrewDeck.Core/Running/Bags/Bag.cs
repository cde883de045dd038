using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Bags;

/// <summary>What the scale, the hop bag or the maltster's sheet says of one ingredient on the day.</summary>
/// <param name="Kind">Grist, hop or extract.</param>
/// <param name="Amount">All of it that goes in from now on: kg of grist and extract, g of hops; null: as planned.</param>
/// <param name="AlphaFraction">Alpha acid of a hop, 0..0.3; null: as planned.</param>
/// <param name="MoistureFraction">Water in malt as weighed, 0..0.95; null: as planned.</param>
/// <param name="ExtractFraction">Laboratory extract on dry basis, above 0 to 1; null: as planned.</param>
public sealed record Bag(
    ChargeKind Kind, string Name, double? Amount = null, double? AlphaFraction = null, double? MoistureFraction = null, double? ExtractFraction = null);

/// <summary>An ingredient as it stands on the run sheet: what is still to go in.</summary>
/// <param name="Amount">kg of grist and extract, g of hops.</param>
public sealed record PlannedBag(ChargeKind Kind, string Name, double Amount, double AlphaFraction, double MoistureFraction, double ExtractFraction)
{
    /// <summary>What of it goes in together, each as it is weighed.</summary>
    public required ImmutableArray<double> Doses { get; init; }
}
