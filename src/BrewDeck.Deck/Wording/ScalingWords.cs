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

    public static string Name(KeptFigures figure, Notation notation) => figure switch
    {
        KeptFigures.Gravity => notation.Text("gravity"),
        KeptFigures.Bitterness => notation.Text("bitterness"),
        KeptFigures.Colour => notation.Text("colour"),
        _ => notation.Text("liquor to grist"),
    };

    /// <summary>Side by side for a narrow pane, with what keeps it from being brewed.</summary>
    public static ImmutableArray<Line> Lines(Scaling scaling, Notation notation)
    {
        ImmutableArray<ScalingRow> figures = Figures(scaling, notation), amounts = Amounts(scaling, notation);
        int old = figures.Concat(amounts).Max(r => r.Old.Length), moved = figures.Concat(amounts).Max(r => r.New.Length);
        Line Row(ScalingRow row) => Line.Of($"{row.Old.PadLeft(old)} {row.New.PadLeft(moved)}  {row.Name}");
        return
        [
            .. scaling.New.Failed.Select(l => Line.Of(LimitWords.Of(l, notation), Tone.Warning)),
            .. Missed(scaling, notation).Select(m => Line.Of(m, Tone.Due)),
            Line.Of(notation.Text($"{scaling.Old.House.Name}, then {scaling.New.House.Name}"), Tone.Strong),
            .. figures.Select(Row),
            .. amounts.Select(Row),
        ];
    }

    public static ImmutableArray<ScalingRow> Figures(Scaling scaling, Notation notation)
    {
        ScalingRow Row(string name, Func<ScaledSide, string> text) => new(name, text(scaling.Old), text(scaling.New));
        return
        [
            Row(notation.Text("into the fermenter"), s => notation.Volume(s.Day.Totals.FermenterL)),
            Row(notation.Text("gravity"), s => notation.Gravity(s.Day.Totals.OriginalGravitySg)),
            Row(notation.Text("bitterness"), s => notation.Number(s.Day.Totals.BitternessIbu, "0.0") + " IBU"),
            Row(notation.Text("colour"), s => notation.Number(s.Day.Totals.ColourEbc, "0.0") + " EBC"),
            Row(notation.Text("liquor to grist"), s => notation.Units == UnitSystem.Us ? notation.Value(s.RatioLPerKg, "L/kg") : notation.Number(s.RatioLPerKg, "0.00") + " L/kg"),
            Row(notation.Text("efficiency"), s => notation.Percent(s.EfficiencyFraction)),
            Row(notation.Text("hop yield"), s => notation.Percent(s.HopYieldFraction)),
            Row(notation.Text("evaporated"), s => notation.Volume(s.EvaporatedL)),
            Row(notation.Text("strike liquor"), s => notation.Volume(s.Day.Totals.StrikeWaterL)),
            Row(notation.Text("sparge liquor"), s => notation.Volume(s.Day.Totals.SpargeWaterL)),
            Row(notation.Text("day"), s => Durations.Short(s.Day.Totals.DayS)),
        ];
    }

    public static ImmutableArray<ScalingRow> Amounts(Scaling scaling, Notation notation)
    {
        var (old, moved) = (scaling.Old.Recipe, scaling.New.Recipe);
        return
        [
            .. old.Grist.Zip(moved.Grist, (a, b) => new ScalingRow(a.Name, notation.Mass(a.MassKg), notation.Mass(b.MassKg))),
            .. old.Hops.Zip(moved.Hops, (a, b) => new ScalingRow($"{a.Name}, {RecipeWords.Briefly(a.Use, a.Minutes, notation)}", notation.Grams(a.MassG), notation.Grams(b.MassG))),
            .. old.Others.Zip(moved.Others, (a, b) => new ScalingRow(a.Name, notation.Value(a.Amount, a.Unit), notation.Value(b.Amount, b.Unit))),
        ];
    }

    /// <summary>What the new brewhouse does not let the brewer keep, each with its reason and what would help.</summary>
    public static ImmutableArray<string> Missed(Scaling scaling, Notation notation) =>
        [.. Choices.Where(c => scaling.Missed.HasFlag(c)).Select(c => Missed(c, scaling, notation))];

    private static string Missed(KeptFigures figure, Scaling scaling, Notation notation) => figure switch
    {
        KeptFigures.Colour when scaling.Old.Recipe.Grist.Length < 2 => notation.Text("Colour is not kept: one malt gives gravity and colour together. Add a coloured malt, or let the colour go."),
        KeptFigures.Colour => notation.Text("Colour is not kept: no sensible share of the coloured malts gives it here. Let the colour go, or change the malts."),
        KeptFigures.Ratio => notation.Text("The liquor to grist is not kept: without a sparge all the liquor goes into the mash. Sparge, or let the ratio go."),
        KeptFigures.Gravity => notation.Text("Gravity is not kept: this brewhouse does not reach it with this batch. Take a smaller batch."),
        _ => notation.Text("Bitterness is not kept: these hops do not give it here. Add a bittering hop."),
    };
}
