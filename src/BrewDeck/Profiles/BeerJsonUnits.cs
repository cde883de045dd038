using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// The unit strings of BeerJSON 1.0 (measureable_units.json) for what is carried over. Others are refused, as its
/// schema does.
/// </summary>
internal static class BeerJsonUnits
{
    public static readonly IReadOnlyDictionary<Dimension, string[]> Allowed = new Dictionary<Dimension, string[]>
    {
        [Dimension.Volume] = ["ml", "l", "tsp", "tbsp", "floz", "cup", "pt", "qt", "gal", "bbl", "ifloz", "ipt", "iqt",
            "igal", "ibbl"],
        [Dimension.Mass] = ["mg", "g", "kg", "lb", "oz"],
        [Dimension.Temperature] = ["C", "F"],
        [Dimension.Time] = ["sec", "min", "hr", "day", "week"],
        [Dimension.Colour] = ["EBC", "Lovi", "SRM"],
        [Dimension.Bitterness] = ["IBUs"],
        [Dimension.Gravity] = ["sg", "plato", "brix"],
        [Dimension.Fraction] = ["%"],
    };

    /// <summary>Things that are counted.</summary>
    public static readonly string[] Counted = ["1", "unit", "each", "dimensionless", "pkg"];

    private static readonly string[] Foreign =
        ["tsp", "tbsp", "floz", "cup", "pt", "qt", "gal", "bbl", "ifloz", "ipt", "iqt", "igal", "ibbl", "lb", "oz",
            "F", "Lovi", "SRM", "plato", "brix"];

    /// <summary>
    /// A value in a unit of the standard, in a unit of ours. What was written in pounds or °F is rounded to six digits,
    /// so that the recipe can be read; metric values stay exact.
    /// </summary>
    public static double In(Dimension dimension, double value, string from, string unit)
    {
        var converted = QuantityUnits.Convert(dimension, value, from, unit);
        return Foreign.Contains(from) ? QuantityUnits.Tidy(converted, 6) : converted;
    }
}
