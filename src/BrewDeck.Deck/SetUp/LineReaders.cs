using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Reads the lines typed in a set-up.</summary>
internal static class LineReaders
{
    private const double ShallowestCm = 5, DeepestCm = 500;

    public static LineReader Quantity(Dimension dimension, string unit, double least, double most, string example)
    {
        var input = new SumInput.Quantity("", "", dimension, unit, least, most, example);
        return (string text, Notation notation, out string fault) =>
            SumReader.One(input, text, notation, out fault) is { } value ? Kept(value, unit) : null;
    }

    public static LineReader Name(IReadOnlyCollection<string> taken) => (string text, Notation notation, out string fault) =>
    {
        var name = text.Trim();
        fault = name.Length is 0 or > 60 || name.Any(char.IsControl) ? notation.Text("write a name of 1 to 60 letters")
            : taken.Contains(name, StringComparer.OrdinalIgnoreCase) ? notation.Text($"'{name}' is there already; write another name") : "";
        return fault.Length == 0 ? name : null;
    };

    /// <summary>A height inside, or how much it holds.</summary>
    public static string? HeightOrVolume(string text, Notation notation, out string fault)
    {
        fault = "";
        if (QuantityReader.ReadIn(text, Dimension.Length, "cm", notation.Units == UnitSystem.Us ? "in" : "cm", notation) is { Ok: true } height)
        {
            fault = height.Value is >= ShallowestCm and <= DeepestCm ? "" : notation.Text($"{notation.Decimals(Kept(height.Value, "cm"))} is outside 5 cm to 500 cm");
            return fault.Length == 0 ? Kept(height.Value, "cm") : null;
        }
        if (QuantityReader.Read(text, Dimension.Volume, null, notation) is { Ok: true, Value: >= 1 and <= 5000 } volume)
            return Kept(volume.Value, "L");
        fault = notation.Text("write a height such as 41 cm, or how much it holds, such as 65 L");
        return null;
    }

    /// <summary>Watts, several elements of so many watts, gas, steam, or nothing.</summary>
    /// <param name="circuits">Those that its elements come on, first element first; the last one counts for all further ones.</param>
    /// <param name="mayBeNone">The vessel may be without heat.</param>
    public static LineReader Heat(IReadOnlyList<Circuit> circuits, bool mayBeNone) => (string text, Notation notation, out string fault) =>
    {
        if (HeatText.Of(text, notation) is not { } heat)
        {
            fault = notation.Text("write watts such as 5.5 kW, 2 x 3.5 kW, gas 8 kW or steam 45 kW");
            return null;
        }
        fault = heat.Count == 0 && !mayBeNone ? notation.Text("it has to boil or to heat liquor; write its watts, such as 5.5 kW") : TooMuch(heat, circuits, notation);
        return fault.Length == 0 ? heat.ToString() : null;
    };

    private static string TooMuch(HeatText heat, IReadOnlyList<Circuit> circuits, Notation notation)
    {
        if (heat.Medium is not null)
            return "";
        foreach (var circuit in circuits.Take(heat.Count).Where(c => heat.Watts > c.ContinuousW))
            return notation.Text($"{notation.Decimals(Kw(heat.Watts))} is more than circuit {circuit.Id} carries for hours, {notation.Decimals(Kw(circuit.ContinuousW))}; use a smaller element");
        return "";
    }

    internal static string Kw(double watts) => (watts / 1000).ToString("0.##", CultureInfo.InvariantCulture) + " kW";

    internal static string Kept(double value, string unit) => QuantityReader.Text(QuantityUnits.Tidy(value, 5), unit);
}
