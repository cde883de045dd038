using System.Globalization;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Says what would be right for a key.</summary>
internal static class SchemaExample
{
    public static string Of(SchemaKey key) => key switch
    {
        SchemaKey.Span span => $"write {key.Name} = \"{span.End.Example}\"",
        SchemaKey.Quantity quantity => $"write {key.Name} = \"{quantity.Example}\"",
        SchemaKey.Text text => $"write {key.Name} = \"{text.Example}\"",
        SchemaKey.Choice { Many: true } choice => $"write {key.Name} = [\"{choice.Words[0]}\"], of {Words(choice)}",
        SchemaKey.Choice choice => $"write {key.Name} = \"{choice.Words[0]}\", one of {Words(choice)}",
        SchemaKey.Texts texts => $"write {key.Name} = [\"{string.Join("\", \"", texts.Example)}\"]",
        SchemaKey.Amount amount => $"write {key.Name} = \"5 {amount.Units[0]}\", in {string.Join(", ", amount.Units)}",
        SchemaKey.Section { Many: true } section => $"begin each with [[{section.Name}]]",
        _ => $"begin it with [{key.Name}]",
    };

    public static string Words(SchemaKey.Choice key) => string.Join(", ", key.Words);

    /// <summary>Shares in per cent, as foreign documents write them.</summary>
    public static string ForeignRange(SchemaKey.Quantity key) => key.Dimension == Dimension.Fraction
        ? $"{Plain(100 * key.Least, "")} to {Written(100 * key.Most, "%")}"
        : Range(key);

    public static string Range(SchemaKey.Quantity key) =>
        $"{Plain(key.Least, key.Unit)} to {Written(key.Most, key.Unit)}";

    public static string Written(double value, string unit) =>
        QuantityReader.Text(Shown(value, unit), unit);

    /// <summary>Rounded to what a message needs.</summary>
    private static double Shown(double value, string unit) =>
        unit == "SG"
            ? Math.Round(value, 4)
            : double.Parse(value.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Plain(double value, string unit) =>
        Shown(value, unit).ToString("R", CultureInfo.InvariantCulture);
}
