using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace BrewDeck.Deck.Wording;

/// <summary>How this brewer wants texts, numbers and clock times written. Rounding: 0.1 °C, 0.1 L, 1 g, 0.001 SG.</summary>
/// <param name="Zone">For local clock times.</param>
public sealed record Notation(UnitSystem Units, TimeZoneInfo Zone)
{
    private const double LitresPerGallon = 3.785411784;
    private const double KgPerPound = 0.45359237;
    private const double GramsPerOunce = 28.349523125;
    private const double MetresPerFoot = 0.3048;

    /// <summary>Of one litre to a kilogram.</summary>
    private const double QuartsPerPound = 4 / LitresPerGallon * KgPerPound;

    public static Notation Metric { get; } = new(UnitSystem.Metric, TimeZoneInfo.Utc);

    /// <summary>The language of all texts.</summary>
    public Tongue Tongue { get; init; } = Tongue.English;

    /// <summary>A text in the brewer's language.</summary>
    /// <param name="english">A constant, so that the catalogues can have it.</param>
    public string Text([ConstantExpected] string english) => Tongue.Find(english) ?? english;

    /// <summary>A text with something put in; its English words are constant, what is put in is worded already.</summary>
    [OverloadResolutionPriority(1)] // a phrase could take it too
    public string Text([InterpolatedStringHandlerArgument("")] ref TextHandler text) => text.Say();

    /// <summary>A text of a table.</summary>
    public string Text(Phrase phrase) => phrase.Said(this);

    /// <summary>The name of a thing, as the brewer or the program gave it: usual ones have one in each language.</summary>
    /// <param name="otherwise">Said where another language has no name for it; null: the same.</param>
    public string Name(string english, string? otherwise = null) => Tongue.IsEnglish ? english : Tongue.Name(english) ?? otherwise ?? english;

    /// <summary>A name in the middle of a sentence, in a language that lowers it there.</summary>
    public string Lowered(string name) => Tongue.LowersNouns ? Names.Lower(name) : name;

    /// <summary>An example or a kept quantity, with this brewer's decimal mark.</summary>
    public string Decimals(string quantity) => Tongue.DecimalMark == '.' ? quantity : string.Concat(quantity.Select(
        (c, i) => c == '.' && i > 0 && i + 1 < quantity.Length && char.IsAsciiDigit(quantity[i - 1]) && char.IsAsciiDigit(quantity[i + 1]) ? Tongue.DecimalMark : c));

    private bool Us => Units == UnitSystem.Us;

    public string TempUnit => Us ? "°F" : "°C";

    public string VolumeUnit => Us ? "gal" : "L";

    /// <summary>What a number without a unit means; null: the unit of the records.</summary>
    public string? BareUnit(Dimension dimension) => !Us ? null : dimension switch
    {
        Dimension.Temperature => TempUnit,
        Dimension.Volume => VolumeUnit,
        Dimension.Mass => "lb",
        Dimension.Length => "ft",
        _ => null,
    };

    public double InTempUnit(double c) => Us ? (c * 9 / 5) + 32 : c;

    public double InVolumeUnit(double l) => Us ? l / LitresPerGallon : l;

    /// <summary>A measured or expected temperature: always one decimal.</summary>
    public string Temp(double c) => $"{Number(InTempUnit(c), "0.0")} {TempUnit}";

    /// <summary>A temperature to aim at: no idle zero, so that it can be read aloud.</summary>
    public string Target(double c) => $"{Number(InTempUnit(c), "0.#")} {TempUnit}";

    /// <summary>A difference of temperatures.</summary>
    public string Kelvin(double k) => $"{Number(Us ? k * 9 / 5 : k, "0.0")} {TempUnit}";

    public string Volume(double l) => $"{Number(InVolumeUnit(l), Us ? "0.00" : "0.0")} {VolumeUnit}";

    /// <summary>What is far larger than a reading: never less than it is.</summary>
    public string WholeVolume(double l) => $"{Number(Math.Ceiling(InVolumeUnit(l)), "0")} {VolumeUnit}";

    /// <summary>Grist and whole loads.</summary>
    public string Mass(double kg) => Us
        ? Pounds(kg)
        : kg >= 100 ? Load(kg)
        : kg >= 10 ? Number(kg, "0.00") + " kg"
        : kg < 0.9995 ? Number(kg * 1000, "0") + " g" : Number(kg, "0.000") + " kg";

