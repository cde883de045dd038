using System.Collections.Immutable;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>
/// Typical values of malts, sugars, hops and yeasts, so that a recipe line with a name and an amount is enough.
/// </summary>
public sealed record Catalogue
{
    public static readonly Catalogue Empty = new();

    public ImmutableArray<CatalogueFermentable> Fermentables { get; init; } = [];

    public ImmutableArray<CatalogueHop> Hops { get; init; } = [];

    public ImmutableArray<CatalogueYeast> Yeasts { get; init; } = [];

    public CatalogueFermentable? Fermentable(string name) => Fermentables.FirstOrDefault(f => f.Is(name));

    public CatalogueHop? Hop(string name) => Hops.FirstOrDefault(h => h.Is(name));

    public CatalogueYeast? Yeast(string name) => Yeasts.FirstOrDefault(y => y.Is(name));

    /// <summary>This catalogue with another's entries in front: of two with one name the other's counts.</summary>
    public Catalogue Under(Catalogue other) => new()
    {
        Fermentables = [.. other.Fermentables, .. Fermentables],
        Hops = [.. other.Hops, .. Hops],
        Yeasts = [.. other.Yeasts, .. Yeasts],
    };
}

/// <param name="Also">Other names for the same.</param>
public abstract record CatalogueItem(string Name, ImmutableArray<string> Also)
{
    public bool Is(string name) => Same(Name, name) || Also.Any(a => Same(a, name));

    private static bool Same(string known, string asked) =>
        known.Equals(asked.Trim(), StringComparison.OrdinalIgnoreCase);
}

/// <param name="ExtractFraction">Laboratory extract on dry basis, 0..1.</param>
/// <param name="MoistureFraction">0..1.</param>
public sealed record CatalogueFermentable(
    string Name, ImmutableArray<string> Also, double ExtractFraction, double MoistureFraction, double ColourEbc,
        GristUse Use)
    : CatalogueItem(Name, Also)
{
    /// <summary>Null: told by its colour.</summary>
    public MaltKind? Kind { get; init; }
}

/// <param name="AlphaFraction">Typical alpha acid, 0..1; the bag says better.</param>
public sealed record CatalogueHop(string Name, ImmutableArray<string> Also, double AlphaFraction)
    : CatalogueItem(Name, Also);

/// <param name="AttenuationFraction">Apparent, 0..1.</param>
/// <param name="PitchRateMillionPerMlPlato">Million cells per mL and degree Plato.</param>
public sealed record CatalogueYeast(
    string Name, ImmutableArray<string> Also, double AttenuationFraction, double PitchC,
        double PitchRateMillionPerMlPlato)
    : CatalogueItem(Name, Also);
