using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>One figure or amount on both brewhouses.</summary>
public sealed record ScalingRow(string Name, string Old, string New);

/// <summary>A scaled recipe side by side with the old one.</summary>
public static class ScalingWords
{
    /// <summary>In the order in which they are asked for and told.</summary>
    public static ImmutableArray<KeptFigures> Choices { get; } =
        [KeptFigures.Gravity, KeptFigures.Bitterness, KeptFigures.Colour, KeptFigures.Ratio];

    public static string Name(KeptFigures figure) => figure switch
    {
        KeptFigures.Gravity => "gravity",
        KeptFigures.Bitterness => "bitterness",
        KeptFigures.Colour => "colour",
        _ => "ratio",
    };

    public static string Long(KeptFigures figure) => figure == KeptFigures.Ratio ? "liquor to grist" : Name(figure);

    /// <summary>Side by side for a narrow pane, with what keeps it from being brewed.</summary>
    public static ImmutableArray<Line> Lines(Scaling scaling, Notation notation)
    {
        ImmutableArray<ScalingRow> figures = Figures(scaling, notation), amounts = Amounts(scaling, notation);
        int old = figures.Concat(amounts).Max(r => r.Old.Length), moved = figures.Concat(amounts).Max(r => r.New.Length);
        Line Row(ScalingRow row) => Line.Of($"{row.Old.PadLeft(old)} {row.New.PadLeft(moved)}  {row.Name}");
        return
        [
            .. scaling.New.Failed.Select(l => Line.Of(LimitWords.Of(l, notation), Tone.Warning)),
            .. Missed(scaling).Select(m => Line.Of(m, Tone.Due)),
            Line.Of($"{scaling.Old.House.Name}, then {scaling.New.House.Name}", Tone.Strong),
            .. figures.Select(Row),
            .. amounts.Select(Row),
        ];
    }

    public static ImmutableArray<ScalingRow> Figures(Scaling scaling, Notation notation)
    {
        ScalingRow Row(string name, Func<ScaledSide, string> text) => new(name, text(scaling.Old), text(scaling.New));
        return
        [
            Row("into the fermenter", s => notation.Volume(s.Day.Totals.FermenterL)),
            Row("gravity", s => notation.Gravity(s.Day.Totals.OriginalGravitySg)),
            Row("bitterness", s => notation.Number(s.Day.Totals.BitternessIbu, "0.0") + " IBU"),
            Row("colour", s => notation.Number(s.Day.Totals.ColourEbc, "0.0") + " EBC"),
            Row("liquor to grist", s => notation.Units == UnitSystem.Us ? notation.Value(s.RatioLPerKg, "L/kg") : notation.Number(s.RatioLPerKg, "0.00") + " L/kg"),
            Row("efficiency", s => notation.Percent(s.EfficiencyFraction)),
            Row("hop yield", s => notation.Percent(s.HopYieldFraction)),
            Row("evaporated", s => notation.Volume(s.EvaporatedL)),
            Row("strike liquor", s => notation.Volume(s.Day.Totals.StrikeWaterL)),
            Row("sparge liquor", s => notation.Volume(s.Day.Totals.SpargeWaterL)),
            Row("day", s => Durations.Short(s.Day.Totals.DayS)),
        ];
    }

    public static ImmutableArray<ScalingRow> Amounts(Scaling scaling, Notation notation)
    {
        var (old, moved) = (scaling.Old.Recipe, scaling.New.Recipe);
        return
        [
            .. old.Grist.Zip(moved.Grist, (a, b) => new ScalingRow(a.Name, notation.Mass(a.MassKg), notation.Mass(b.MassKg))),
            .. old.Hops.Zip(moved.Hops, (a, b) => new ScalingRow($"{a.Name}, {RecipeWords.Briefly(a, notation)}", notation.Grams(a.MassG), notation.Grams(b.MassG))),
            .. old.Others.Zip(moved.Others, (a, b) => new ScalingRow(a.Name, notation.Value(a.Amount, a.Unit), notation.Value(b.Amount, b.Unit))),
        ];
    }

    /// <summary>What the new brewhouse does not let the brewer keep, each with its reason and what would help.</summary>
    public static ImmutableArray<string> Missed(Scaling scaling) =>
        [.. Choices.Where(c => scaling.Missed.HasFlag(c)).Select(c => Missed(c, scaling))];

    private static string Missed(KeptFigures figure, Scaling scaling) => figure switch
    {
        KeptFigures.Colour when scaling.Old.Recipe.Grist.Length < 2 => "Colour is not kept: one malt gives gravity and colour together. Add a coloured malt, or let the colour go.",
        KeptFigures.Colour => "Colour is not kept: no sensible share of the coloured malts gives it here. Let the colour go, or change the malts.",
        KeptFigures.Ratio => "The liquor to grist is not kept: without a sparge all the liquor goes into the mash. Sparge, or let the ratio go.",
        KeptFigures.Gravity => "Gravity is not kept: this brewhouse does not reach it with this batch. Take a smaller batch.",
        _ => "Bitterness is not kept: these hops do not give it here. Add a bittering hop.",
    };
}
