using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference;

/// <summary>
/// Units that the rows are written in, to SI (volumes in litres, rates of volume in litres per second).
/// </summary>
internal static class RowUnits
{
    private static readonly (string Unit, double Factor)[] Factors =
    [
        ("kPa", 1e3), ("MPa", 1e6), ("Pa", 1.0),
        ("kW", 1e3), ("W", 1.0), ("kJ", 1e3), ("J", 1.0),
        ("mPa s", 1e-3), ("min", 60.0), ("L/min", 1.0 / 60.0),
        ("mm", 1e-3), ("cm", 1e-2), ("m", 1.0),
        ("US gal", UsUnits.LitresPerGallon), ("gal", UsUnits.LitresPerGallon), ("qt", UsUnits.LitresPerQuart),
        ("US bbl", UsUnits.LitresPerBeerBarrel), ("L", 1.0), ("mL", 1e-3),
        ("lb", UsUnits.KgPerPound), ("kg", 1.0), ("oz", UsUnits.GramsPerOunce / 1e3), ("g", 1e-3),
    ];

    public static double Factor(string unit)
    {
        // the longest unit that the text begins with: "L/min" before "L"
        var known = Factors.Where(each => unit.StartsWith(each.Unit, StringComparison.Ordinal)).ToArray();
        if (known.Length == 0) throw new FormatException($"unknown unit '{unit}'");
        return known.MaxBy(each => each.Unit.Length).Factor;
    }

    public static double Celsius(double value, string unit)
    {
        if (unit.StartsWith("degF", StringComparison.Ordinal)) return Temperature.CelsiusFromFahrenheit(value);
        if (unit.StartsWith("degC", StringComparison.Ordinal)) return value;
        if (unit == "K") return Temperature.CelsiusFromKelvin(value);
        throw new FormatException($"unknown temperature unit '{unit}'");
    }
}
