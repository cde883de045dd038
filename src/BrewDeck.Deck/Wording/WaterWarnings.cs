using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Something about a day's water that spoils beer and stops no day.</summary>
/// <param name="Mend">What would mend it.</param>
public sealed record WaterWarning(string Says, string Mend);

/// <summary>What is wrong with a day's water, for the head of a plan: at its end, among all the limits, nobody reads it before pouring.</summary>
public static class WaterWarnings
{
    public static IEnumerable<WaterWarning> Of(Plan plan, Notation notation) => plan.Water is not { } water ? [] :
    [
        .. from limit in plan.Limits
           where !limit.Ok && LimitName.InWater(limit.Name) is not null
           select new WaterWarning(LimitWords.Of(limit, notation) + ".", Mend(limit, water, notation)),
        .. SaltsOf(plan, water, notation),
    ];

    /// <summary>The treatment is reckoned from the analysis alone.</summary>
    private static IEnumerable<WaterWarning> SaltsOf(Plan plan, WaterTreatment water, Notation notation)
    {
        var salts = string.Join(", ", plan.Recipe.Others.Select(o => o.Name).Where(SaltNames.IsSalt).Distinct());
        if (salts.Length > 0)
        {
            yield return new(notation.Text($"The recipe's own salts are not reckoned with the water: {salts}."), water.Target == WaterTarget.Nothing
                ? notation.Text("Take them out of the recipe, and choose a water target.")
                : notation.Text("Take them out of the recipe, or leave the water target out."));
        }
    }

    public static IEnumerable<Line> Lines(Plan plan, Notation notation) => Of(plan, notation).SelectMany(w => new[]
    {
        new Line([new Span("! ", Tone.Warning), new Span(w.Says, Tone.Warning)]),
        Line.Of("  " + w.Mend),
    });

    private static string Mend(Limit limit, WaterTreatment water, Notation notation) => limit.Name switch
    {
        LimitName.AnalysisImbalance => notation.Text("Look through the analysis again: something in it was read or written wrongly."),
        LimitName.Lactate when water.Supply.Soft is null => notation.Text("Use phosphoric acid, or put soft water on the shelf."),
        LimitName.Lactate => notation.Text("Use phosphoric acid."),
        LimitName.MashPhLow or LimitName.MashPhHigh => Ph(limit, water, notation),
        _ when water.Supply.Soft is null => notation.Text("Put soft water on the shelf, and choose a water target with less of it."),
        _ => notation.Text("Choose a water target with less of it."),
    };

    /// <summary>Acid and salts only go in where a target asks for them.</summary>
    private static string Ph(Limit limit, WaterTreatment water, Notation notation)
    {
        var supply = water.Supply;
        var noTarget = water.Target == WaterTarget.Nothing;
        if (limit.Name == LimitName.MashPhHigh && supply is { Acid: null, Soft: null })
            return noTarget ? notation.Text("Put acid or soft water on the shelf, and choose a water target.") : notation.Text("Put acid or soft water on the shelf.");
        if (limit.Name == LimitName.MashPhLow && !supply.Salts.Any(s => s is BrewingSalt.BakingSoda or BrewingSalt.SlakedLime))
            return noTarget ? notation.Text("Put baking soda on the shelf, and choose a water target.") : notation.Text("Put baking soda on the shelf.");
        return noTarget ? notation.Text("Choose a water target.") : notation.Text("Choose a water target with another mash pH.");
    }
}
