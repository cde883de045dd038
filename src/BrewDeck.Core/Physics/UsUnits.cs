namespace BrewDeck.Core.Physics;

/// <summary>
/// US customary units by definition (NIST SP 811, appendix B). Only for the trade's formulas that are printed in
/// them; everything else works in kilograms and litres.
/// </summary>
public static class UsUnits
{
    /// <summary>US liquid gallon.</summary>
    public const double LitresPerGallon = 3.785411784;

    /// <summary>US liquid quart.</summary>
    public const double LitresPerQuart = LitresPerGallon / 4.0;

    /// <summary>Avoirdupois pound.</summary>
    public const double KgPerPound = 0.45359237;

    /// <summary>Avoirdupois ounce.</summary>
    public const double GramsPerOunce = 28.349523125;

    /// <summary>31 US gallons: the US beer barrel.</summary>
    public const double LitresPerBeerBarrel = 31.0 * LitresPerGallon;

    /// <summary>L/kg in one US gal/lb (8.3454); also turns points·gal/lb into points·L/kg.</summary>
    public const double LitresPerKgFromGallonsPerPound = LitresPerGallon / KgPerPound;

    /// <summary>L/kg in one qt/lb (2.08635).</summary>
    public const double LitresPerKgFromQuartsPerPound = LitresPerQuart / KgPerPound;
}
