using BrewDeck.Core.Physics;
using static BrewDeck.Deck.MeasureUnit;

namespace BrewDeck.Deck;

/// <summary>
/// The units of every dimension; the canonical one stands first. Factors come from UnitsNet's quantities, never from
/// its text parser: that reads <c>67,2 °C</c> as 672 under the invariant culture, refuses <c>67C</c> and costs 20 ms
/// the first time. Each dimension's table is made when it is first asked for.
/// </summary>
public static class QuantityUnits
{
    private static readonly Lazy<MeasureUnit[]>[] Tables =
        [.. Enum.GetValues<Dimension>().Select(d => new Lazy<MeasureUnit[]>(() => Table(d)))];

    /// <summary>All units of a dimension, the canonical one first.</summary>
    public static IReadOnlyList<MeasureUnit> Of(Dimension dimension) => Tables[(int)dimension].Value;

    /// <summary>
    /// The unit that is written so, whatever its case, spaces and degree signs; null when there is none.
    /// </summary>
    public static MeasureUnit? Find(Dimension dimension, string spelling)
    {
        var folded = Folded(spelling);
        return Of(dimension).FirstOrDefault(u => u.Spellings.Contains(folded));
    }

    /// <summary>A value in one unit of a dimension, in another, by their spellings.</summary>
    /// <exception cref="ArgumentException">A unit that the dimension does not have.</exception>
    public static double Convert(Dimension dimension, double value, string from, string to) =>
        Convert(dimension, value, Known(dimension, from), Known(dimension, to));

    /// <summary>The unit that is written so.</summary>
    /// <exception cref="ArgumentException">The dimension does not have it.</exception>
    public static MeasureUnit Known(Dimension dimension, string spelling) =>
        Find(dimension, spelling)
            ?? throw new ArgumentException($"{dimension} has no unit '{spelling}'", nameof(spelling));

    /// <summary>A value in one unit of a dimension, in another; exact when both are the same unit.</summary>
    /// <exception cref="ArgumentException">A wanted unit without a plain factor, such as °F or °P.</exception>
    public static double Convert(Dimension dimension, double value, MeasureUnit from, MeasureUnit to)
    {
        if (from == to)
            return value;
        if (double.IsNaN(to.Factor))
            throw new ArgumentException($"{to.Name} is read, never written", nameof(to));
        return Tidy(from.ToCanonical(value) / to.Factor);
    }

