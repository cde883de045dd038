using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>When the sparge liquor is heated.</summary>
internal enum LiquorOrder
{
    /// <summary>Drawn and heated while the mash rests.</summary>
    WhileMashing,

    /// <summary>Drawn as soon as the strike liquor is out of the tank: the dough-in waits for the hose.</summary>
    BeforeDoughIn,

    /// <summary>Drawn and heated with the strike liquor: nothing but the last degrees is left for later.</summary>
    AllFirst,

    /// <summary>Drawn with the strike liquor, and brought to the sparge's temperature in the longest rest.</summary>
    AllFirstThenLongestRest,

    /// <summary>Drawn and heated in the longest rest.</summary>
    LongestRest,

    /// <summary>Drawn and heated when the mash needs no more heat.</summary>
    AfterLastRamp,
}

/// <summary>What the solver of a plan decides: the recipe's masses and the waters. Litres at 20 °C.</summary>
/// <param name="StrikeL">Into the mash.</param>
/// <param name="SpargeL">Over the grain; 0 without a sparge.</param>
/// <param name="PreBoilL">At which the lauter ends; infinite: when the tun gives no more.</param>
internal sealed record Batch(
    Recipe Recipe, double StrikeL, double SpargeL, double PreBoilL, LiquorOrder Liquor = LiquorOrder.WhileMashing)
{
    /// <summary>Strike and sparge liquor are drawn together.</summary>
    public bool FillsOnce => Liquor is LiquorOrder.AllFirst or LiquorOrder.AllFirstThenLongestRest;

    /// <summary>The bitterness is fitted with all hops alike, not with the bittering ones alone.</summary>
    public bool HopsAlike { get; init; }

    /// <summary>Liquor that the first fill of the tank must give.</summary>
    public double FirstFillL => FillsOnce ? StrikeL + SpargeL : StrikeL;
}

/// <summary>The day's substitutions and the solver's scaling, applied to a recipe.</summary>
internal static class RecipeFit
{
    /// <summary>Boiled no longer than this, a hop is there for its aroma; minutes, common practice, no source.</summary>
    private const double LateMin = 20;

    /// <summary>Grist and hops on hand in place of those that the recipe names; measured alpha acids in place of the printed ones.</summary>
    public static Recipe WithChoices(Brewhouse house, Recipe recipe, DayChoices choices) => recipe with
    {
        BatchL = choices.BatchL ?? house.UsualBatchL ?? recipe.BatchL,
        Grist = [.. recipe.Grist.Select(g => Swap(g, choices))],
        Hops = [.. recipe.Hops.Select(h => Swap(h, choices))],
    };

    /// <summary>All masses times a factor.</summary>
    /// <param name="bittering">Of the hops that are there for their bitterness.</param>
    /// <param name="late">Of those that are there for their aroma.</param>
    /// <param name="litres">Of what goes by the litres, dry hops among it: they bring no bitterness that the others' would have to meet.</param>
    public static Recipe Scaled(Recipe recipe, double grist, double bittering, double late, double litres) => recipe with
    {
        Grist = [.. recipe.Grist.Select(g => g with { MassKg = g.MassKg * grist })],
        Hops = [.. recipe.Hops.Select(h => h with { MassG = h.MassG * (h.Use == HopUse.DryHop ? litres : Bitters(h) ? bittering : late) })],
        Others = [.. recipe.Others.Select(o => o with { Amount = o.Amount * litres })],
    };

    private static GristLine Swap(GristLine line, DayChoices choices) =>
        choices.GristOnHand.TryGetValue(line.Name, out var onHand)
            // as much extract as the line that it replaces
            ? onHand with { MassKg = line.ExtractKg / ((1 - onHand.MoistureFraction) * onHand.ExtractFraction), Use = line.Use }
            : line;

    private static HopAddition Swap(HopAddition hop, DayChoices choices)
    {
        var alpha = choices.MeasuredAlpha.GetValueOrDefault(hop.Name, hop.AlphaFraction);
        if (!choices.HopsOnHand.TryGetValue(hop.Name, out var onHand))
            return hop with { AlphaFraction = alpha, MassG = Keeps(hop, alpha) };
        return hop with { Name = onHand.Name, AlphaFraction = onHand.AlphaFraction, MassG = Keeps(hop, onHand.AlphaFraction) };
    }

    /// <summary>Bittering additions keep their alpha acids, late ones their mass: they are there for aroma.</summary>
    private static double Keeps(HopAddition hop, double alpha) =>
        Bitters(hop) && alpha > 0
            ? hop.MassG * hop.AlphaFraction / alpha
            : hop.MassG;

    /// <summary>A hop that is there for its bitterness: of those that go in the earliest (common practice, no source).</summary>
    public static bool Bitters(HopAddition hop) => hop.Use == HopUse.FirstWort || (hop.Use == HopUse.Boil && hop.Minutes > LateMin);

    public static Charge Charge(GristLine g) => new(
        g.Use == GristUse.Mash ? ChargeKind.Grist : ChargeKind.Extract,
        g.Name, g.MassKg, "kg", g.ExtractKg, g.MassKg * g.MoistureFraction, ColourEbc: g.ColourEbc);

    public static Charge Charge(HopAddition h) =>
        new(ChargeKind.Hop, h.Name, h.MassG, "g", AlphaG: h.MassG * h.AlphaFraction, Minutes: h.Minutes) { Use = h.Use };

    public static Charge Charge(OtherAddition o) => new(ChargeKind.Other, o.Name, o.Amount, o.Unit, Minutes: o.Minutes);

    public static ImmutableArray<Charge> MashCharges(Recipe recipe) =>
        [.. recipe.Grist.Where(g => g.Use == GristUse.Mash).Select(Charge)];
}
