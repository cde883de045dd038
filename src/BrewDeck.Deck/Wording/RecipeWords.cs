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
        .. recipe.Grist.Select(g => Line.Of($"{notation.Mass(g.MassKg)} {g.Name}{(g.Use == GristUse.Kettle ? ", into the kettle" : "")}")),
        .. recipe.Hops.Select(h => Line.Of($"{notation.Grams(h.MassG)} {h.Name}, {Notation.Number(h.AlphaFraction * 100, "0.0")} % alpha, {When(h)}")),
        .. recipe.Others.Select(o => Line.Of($"{notation.Value(o.Amount, o.Unit)} {o.Name}")),
        .. recipe.Rests.Select(r => Line.Of($"rest at {notation.Target(r.TempC)}, {Durations.Short(r.Minutes * 60)}: {r.Name}")),
        Line.Of($"boil {Durations.Short(recipe.BoilMin * 60)}"),
        Line.Of($"yeast: {recipe.Yeast.Name}, pitch at {notation.Target(recipe.Yeast.PitchC)}"),
        .. recipe.Notes.Length == 0 ? [] : new[] { Line.Of(recipe.Notes, Tone.Muted) },
    ];

    private static string Head(Recipe recipe, Notation notation)
    {
        string[] parts =
        [
            recipe.Style,
            notation.Volume(recipe.BatchL),
            recipe.OriginalGravitySg is { } sg ? "gravity " + notation.Gravity(sg) : "",
            recipe.BitternessIbu is { } ibu ? Notation.Number(ibu, "0") + " IBU" : "",
        ];
        return string.Join(", ", parts.Where(p => p.Length > 0));
    }

    /// <summary>For a narrow column.</summary>
    internal static string Briefly(HopAddition hop) => hop.Use switch
    {
        HopUse.FirstWort => "first wort",
        HopUse.Whirlpool => $"stand {Durations.Short(hop.Minutes * 60)}",
        HopUse.DryHop => "dry hop",
        _ => hop.Minutes > 0 ? Durations.Short(hop.Minutes * 60) : "knock-out",
    };

    private static string When(HopAddition hop) => hop.Use switch
    {
        HopUse.FirstWort => "first wort",
        HopUse.Whirlpool => $"whirlpool, {Durations.Short(hop.Minutes * 60)}",
        HopUse.DryHop => "dry hop",
        _ => hop.Minutes > 0 ? $"{Durations.Short(hop.Minutes * 60)} before knock-out" : "at knock-out",
    };
}
