using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Probes;

/// <summary>
/// Tells a loose wire from a vessel that heats: the spread is measured about the straight line through the values, so a
/// steady rise is no noise.
/// </summary>
internal static class ProbeNoise
{
    /// <param name="values">When, and what; two or more, otherwise there is nothing to tell by.</param>
    public static bool IsNoisy(ReadingKind kind, IReadOnlyList<(TimeSpan At, double Value)> values) => !(Spread(values) <= Widest(kind));

    // several times what a sound probe does in a stirred vessel, much less than a loose wire or bubbles over a level tube
    private static double Widest(ReadingKind kind) => kind switch
    {
        ReadingKind.Temperature => 2,
        ReadingKind.Volume => 2,
        ReadingKind.Gravity => 0.004,
        ReadingKind.Ph => 0.2,
        _ => double.PositiveInfinity,
    };

    private static double Spread(IReadOnlyList<(TimeSpan At, double Value)> values)
    {
        if (values.Count < 2)
            return 0;
        var slope = values.Count == 2 ? 0 : Slope(values); // any two values lie on a line
        var off = values.Select(v => v.Value - (slope * v.At.TotalSeconds)).ToList();
        return off.Max() - off.Min();
    }

    private static double Slope(IReadOnlyList<(TimeSpan At, double Value)> values)
    {
        var (meanS, mean) = (values.Average(v => v.At.TotalSeconds), values.Average(v => v.Value));
        var square = values.Sum(v => Math.Pow(v.At.TotalSeconds - meanS, 2));
        return square > 0 ? values.Sum(v => (v.At.TotalSeconds - meanS) * (v.Value - mean)) / square : 0;
    }
}
