using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Hops of a charge list times a factor; finings and the like stay as they are.</summary>
internal static class Scaled
{
    /// <param name="hops">Names of those that it is about; null: all.</param>
    public static ImmutableArray<Charge> By(ImmutableArray<Charge> charges, double factor, IReadOnlySet<string>? hops = null) => factor == 1
        ? charges
        : [.. charges.Select(c => c.Kind == ChargeKind.Hop && hops?.Contains(c.Name) != false ? c with { Amount = factor * c.Amount, AlphaG = factor * c.AlphaG } : c)];

    public static double Grams(ImmutableArray<Charge> charges) => charges.Where(c => c.Kind == ChargeKind.Hop).Sum(c => c.Amount);
}
