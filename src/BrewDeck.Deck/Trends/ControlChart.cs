using System.Collections.Immutable;

namespace BrewDeck.Deck.Trends;

/// <param name="Batch">Number of the batch.</param>
public readonly record struct TrendPoint(int Batch, double Value);

/// <summary>
/// A chart of individuals after Shewhart: centre and limits from the values themselves, and the batches that something special must have
/// happened to (Wheeler and Chambers, Understanding Statistical Process Control, 2nd ed. 1992).
/// </summary>
/// <param name="Outside">Beyond a limit.</param>
/// <param name="Shifted">The last of each eight or more in a row on one side of the centre.</param>
public sealed record ControlChart(double Centre, double Lower, double Upper, ImmutableArray<TrendPoint> Outside, ImmutableArray<TrendPoint> Shifted)
{
    /// <summary>3 / 1.128: three standard deviations by the mean of the moving ranges of two.</summary>
    private const double LimitPerMeanRange = 3 / 1.128;

    private const int Run = 8;

    /// <summary>Number of values.</summary>
    public int Count { get; init; }

    /// <summary>The centre is farther from nought than chance brings the mean of so many values: three of its standard deviations.</summary>
    public bool IsOffNought => Math.Abs(Centre) * Math.Sqrt(Count) > Upper - Centre;

    /// <summary>Fewer values have no limits worth drawing: common practice.</summary>
    public const int Fewest = 6;

    /// <param name="points">In the order of time.</param>
    /// <returns>Null for fewer than <see cref="Fewest"/>.</returns>
    public static ControlChart? Of(IReadOnlyList<TrendPoint> points)
    {
        if (points.Count < Fewest)
            return null;
        var centre = points.Average(p => p.Value);
        var reach = LimitPerMeanRange * points.Zip(points.Skip(1), (a, b) => Math.Abs(b.Value - a.Value)).Average();
        return new(
            centre, centre - reach, centre + reach,
            [.. points.Where(p => Math.Abs(p.Value - centre) > reach)],
            [.. Shifts(points, centre)])
        {
            Count = points.Count,
        };
    }

    private static IEnumerable<TrendPoint> Shifts(IReadOnlyList<TrendPoint> points, double centre)
    {
        var run = 0;
        for (var i = 0; i < points.Count; i++)
        {
            var side = Math.Sign(points[i].Value - centre);
            run = side != 0 && i > 0 && side == Math.Sign(points[i - 1].Value - centre) ? run + 1 : 1;
            var ends = i == points.Count - 1 || Math.Sign(points[i + 1].Value - centre) != side;
            if (run >= Run && ends)
                yield return points[i];
        }
    }
}
