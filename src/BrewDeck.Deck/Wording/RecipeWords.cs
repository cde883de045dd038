using System.Collections.Immutable;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A recipe at a glance.</summary>
public static class RecipeWords
{
    public static ImmutableArray<Line> Of(Recipe recipe, Notation notation) =>
    [
        Line.Of(recipe.Name, Tone.Strong),
        Line.Of(Head(recipe, notation), Tone.Muted),
        .. recipe.Grist.Select(g => Line.Of($"{notation.Mass(g.MassKg)} {g.Name}{(g.Use == GristUse.Kettle ? notation.Text(", into the kettle") : "")}")),
        .. recipe.Hops.Select(h => Line.Of(notation.Text($"{notation.Grams(h.MassG)} {h.Name}, {notation.Number(h.AlphaFraction * 100, "0.0")} % alpha, {When(h, notation)}"))),
        .. recipe.Others.Select(o => Line.Of($"{notation.Value(o.Amount, o.Unit)} {o.Name}")),
        .. recipe.Rests.Select(r => Line.Of(notation.Text($"rest at {notation.Target(r.TempC)}, {Durations.Short(r.Minutes * 60)}: {notation.Name(r.Name)}"))),
        Line.Of(notation.Text($"boil {Durations.Short(recipe.BoilMin * 60)}")),
        Line.Of(notation.Text($"yeast: {recipe.Yeast.Name}, pitch at {notation.Target(recipe.Yeast.PitchC)}")),
        .. recipe.Notes.Length == 0 ? [] : new[] { Line.Of(recipe.Notes, Tone.Muted) },
    ];

    private static string Head(Recipe recipe, Notation notation)
    {
        string[] parts =
        [
            recipe.Style,
            notation.Volume(recipe.BatchL),
            recipe.OriginalGravitySg is { } sg ? notation.Text("gravity ") + notation.Gravity(sg) : "",
            recipe.BitternessIbu is { } ibu ? notation.Number(ibu, "0") + " IBU" : "",
        ];
        return string.Join(", ", parts.Where(p => p.Length > 0));
    }

    /// <summary>For a narrow column.</summary>
    internal static string Briefly(HopUse use, double minutes, Notation notation) => use switch
    {
        HopUse.FirstWort => notation.Text("first wort"),
        HopUse.Whirlpool => notation.Text($"stand {Durations.Short(minutes * 60)}"),
        HopUse.DryHop => notation.Text("dry hop"),
        _ => minutes > 0 ? Durations.Short(minutes * 60) : notation.Text("knock-out"),
    };

    private static string When(HopAddition hop, Notation notation) => hop.Use switch
    {
        HopUse.FirstWort => notation.Text("first wort"),
        HopUse.Whirlpool => notation.Text($"whirlpool, {Durations.Short(hop.Minutes * 60)}"),
        HopUse.DryHop => notation.Text("dry hop"),
        _ => hop.Minutes > 0 ? notation.Text($"{Durations.Short(hop.Minutes * 60)} before knock-out") : notation.Text("at knock-out"),
    };
}
