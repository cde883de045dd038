namespace BrewDeck.Core.Physics;

/// <summary>
/// Temperature scales. Kernels take °C; absolute equations and older printed formulas need the others.
/// </summary>
public static class Temperature
{
    /// <summary>0 °C in kelvin (definition, SI brochure).</summary>
    public const double ZeroCelsiusKelvin = 273.15;

    /// <summary>K of a °C.</summary>
    public static double Kelvin(double celsius) => celsius + ZeroCelsiusKelvin;

    /// <summary>°C of a K.</summary>
    public static double CelsiusFromKelvin(double kelvin) => kelvin - ZeroCelsiusKelvin;

    /// <summary>°F of a °C.</summary>
    public static double Fahrenheit(double celsius) => celsius * 1.8 + 32.0;

    /// <summary>°C of a °F.</summary>
    public static double CelsiusFromFahrenheit(double fahrenheit) => (fahrenheit - 32.0) / 1.8;
}
