namespace BrewDeck.Core.Waters;

/// <summary>From the least to the most that is wanted; both alike for a point.</summary>
public readonly record struct Band(double Least, double Most);

/// <summary>What the water is to become. What is not stated is left as it comes.</summary>
public sealed record WaterTarget
{
    /// <summary>States nothing: the water stays as it is.</summary>
    public static WaterTarget Nothing { get; } = new();

    public string Name { get; init; } = "";

    public Band? CalciumMgPerL { get; init; }

    public Band? MagnesiumMgPerL { get; init; }

    public Band? SodiumMgPerL { get; init; }

    public Band? ChlorideMgPerL { get; init; }

    public Band? SulphateMgPerL { get; init; }

    public Band? BicarbonateMgPerL { get; init; }

    /// <summary>mg/L as CaCO3, of the strike liquor; not together with <see cref="MashPh"/>, which asks for one of its own.</summary>
    public Band? ResidualAlkalinityAsCaCO3 { get; init; }

    /// <summary>By mass.</summary>
    public double? SulphateToChloride { get; init; }

    /// <summary>At room temperature; salts and acid of the strike liquor are to reach it.</summary>
    public double? MashPh { get; init; }

    /// <summary>At room temperature; acid takes the sparge liquor there.</summary>
    public double? SpargePh { get; init; }

    /// <summary>Most that acid leaves in the sparge liquor, mg/L as CaCO3; used where <see cref="SpargePh"/> is not stated.</summary>
    public double? SpargeAlkalinityAsCaCO3 { get; init; }

    /// <summary>Says something about the carbonates, so that acid and alkaline salts have an aim.</summary>
    internal bool AimsAtAlkalinity =>
        BicarbonateMgPerL is not null || ResidualAlkalinityAsCaCO3 is not null || MashPh is not null;
}