    /// <summary>
    /// Twelve significant digits or fewer: what a conversion adds in the last bits goes, so that 152.6 °F is 67 °C and
    /// both give one plan.
    /// </summary>
    public static double Tidy(double value, int digits = 12)
    {
        if (value == 0 || !double.IsFinite(value))
            return value;
        var text = value.ToString($"G{digits}", System.Globalization.CultureInfo.InvariantCulture);
        return double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    internal static string Folded(string unit) =>
        string.Concat(unit.Replace(" per ", "/", StringComparison.OrdinalIgnoreCase)
            .Replace('℃', 'c').Replace('℉', 'f')
            .Where(c => !char.IsWhiteSpace(c) && c is not ('°' or 'º' or '˚' or '.')))
            .ToLowerInvariant();

    private static MeasureUnit[] Table(Dimension dimension) => dimension switch
    {
        Dimension.Volume => Volumes(),
        Dimension.Mass => Masses(),
        Dimension.Temperature => Temperatures(),
        Dimension.TemperatureDifference => TemperatureDifferences(),
        Dimension.Gravity =>
            [Linear("SG", 1), Curved("°P", SugarSolution.SgFromPlato, "Plato"), Curved("°Bx", SugarSolution.SgFromPlato, "Brix")],
        Dimension.Time => Times(),
        Dimension.Power => [Linear("W", 1, "watt"), Linear("kW", (double)UnitsNet.Power.FromKilowatts(1).Watts)],
        Dimension.Pressure => Pressures(),
        Dimension.Length => Lengths(),
        Dimension.Flow => Flows(),
        Dimension.Colour =>
            [Linear("EBC", 1), Linear("SRM", Colour.EbcPerSrm), Curved("°L", EbcFromLovibond, "Lovi", "Lovibond")],
        Dimension.Fraction => [Linear("", 1), Linear("%", 0.01, "percent", "pct")],
        Dimension.HeatCapacity => [Linear("J/K", 1, "J/C"), Linear("kJ/K", 1000, "kJ/C")],
        Dimension.HeatTransfer => [Linear("W/K", 1, "W/C"), Linear("kW/K", 1000, "kW/C")],
        Dimension.Thickness => Thicknesses(),
        Dimension.Voltage => [Linear("V", 1, "volt", "volts")],
        Dimension.Current => [Linear("A", 1, "amp", "amps")],
        Dimension.Evaporation =>
            [Linear("kg/h", 1, "kg/hr"), Linear("L/h", WaterKgPerL, "L/hr"),
            Linear("gal/h", WaterKgPerL * UsGallonL, "gal/hr")],
        Dimension.Bitterness => [Linear("IBU", 1, "IBUs", "EBU")],
        Dimension.Concentration => [Linear("mg/L", 1, "ppm"), Linear("g/L", 1000)],
        Dimension.Acidity => [Linear("pH", 1)],
        Dimension.PitchRate => [Linear("M/mL/°P", 1, "million/mL/°P", "million/mL/Plato")],
        _ => [Linear("", 1)],
    };

    /// <summary>An evaporation told in litres means cold ones.</summary>
    private static double WaterKgPerL => Water.DensityKgPerM3(20) / 1000;

    private static double UsGallonL => UnitsNet.Volume.FromUsGallons(1).Liters;

    private static double PoundKg => UnitsNet.Mass.FromPounds(1).Kilograms;

    private static MeasureUnit[] Volumes() =>
    [
        Linear("L", 1, "litre", "litres", "liter", "liters", "ltr"),
        Linear("mL", 0.001), Linear("cL", 0.01), Linear("dL", 0.1), Linear("hL", 100),
        Linear("gal", UsGallonL, "US gal", "gals", "gallon", "gallons"),
        Linear("qt", UnitsNet.Volume.FromUsQuarts(1).Liters, "US qt", "quart", "quarts"),
        Linear("pt", UnitsNet.Volume.FromUsPints(1).Liters, "US pt", "pint", "pints"),
        Linear("cup", UnitsNet.Volume.FromUsCustomaryCups(1).Liters, "cups"),
        Linear("fl oz", UnitsNet.Volume.FromUsOunces(1).Liters, "US fl oz"),
        Linear("tbsp", UnitsNet.Volume.FromUsTablespoons(1).Liters),
            Linear("tsp", UnitsNet.Volume.FromUsTeaspoons(1).Liters),
        Linear("bbl", UnitsNet.Volume.FromUsBeerBarrels(1).Liters, "US bbl"),
        Linear("imp gal", UnitsNet.Volume.FromImperialGallons(1).Liters, "igal", "UK gal", "imperial gallon",
            "imperial gallons"),
        Linear("imp qt", UnitsNet.Volume.FromImperialQuarts(1).Liters, "iqt", "UK qt"),
        Linear("imp pt", UnitsNet.Volume.FromImperialPints(1).Liters, "ipt", "UK pt"),
        Linear("imp fl oz", UnitsNet.Volume.FromImperialOunces(1).Liters, "ifloz"),
        Linear("imp bbl", UnitsNet.Volume.FromImperialBeerBarrels(1).Liters, "ibbl"),
    ];

    private static MeasureUnit[] Masses() =>
    [
        Linear("kg", 1, "kilo", "kilos"), Linear("g", 0.001, "gram", "grams"), Linear("mg", 1e-6),
        Linear("lb", PoundKg, "lbs", "pound", "pounds"),
        Linear("oz", UnitsNet.Mass.FromOunces(1).Kilograms, "ounce", "ounces"),
    ];

    private static MeasureUnit[] Temperatures() =>
    [
        Linear("°C", 1, "Celsius"),
        Curved("°F", f => UnitsNet.Temperature.FromDegreesFahrenheit(f).DegreesCelsius, "Fahrenheit"),
        Curved("K", k => UnitsNet.Temperature.FromKelvins(k).DegreesCelsius, "kelvin"),
    ];

    private static MeasureUnit[] TemperatureDifferences() =>
    [
        Linear("K", 1, "°C", "kelvin"),
        Linear("°F", UnitsNet.TemperatureDelta.FromDegreesFahrenheit(1).Kelvins),
    ];

    private static MeasureUnit[] Times() =>
    [
        Linear("s", 1, "sec", "secs", "second", "seconds"),
        Linear("min", 60, "m", "mins", "minute", "minutes", "'"),
        Linear("h", 3600, "hr", "hrs", "hour", "hours"),
        Linear("d", 86400, "day", "days"),
        Linear("week", 7 * 86400, "weeks", "wk"),
    ];

    private static MeasureUnit[] Pressures() =>
    [
        Linear("Pa", 1), Linear("kPa", 1000), Linear("mbar", 100), Linear("bar", UnitsNet.Pressure.FromBars(1).Pascals),
        Linear("psi", UnitsNet.Pressure.FromPoundsForcePerSquareInch(1).Pascals),
    ];

    private static MeasureUnit[] Lengths() =>
    [
        Linear("m", 1, "metre", "metres", "meter", "meters"), Linear("cm", 0.01), Linear("mm", 0.001),
        Linear("ft", UnitsNet.Length.FromFeet(1).Meters, "foot", "feet", "'"),
        Linear("in", UnitsNet.Length.FromInches(1).Meters, "inch", "inches", "\""),
    ];

    private static MeasureUnit[] Flows() =>
    [
        Linear("L/min", 1, "lpm"), Linear("L/h", 1.0 / 60, "L/hr"), Linear("L/s", 60),
        Linear("gal/min", UsGallonL, "gpm"),
        Linear("qt/min", UnitsNet.Volume.FromUsQuarts(1).Liters),
    ];

    private static MeasureUnit[] Thicknesses() =>
    [
        Linear("L/kg", 1, "mL/g"), Linear("qt/lb", UnitsNet.Volume.FromUsQuarts(1).Liters / PoundKg),
        Linear("gal/lb", UsGallonL / PoundKg), Linear("L/g", 1000), Linear("m^3/kg", 1000),
        Linear("gal/oz", 16 * UsGallonL / PoundKg),
        Linear("fl oz/oz", 16 * UnitsNet.Volume.FromUsOunces(1).Liters / PoundKg),
        Linear("ft^3/lb", UnitsNet.Volume.FromCubicFeet(1).Liters / PoundKg),
    ];

    /// <summary>Nothing is paler than 0.</summary>
    private static double EbcFromLovibond(double lovibond) =>
        Math.Max(0, Colour.EbcFromSrm(Colour.SrmFromLovibond(lovibond)));
}
