using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
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

    /// <summary>What is weighed, each marked with when it goes in, and with the recipe's amount where that is another: "36 g Aurora (60 min; recipe 34 g)".</summary>
    /// <param name="written">Null: only the times.</param>
    public static string Weighed(IEnumerable<Charge> charges, Recipe? written, Notation notation) =>
        string.Join(", ", charges.Select(c => One(c, notation) + Marked(c, written, notation)));

    private static string Marked(Charge charge, Recipe? written, Notation notation)
    {
        string[] marks = [When(charge, notation), written is null ? "" : InRecipe(charge, written, notation)];
        var said = string.Join("; ", marks.Where(m => m.Length > 0));
        return said.Length == 0 ? "" : $" ({said})";
    }

    private static string When(Charge charge, Notation notation) => charge switch
    {
        { Use: HopUse.Boil, Minutes: > 0 } => $"{notation.Number(charge.Minutes, "0.#")} min",
        { Use: { } use } => RecipeWords.Briefly(use, charge.Minutes, notation),
        { Kind: ChargeKind.Other, Minutes: > 0 } => $"{notation.Number(charge.Minutes, "0.#")} min",
        _ => "",
    };

    private static string InRecipe(Charge charge, Recipe recipe, Notation notation)
    {
        // one of several alike cannot be told from the others
        return Written(charge, recipe).ToArray() is not [var only] || Amount(charge with { Amount = only }, notation) is var amount && amount == Amount(charge, notation) ? "" : notation.Text($"recipe {amount}");
    }

    /// <summary>Amounts of the recipe's lines that a charge can come from; none: it is a malt or hop on hand instead.</summary>
    private static IEnumerable<double> Written(Charge charge, Recipe recipe) => charge.Kind switch
    {
        ChargeKind.Grist or ChargeKind.Extract => recipe.Grist.Where(g => g.Name == charge.Name && (g.Use == GristUse.Mash) == (charge.Kind == ChargeKind.Grist)).Select(g => g.MassKg),
        ChargeKind.Hop => recipe.Hops.Where(h => h.Name == charge.Name && h.Use == charge.Use && h.Minutes == charge.Minutes).Select(h => h.MassG),
        ChargeKind.Other => recipe.Others.Where(o => o.Name == charge.Name && o.Minutes == charge.Minutes).Select(o => o.Amount),
        _ => [],
    };

    public static string Grist(ImmutableArray<Charge> charges, Notation notation) =>
        notation.Mass(charges.Where(c => c.Kind == ChargeKind.Grist).Sum(c => c.Amount));
}