    /// <summary>What is far too heavy for a kitchen scale, or a part of it.</summary>
    public string Load(double kg) => Us ? Number(kg / KgPerPound, "0.0") + " lb" : Number(kg, "0.0") + " kg";

    /// <summary>Hops and small additions.</summary>
    public string Grams(double g) => !Us ? Number(g, "0") + " g"
        // no kitchen scale shows so little in ounces
        : g < GramsPerOunce / 2 ? $"{Number(g, "0")} g ({Number(g / GramsPerOunce, "0.00")} oz)"
        : Number(g / GramsPerOunce, "0.00") + " oz";

    public string Gravity(double sg) => Number(sg, "0.000");

    public string Height(double m) => Us ? Number(m / MetresPerFoot, "0") + " ft" : Number(m, m < 20 ? "0.##" : "0") + " m";

    public string Power(double w) => Number(w / 1000, "0.00") + " kW";

    public string Percent(double fraction) => Number(fraction * 100, "0.0") + " %";

    /// <summary>A number with its unit as records write it (L, kg, g, °C, m); other units pass unchanged.</summary>
    public string Value(double value, string unit) => unit switch
    {
        "L" => Volume(value),
        "kg" => Mass(value),
        "g" => Grams(value),
        "°C" or "degC" or "C" => Temp(value),
        "K" => Kelvin(value),
        "m" => Height(value),
        "W" => Power(value),
        "kW" => Power(value * 1000),
        "L/kg" or "L/min" or "kg/h" when Us => Rate(value, unit, "0.00"),
        "kg/h" or "L/kg" => Number(value, "0.0") + " " + unit,
        "SG" or "sg" => Gravity(value),
        "min" => Durations.Short(value * 60),
        "s" => Durations.Short(value),
        "" => Number(value, "0.##"),
        _ => Number(value, "0.##") + " " + unit,
    };

    /// <summary>A rate or a ratio; other units pass unchanged.</summary>
    public string Rate(double value, string unit, string format) => $"{Number(InRateUnit(value, unit), format)} {RateUnit(unit)}".TrimEnd();

    public double InRateUnit(double value, string unit) => !Us ? value : unit switch
    {
        "L/kg" => value * QuartsPerPound,
        "L/min" => value / LitresPerGallon,
        "kg/h" => value / KgPerPound,
        _ => value,
    };

    public string RateUnit(string unit) => !Us ? unit : unit switch
    {
        "L/kg" => "qt/lb",
        "L/min" => "gal/min",
        "kg/h" => "lb/h",
        _ => unit,
    };

    /// <summary>Local time of day, 24 hours.</summary>
    public string Clock(long unixMs) => Local(unixMs).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Local date and time of day.</summary>
    public string Date(long unixMs) => Local(unixMs).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    public DateTimeOffset Local(long unixMs) =>
        TimeZoneInfo.ConvertTime(DateTimeOffset.FromUnixTimeMilliseconds(unixMs), Zone);

    /// <summary>Rounds half away from zero and never writes a negative nought; "?" for what is no number.</summary>
    public string Number(double value, string format)
    {
        if (!double.IsFinite(value))
            return "?";
        var text = Half(value, format).ToString(format, CultureInfo.InvariantCulture);
        text = text.StartsWith('-') && !text.Any(c => c is >= '1' and <= '9') ? text[1..] : text;
        return Tongue.DecimalMark == '.' ? text : text.Replace('.', Tongue.DecimalMark);
    }

    private static double Half(double value, string format)
    {
        var point = format.IndexOf('.', StringComparison.Ordinal);
        var digits = point < 0 ? 0 : format.Length - point - 1;
        return Math.Abs(value) < 1e9 ? (double)Math.Round((decimal)value, digits, MidpointRounding.AwayFromZero) : value;
    }

    private string Pounds(double kg)
    {
        // no scale for such loads shows ounces
        if (kg >= 100)
            return Load(kg);
        // rounded in tenths of an ounce first, so that 15.96 oz becomes a pound
        var tenths = Math.Round(kg / KgPerPound * 160);
        var pounds = Math.Floor(tenths / 160);
        var ounces = Number((tenths - (pounds * 160)) / 10, "0.#") + " oz";
        return pounds == 0 ? ounces : Number(pounds, "0") + " lb " + ounces;
    }
}
