namespace BrewDeck.Core.Waters;

/// <summary>Most of each that brewing water should carry, mg/L: common practice, no source. Above these beer tastes of it.</summary>
public static class SafeWater
{
    public const double CalciumMgPerL = 200;
    public const double MagnesiumMgPerL = 40;
    public const double SodiumMgPerL = 150;
    public const double ChlorideMgPerL = 250;
    public const double SulphateMgPerL = 400;

    /// <summary>Lactate in the wort that is tasted, mg/L.</summary>
    public const double LactateMgPerL = 400;

    /// <summary>Cations and anions of an analysis may differ by this share of their sum; Standard Methods 1030E has criteria of that kind, from memory.</summary>
    public const double Imbalance = 0.1;
}
