using System.Text.Json.Nodes;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>The rows of conformance.csv, through the copied schema and through the reader.</summary>
public sealed class BeerJsonConformanceTests
{
    public static TheoryData<string, string> Shipped => Theory("schema validity of a shipped example document");

    public static TheoryData<string, string> Mutated => Theory("schema validity of a mutated minimal document");

    public static TheoryData<string, string> Units => Theory("allowed unit strings");

    public static TheoryData<string, string, string> Conversions =>
        [.. BeerJsonFiles.Rows("unit conversion").Select(r => new TheoryDataRow<string, string, string>(r[1], r[2], r[3]))];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_shipped_document_is_as_valid_as_told(string inputs, string expected)
    {
        var name = inputs["document=tests/".Length..].Replace('/', '-');
        Assert.Equal(expected == "valid", BeerJsonFiles.IsValid(BeerJsonFiles.Document(name)));
    }

    /// <summary>
    /// What the schema refuses, the reader refuses or tells, except where nothing is lost: 7.5 min where the schema wants a whole
    /// number, and parts that are required but have no place in a recipe here.
    /// </summary>
    [Theory]
    [MemberData(nameof(Mutated))]
    public void A_changed_document_is_as_valid_as_told_and_nothing_is_lost_in_silence(string inputs, string expected)
    {
        var change = inputs[(inputs.IndexOf("change=", StringComparison.Ordinal) + "change=".Length)..];
        var document = JsonNode.Parse(BeerJsonFiles.Document("minimal-minimal_recipe.json"))!;
        var before = Notes(document.ToJsonString());
        BeerJsonChanges.Make(document, change);
        Assert.Equal(expected == "valid", BeerJsonFiles.IsValid(document.ToJsonString()));

        var after = Notes(document.ToJsonString());
        if (expected == "invalid" && !BeerJsonChanges.HarmlessWhenInvalid.Contains(change))
            Assert.True(after.Except(before).Any(), $"read in silence: {change}");
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void The_unit_strings_are_those_of_the_standard(string inputs, string expected)
    {
        var (quantity, units) = (inputs["quantity=".Length..], expected.Replace(" (integer value)", "", StringComparison.Ordinal).Split(", "));
        Assert.Equal(units, SchemaUnits(quantity));
        if (quantity == "unit")
            Assert.Equal(units, BeerJsonUnits.Counted);
        else if (Dimensions.TryGetValue(quantity, out var dimension))
            Assert.Equal(units, BeerJsonUnits.Allowed[dimension]);
    }

    [Theory]
    [MemberData(nameof(Conversions))]
    public void Units_are_converted_as_defined(string inputs, string expected, string unit)
    {
        var (number, from) = (inputs.Split(' ')[0], inputs.Split(' ')[1]);
        var dimension = unit switch { "C" => Dimension.Temperature, "kg" => Dimension.Mass, "l/kg" => Dimension.Thickness, _ => Dimension.Volume };
        var value = double.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
        var converted = QuantityUnits.Convert(dimension, value, QuantityUnits.Find(dimension, from)!, QuantityUnits.Find(dimension, unit)!);
        var wanted = double.Parse(expected, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(wanted, converted, 1e-6 * wanted);
    }

    [Fact]
    public void Every_row_is_checked()
    {
        var rows = new[] { Shipped.Count, Mutated.Count, Units.Count, Conversions.Count };
        TestContext.Current.SendDiagnosticMessage("BeerJSON conformance rows checked: {0}", rows.Sum());
        Assert.Equal([27, 49, 12, 12], rows);
    }

    private static readonly Dictionary<string, Dimension> Dimensions = new()
    {
        ["mass"] = Dimension.Mass,
        ["temperature"] = Dimension.Temperature,
        ["time"] = Dimension.Time,
        ["bitterness"] = Dimension.Bitterness,
        ["gravity"] = Dimension.Gravity,
        ["percent"] = Dimension.Fraction,
    };

    private static string[] SchemaUnits(string quantity)
    {
        var name = string.Concat(quantity.Split(' ').Select(w => char.ToUpperInvariant(w[0]) + w[1..])) + "UnitType";
        return [.. BeerJsonFiles.SchemaFile("measureable_units.json")["definitions"]![name]!["enum"]!.AsArray().Select(u => (string)u!)];
    }

    private static string[] Notes(string json)
    {
        try
        {
            return [.. BeerJsonReader.Read(json).Notes];
        }
        catch (ProfileException e)
        {
            return [e.Message];
        }
    }

    private static TheoryData<string, string> Theory(string quantity) =>
        [.. BeerJsonFiles.Rows(quantity).Select(r => new TheoryDataRow<string, string>(r[1], r[2]))];
}
