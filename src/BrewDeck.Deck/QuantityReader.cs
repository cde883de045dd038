using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>
/// Reads a quantity as people write it: <c>65 L</c>, <c>6.5gal</c>, <c>11 lb 4 oz</c>, <c>154f</c>, <c>12 °P</c>,
/// <c>1048</c>, <c>1 h 30</c>, <c>1:30</c> (hours and minutes), <c>75 %</c>. Point and comma both mark decimals;
/// separators of thousands are refused, for 1,500 may mean 1500 or 1.5.
/// </summary>
public static class QuantityReader
{
    private const int LongestText = 64;

    /// <summary>Reads into the canonical unit of the dimension.</summary>
    /// <param name="bareUnit">Unit of a bare number; null: the canonical one.</param>
    public static QuantityRead Read(string text, Dimension dimension, string? bareUnit = null) => Read(text, dimension, bareUnit, Notation.Metric);

    /// <param name="notation">Of who typed it: where the comma marks decimals, three digits after it are decimals too, and after a point they are refused.</param>
    public static QuantityRead Read(string text, Dimension dimension, string? bareUnit, Notation notation) =>
        ReadIn(text, dimension, QuantityUnits.Of(dimension)[0].Name, bareUnit, notation);

    /// <summary>Reads into any linear unit of the dimension; exact when the text is in that unit.</summary>
    /// <param name="unit">Unit of the value returned.</param>
    /// <param name="bareUnit">Unit of a bare number; null: the same.</param>
    /// <exception cref="ArgumentException">A unit that the dimension does not have.</exception>
    public static QuantityRead ReadIn(string text, Dimension dimension, string unit, string? bareUnit = null) =>
        ReadIn(text, dimension, unit, bareUnit, Notation.Metric);

    public static QuantityRead ReadIn(string text, Dimension dimension, string unit, string? bareUnit, Notation notation)
    {
        var wanted = QuantityUnits.Known(dimension, unit);
        var read = Parsed(text, dimension, wanted, QuantityUnits.Known(dimension, bareUnit ?? unit), notation);
        if (!read.Ok || QuantityRange.Of(dimension).Holds(wanted.ToCanonical(read.Value)))
            return read;
        return Refused(notation.Text($"{Shown(text)} cannot be right"), dimension, notation);
    }

    /// <summary>A file's text for a value: shortest digits that read back to the same double, and the unit.</summary>
    public static string Text(double value, string unit)
    {
        var number = value.ToString("R", CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    private static QuantityRead Parsed(string text, Dimension dimension, MeasureUnit wanted, MeasureUnit bare, Notation notation)
    {
        if (text.Length > LongestText)
            return Refused(notation.Text($"{Shown(text)} is too long for a quantity"), dimension, notation);
        var parts = QuantityParts.Of(text, dimension, notation);
        if (parts.Why is not null)
            return Refused($"{Shown(text)} {parts.Why}", dimension, notation);
        return parts.Items.Count == 1
            ? One(parts.Items[0], dimension, wanted, bare, notation)
            : Mixed(text, parts.Items, dimension, wanted, notation);
    }

    private static QuantityRead Refused(string fault, Dimension dimension, Notation notation) =>
        QuantityRead.Refused(fault, QuantityRange.Example(dimension, notation));

    private static QuantityRead One(QuantityPart part, Dimension dimension, MeasureUnit wanted,
        MeasureUnit bare, Notation notation)
    {
        var unit = QuantityUnits.Folded(part.Unit).Length == 0 ? bare : QuantityUnits.Find(dimension, part.Unit);
        if (unit is null)
            return Refused(notation.Text($"'{Plain(part.Unit)}' is no unit of {Named(dimension, notation)}"), dimension, notation);
        // 1048 is how many hydrometers and brewers say 1.048
        var value = dimension == Dimension.Gravity && unit.Name == "SG" && part.Number is >= 900 and <= 1300
            ? part.Number / 1000
            : part.Number;
        return QuantityRead.Of(QuantityUnits.Convert(dimension, value, unit, wanted));
    }

    /// <summary>Two or more parts, each in a smaller unit than the one before and less than one of it.</summary>
    private static QuantityRead Mixed(string text, IReadOnlyList<QuantityPart> parts, Dimension dimension,
        MeasureUnit wanted, Notation notation)
    {
        var sum = 0.0;
        var above = double.PositiveInfinity;
        foreach (var part in parts)
        {
            var unit = part.Unit.Length == 0 ? Next(dimension, above) : QuantityUnits.Find(dimension, part.Unit);
            if (unit is null || !(unit.Factor < above) || !(part.Number * unit.Factor < above) || part.Number < 0)
                return Refused(notation.Text($"{Shown(text)} does not add up to one quantity"), dimension, notation);
            sum += unit.ToCanonical(part.Number);
            above = unit.Factor;
        }

        return QuantityRead.Of(QuantityUnits.Convert(dimension, QuantityUnits.Tidy(sum),
            QuantityUnits.Of(dimension)[0], wanted));
    }

    /// <summary>The unit meant by a number without one after hours or minutes: <c>1 h 30</c>.</summary>
    private static MeasureUnit? Next(Dimension dimension, double above) => (dimension, above) switch
    {
        (Dimension.Time, 3600) => QuantityUnits.Known(dimension, "min"),
        (Dimension.Time, 60) => QuantityUnits.Known(dimension, "s"),
        _ => null,
    };

    private static string Named(Dimension dimension, Notation notation) => dimension switch
    {
        Dimension.TemperatureDifference => notation.Text("a temperature difference"),
        Dimension.HeatCapacity => notation.Text("heat capacity"),
        Dimension.HeatTransfer => notation.Text("heat transfer"),
        Dimension.PitchRate => notation.Text("a pitch rate"),
        Dimension.Number => notation.Text("a plain number"),
        _ => notation.Name(dimension.ToString().ToLowerInvariant()),
    };

    private static string Shown(string text) => $"'{Plain(text)}'";

    /// <summary>
    /// Short and free of control characters, so that a message stays one line and cannot steer a terminal.
    /// </summary>
    private static string Plain(string text)
    {
        var calm = string.Concat(text.Trim().Take(32).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
        return text.Trim().Length > 32 ? calm + "…" : calm;
    }
}
