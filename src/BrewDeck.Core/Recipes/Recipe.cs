using System.Collections.Immutable;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Recipes;

/// <summary>What is to be brewed, written for a batch of <see cref="BatchL"/> into the fermenter.</summary>
public sealed record Recipe
{
    public required string Name { get; init; }

    public string Author { get; init; } = "";

    public string Style { get; init; } = "";

    public string Notes { get; init; } = "";

    /// <summary>Cold wort into the fermenter, litres at 20 °C.</summary>
    public required double BatchL { get; init; }

    /// <summary>Wanted original gravity, SG 20/20; null: as the grist gives.</summary>
    public double? OriginalGravitySg { get; init; }

    /// <summary>Wanted bitterness, IBU; null: as the hops give.</summary>
    public double? BitternessIbu { get; init; }

    public required ImmutableArray<GristLine> Grist { get; init; }

    public required ImmutableArray<MashRest> Rests { get; init; }

    /// <summary>From the first addition to knock-out, minutes.</summary>
    public required double BoilMin { get; init; }

    public required ImmutableArray<HopAddition> Hops { get; init; }

    public ImmutableArray<OtherAddition> Others { get; init; } = [];

    /// <summary>Hot stand after the whirlpool, minutes.</summary>
    public double StandMin { get; init; } = 15;

    public required Yeast Yeast { get; init; }

    /// <summary>Strike liquor to grist, L/kg; null: as the brewhouse usually does. Where nothing is sparged all the liquor is strike liquor.</summary>
    public double? MashThicknessLPerKg { get; init; }

    /// <summary>What the water is to become; null: as the brewer always does.</summary>
    public WaterTarget? Water { get; init; }

    /// <summary>Sum of the grist that goes into the mash, kg.</summary>
    public double MashKg => Grist.Where(g => g.Use == GristUse.Mash).Sum(g => g.MassKg);
}

public enum GristUse
{
    Mash,
    Kettle,
}

/// <summary>Malts by what they do to the pH of the mash.</summary>
public enum MaltKind
{
    Base,

    /// <summary>Wheat malt and raw grain.</summary>
    Wheat,
    Crystal,
    Roasted,

    /// <summary>Carries lactic acid.</summary>
    Acidulated,
}

/// <summary>Malt, adjunct, sugar or extract.</summary>
/// <param name="ExtractFraction">Laboratory extract on dry basis, 0..1 (sucrose 1).</param>
/// <param name="MoistureFraction">Water in it as weighed, 0..1; malt usually 0.03 to 0.05.</param>
public sealed record GristLine(
    string Name, double MassKg, double ExtractFraction, double MoistureFraction, double ColourEbc, GristUse Use)
{
    /// <summary>What it does to the pH of the mash; null: told by its colour.</summary>
    public MaltKind? Kind { get; init; }

    /// <summary>Extract in it as weighed, kg.</summary>
    public double ExtractKg => MassKg * (1 - MoistureFraction) * ExtractFraction;
}

/// <summary>One rest of the mash; the last one may be a mash-out.</summary>
public sealed record MashRest(string Name, double TempC, double Minutes);

public enum HopUse
{
    FirstWort,
    Boil,
    Whirlpool,
    DryHop,
}

public enum HopForm
{
    Pellet,
    Cone,
}

/// <param name="Minutes">Boil: before knock-out. Whirlpool: contact before cast-out. Dry hop: days are kept in the text.</param>
public sealed record HopAddition(
    string Name, double MassG, double AlphaFraction, HopForm Form, HopUse Use, double Minutes);

public enum AdditionUse
{
    Mash,
    Boil,
    Fermenter,
}

/// <summary>Finings, nutrient, spice, salt: what carries no extract.</summary>
/// <param name="Unit">As the brewer writes it: g, mL, each.</param>
/// <param name="Minutes">Boil: before knock-out.</param>
public sealed record OtherAddition(string Name, double Amount, string Unit, AdditionUse Use, double Minutes);

/// <param name="AttenuationFraction">Apparent, 0..1.</param>
/// <param name="PitchRateMillionPerMlPlato">Million cells per mL and degree Plato.</param>
public sealed record Yeast(string Name, double AttenuationFraction, double PitchC, double PitchRateMillionPerMlPlato);
