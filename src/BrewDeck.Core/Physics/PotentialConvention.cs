namespace BrewDeck.Core.Physics;

/// <summary>
/// Potentials in points·gal/lb (1 lb in 1 US gal, full yield) by which a homebrewing magazine standardises its recipes.
/// For printed recipes; a malt's own analysis is better.
/// </summary>
public static class PotentialConvention
{
    /// <summary>As all here, points·gal/lb.</summary>
    public const double DriedMaltExtract = 45.0;
    public const double MunichMalt = 35.0;

    /// <summary>33 to 35.</summary>
    public const double CrystalMalt = 34.0;
    public const double ChocolateMalt = 34.0;

    /// <summary>Roasted barley and black malt, 24 to 26.</summary>
    public const double RoastedGrain = 25.0;

    /// <summary>37 to 38.</summary>
    public const double FlakedMaizeOrRice = 37.5;
}
