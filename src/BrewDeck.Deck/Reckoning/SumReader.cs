using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Reckoning;

/// <summary>What became of the texts given for a sum.</summary>
/// <param name="Fault">One line: which input, what is wrong, what would be right; null when all is well.</param>
/// <param name="Input">Name of the input at fault.</param>
public sealed record SumRead(SumValues? Values, string? Fault, string Input = "");

/// <summary>Reads the inputs of a sum as people write quantities.</summary>
public static class SumReader
{
    /// <param name="texts">By input name; missing or blank: the default.</param>
    public static SumRead Read(Sum sum, IReadOnlyDictionary<string, string> texts, Notation notation)
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var input in sum.Inputs)
        {
            var given = texts.GetValueOrDefault(input.Name);
            if (One(input, given, notation, out var fault) is not { } value)
                return new(null, fault, input.Name);
            values[input.Name] = value;
        }
        foreach (var (lower, upper) in sum.Orders)
        {
            if (values[lower] > values[upper])
                return new(null, Reversed(Of(sum, lower), values[lower], Of(sum, upper), values[upper], notation), lower);
        }
        var all = new SumValues(values);
        return sum.Doubt(all, notation) is { } doubt ? new(null, doubt.Why, doubt.Key) : new(all, null);
    }

    private static SumInput.Quantity Of(Sum sum, string name) => sum.Inputs.OfType<SumInput.Quantity>().First(i => i.Name == name);

    private static string Reversed(SumInput.Quantity lower, double low, SumInput.Quantity upper, double high, Notation notation) =>
        notation.Text($"{Written(low, lower, notation)} is above {Written(high, upper, notation)} ({notation.Text(upper.Label)}); write that or less");

    /// <summary>One input; null when it cannot be taken, with the reason.</summary>
    public static double? One(SumInput input, string? given, Notation notation, out string fault)
    {
        fault = "";
        var fromDefault = string.IsNullOrWhiteSpace(given);
        if ((fromDefault ? input.Default : given) is not { } text)
        {
            fault = Missing(input, notation);
            return null;
        }
        return input switch
        {
            SumInput.Choice choice => Chosen(choice, text, notation, out fault),
            SumInput.Quantity quantity => Measured(quantity, text, fromDefault ? Notation.Metric : notation, out fault),
            _ => null,
        };
    }

    /// <summary>What is missing, and what would be right.</summary>
    private static string Missing(SumInput input, Notation notation)
    {
        var example = notation.Decimals(input.Example);
        var right = input is SumInput.Quantity quantity ? notation.Text($"{Range(quantity, notation)}, such as {example}") : example;
        return input.Label.IsEmpty ? notation.Text($"nothing is typed; write {right}") : notation.Text($"{notation.Text(input.Label)} is missing; write {right}");
    }

    private static double? Chosen(SumInput.Choice choice, string text, Notation notation, out string fault)
    {
        var word = text.Trim();
        for (var i = 0; i < choice.Options.Length; i++)
        {
            fault = "";
            if (choice.Options[i].Equals(word, StringComparison.OrdinalIgnoreCase))
                return i;
        }
        fault = notation.Text($"'{OneLine(word)}' is not known; write {string.Join(", ", choice.Options)}");
        return null;
    }

    private static double? Measured(SumInput.Quantity input, string text, Notation notation, out string fault)
    {
        var read = input.Dimension == Dimension.Number
            ? QuantityReader.Read(Bare(text, input.Unit), Dimension.Number, null, notation)
            : QuantityReader.ReadIn(text, input.Dimension, input.Unit, BareUnit(input, notation.Units), notation);
        fault = read.Why is not null && input is { Dimension: Dimension.Number, Unit.Length: > 0 } ? notation.Text($"'{OneLine(text.Trim())}' is no number in {input.Unit}; write {Range(input, notation)}, such as {notation.Decimals(input.Example)}")
            : read.Why ?? (MeantFahrenheit(input, text, notation)
            ? notation.Text($"{Written(read.Value, input, notation)} is outside {Range(input, notation)}; did you mean {text.Trim()}f?")
            : notation.Text($"{Written(read.Value, input, notation)} is outside {Range(input, notation)}"));
        return read.Ok && read.Value >= input.Least && read.Value <= input.Most ? read.Value : null;
    }

    /// <summary>A bare number that is out of range in °C and would not be in °F.</summary>
    private static bool MeantFahrenheit(SumInput.Quantity input, string text, Notation notation) =>
        input.Dimension == Dimension.Temperature && notation.Units == UnitSystem.Metric && !text.Any(char.IsLetter)
        && QuantityReader.ReadIn(text.Trim() + "f", input.Dimension, input.Unit, null, notation) is { Ok: true, Value: var celsius }
        && celsius >= input.Least && celsius <= input.Most;

    /// <summary>A plain number may carry the unit that it is asked in, such as °Bx or mg/L.</summary>
    private static string Bare(string text, string unit)
    {
        var trimmed = text.Trim();
        foreach (var suffix in (string[])[unit, unit.TrimStart('°')])
        {
            if (suffix.Length > 0 && trimmed.EndsWith(suffix, StringComparison.OrdinalIgnoreCase))
                return trimmed[..^suffix.Length];
        }
        return trimmed;
    }

    private static string BareUnit(SumInput.Quantity input, UnitSystem units) => units == UnitSystem.Metric ? input.Unit : input.Unit switch
    {
        "L" => "gal",
        "kg" => "lb",
        "g" => "oz",
        "°C" => "°F",
        "m" => "ft",
        "mm" or "cm" => "in",
        "L/min" => "gal/min",
        "bar" => "psi",
        _ => input.Unit,
    };

    /// <summary>What may be given, in words.</summary>
    public static string Range(SumInput.Quantity input, Notation notation) => notation.Text($"{Written(input.Least, input, notation)} to {Written(input.Most, input, notation)}");

    /// <summary>In the brewer's own unit, with no more decimals than are typed.</summary>
    private static string Written(double value, SumInput.Quantity input, Notation notation)
    {
        var unit = input.Unit == "g" && value >= 1000 && notation.Units == UnitSystem.Metric ? "kg" : BareUnit(input, notation.Units);
        var shown = unit == input.Unit ? value : unit == "°F" ? notation.InTempUnit(value) : QuantityUnits.Convert(input.Dimension, value, input.Unit, unit);
        var number = notation.Number(shown, unit == "SG" ? "0.000#" : Math.Abs(shown) >= 1000 ? "0" : "0.##");
        return unit is "" or "SG" or "pH" ? number : $"{number} {unit}";
    }

    private static string OneLine(string text) =>
        string.Concat(text.Take(40).Select(c => char.IsControl(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format ? ' ' : c));
}
