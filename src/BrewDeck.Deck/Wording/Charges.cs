using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What goes in, in words.</summary>
public static class Charges
{
    public static string Amount(Charge charge, Notation notation) => charge switch
    {
        { Kind: ChargeKind.Hop } or { Unit: "g" } => notation.Grams(charge.Amount),
        _ => notation.Value(charge.Amount, charge.Unit),
    };

    /// <summary>"62 g Aurora".</summary>
    public static string One(Charge charge, Notation notation) => $"{Amount(charge, notation)} {charge.Name}";

    /// <summary>"62 g Aurora, 5 g kettle finings".</summary>
    public static string All(ImmutableArray<Charge> charges, Notation notation) =>
        string.Join(", ", charges.Select(c => One(c, notation)));

    public static string Grist(ImmutableArray<Charge> charges, Notation notation) =>
        notation.Mass(charges.Where(c => c.Kind == ChargeKind.Grist).Sum(c => c.Amount));
}
