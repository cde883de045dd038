using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Takes measured values, <c>{"unit": ..., "value": ...}</c>, from a BeerJSON document.</summary>
internal sealed class BeerJsonValues(Importing import)
{
    /// <summary>Null when the part is missing.</summary>
    public double? In(SourceNode parent, string name, Dimension dimension, string unit) =>
        parent[name] is { } node ? In(node, dimension, unit) : null;

    /// <summary>A value that our own files would take, in the unit of their limits.</summary>
    public double? In(SourceNode parent, string name, SchemaKey.Quantity limits) =>
        parent[name] is { } node ? import.Held(node, node.Shown, In(node, limits.Dimension, limits.Unit), limits) : null;

    public double In(SourceNode node, Dimension dimension, string unit)
    {
        var (value, from) = Told(node);
        if (!BeerJsonUnits.Allowed[dimension].Contains(from))
            throw import.Error(node,
                $"is in '{ProfileError.OneLine(from)}'; it must be in {string.Join(", ", BeerJsonUnits.Allowed[dimension])}");
        // 1048 is met for 1.048 in published documents
        var meant = from == "sg" && value is >= 900 and <= 1300 ? value / 1000 : value;
        return BeerJsonUnits.In(dimension, meant, from, unit);
    }

    /// <summary>An amount by mass, volume or count: g, mL or each.</summary>
    public (double Number, string Unit) Amount(SourceNode node)
    {
        var (value, from) = Told(node);
        if (BeerJsonUnits.Counted.Contains(from))
            return (value, "each");
        if (BeerJsonUnits.Allowed[Dimension.Mass].Contains(from))
            return (BeerJsonUnits.In(Dimension.Mass, value, from, "g"), "g");
        return (In(node, Dimension.Volume, "mL"), "mL");
    }

    private (double Value, string Unit) Told(SourceNode node)
    {
        if (node["value"] is not { } value || node["unit"] is not { Text: { } unit })
            throw import.Error(node, "is not measured; it must be {\"unit\": ..., \"value\": ...}");
        if (!value.IsNumber || value.Number is not { } number)
            throw import.Error(value, $"is {value.Shown}; it must be a number");
        // only these two: whatever else stands beside them stays to be reported
        value.Take();
        node["unit"]!.Take();
        return (number, unit);
    }
}
