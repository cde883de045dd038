using System.Collections.Immutable;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Reckoning;

/// <summary>A sum's results and where they come from, worded.</summary>
public static class SumLines
{
    public static ImmutableArray<(string Label, string Value)> Results(Sum sum, double[] values, Notation notation) =>
        Worded(sum.Outputs, values, notation);

    /// <summary>By other published rules; empty: there are none.</summary>
    public static ImmutableArray<(string Label, string Value)> Beside(Sum sum, double[] values, Notation notation) =>
        Worded(sum.Beside, values[sum.Outputs.Length..], notation);

    public static ImmutableArray<(string Label, string Value)> About(Sum sum, Notation notation)
    {
        (string, string)[] always = [(notation.Text("formula"), notation.Text(sum.Formula)), (notation.Text("source"), notation.Text(sum.Source)), (notation.Text("valid"), notation.Text(sum.Range))];
        return sum.Caution.IsEmpty ? [.. always] : [.. always, (notation.Text("caution"), notation.Text(sum.Caution))];
    }

    private static ImmutableArray<(string Label, string Value)> Worded(ImmutableArray<SumOutput> outputs, double[] values, Notation notation) =>
        [.. outputs.Zip(values, (o, v) => (notation.Text(o.Label), Written(o, v, notation)))];

    private static string Written(SumOutput output, double value, Notation notation)
    {
        if (!double.IsFinite(value))
            return notation.Text("cannot be reached");
        var us = notation.Units == UnitSystem.Us;
        return output.Unit switch
        {
            "SG" or "" => notation.Number(value, output.Format),
            "°C" => notation.Temp(value),
            "min" => Durations.Short(60 * value),
            "L" or "kg" or "g" or "m" or "L/kg" or "L/min" when us => notation.Value(value, output.Unit),
            _ => $"{notation.Number(value, output.Format)} {notation.Name(output.Unit)}",
        };
    }
}
