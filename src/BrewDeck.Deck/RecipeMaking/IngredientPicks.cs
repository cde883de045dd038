using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>The catalogue as lists to choose from, and as lines of a recipe.</summary>
internal sealed class IngredientPicks(IProfiles profiles, Notation notation)
{
    private readonly IReadOnlyList<GristLine> _grist = profiles.CatalogueGrist();
    private readonly IReadOnlyList<HopOnHand> _hops = profiles.CatalogueHops();
    private readonly IReadOnlyList<Yeast> _yeasts = profiles.CatalogueYeasts();

    public ImmutableArray<(string Name, string Typical)> Grist =>
        [.. _grist.Select(g => (g.Name, notation.Text($"{notation.Number(100 * g.ExtractFraction, "0")} % extract, {notation.Number(g.ColourEbc, "0")} EBC{(g.Use == GristUse.Kettle ? notation.Text(", into the kettle") : "")}")))];

    public ImmutableArray<(string Name, string Typical)> Hops => [.. _hops.Select(h => (h.Name, notation.Text($"{notation.Number(100 * h.AlphaFraction, "0.0")} % alpha acid")))];

    public ImmutableArray<(string Name, string Typical)> Yeasts =>
        [.. _yeasts.Select(y => (y.Name, notation.Text($"{notation.Number(100 * y.AttenuationFraction, "0")} %, pitched at {notation.Target(y.PitchC)}")))];

    public GristLine GristAt(int at) => _grist[at] with { MassKg = 1 };

    public HopAddition HopAt(int at, double boilMin) => new(_hops[at].Name, 1, _hops[at].AlphaFraction, HopForm.Pellet, HopUse.Boil, boilMin);

    public Yeast YeastAt(int at) => _yeasts[at];
}
