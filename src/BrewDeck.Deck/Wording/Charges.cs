using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;

namespace BrewDeck.Deck.Wording;

/// <summary>What goes in, in words.</summary>
public static class Charges
{
    public static string Amount(Charge charge, Notation notation) => charge switch
    {
        // a scale for salts shows grams everywhere, a syringe millilitres
        { Kind: ChargeKind.Salt } => notation.Number(charge.Amount, "0.0#") + " g",
        { Kind: ChargeKind.Acid } => notation.Number(charge.Amount, "0.0#") + " mL",
        { Kind: ChargeKind.Hop } or { Unit: "g" } => notation.Grams(charge.Amount),
        _ => notation.Value(charge.Amount, charge.Unit),
    };

    /// <summary>"62 g Aurora".</summary>
    public static string One(Charge charge, Notation notation) =>
        $"{Amount(charge, notation)} {Name(charge, notation)}{(charge.ForStepId == "liquor.treat-sparge" ? notation.Text(" (sparge liquor)") : "")}";

    public static string Name(Charge charge, Notation notation) => charge.Kind switch
    {
        ChargeKind.Salt when Enum.TryParse<BrewingSalt>(charge.Name, out var salt) => WaterWords.Salt(salt, notation),
        ChargeKind.Acid when Enum.TryParse<AcidKind>(charge.Name, out var acid) =>
            $"{WaterWords.Acid(acid, notation)} {notation.Number(100 * charge.StrengthFraction ?? 0, "0.#")} %",
        ChargeKind.SoftWater => notation.Text("soft water"),
        _ => charge.Name,
    };

    /// <summary>"62 g Aurora, 5 g kettle finings".</summary>
    public static string All(ImmutableArray<Charge> charges, Notation notation) =>
        string.Join(", ", charges.Select(c => One(c, notation)));

    public static string Grist(ImmutableArray<Charge> charges, Notation notation) =>
        notation.Mass(charges.Where(c => c.Kind == ChargeKind.Grist).Sum(c => c.Amount));
}
