using System.Globalization;

namespace BrewDeck.Benchmarks.Speed;

/// <summary>Times of one act, ms; said as a line of JSON with the median and the 99th percentile.</summary>
internal sealed class Samples(string name)
{
    private readonly List<double> _ms = [];

    public double Median => At(0.5);

    public void Add(TimeSpan took) => _ms.Add(took.TotalMilliseconds);

    public void Print() => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture, $"{{\"what\":\"{name}\",\"n\":{_ms.Count},\"p50_ms\":{At(0.5):0.0000},\"p99_ms\":{At(0.99):0.0000}}}"));

    private double At(double share)
    {
        var sorted = _ms.Order().ToList();
        return sorted[Math.Min(sorted.Count - 1, (int)(share * sorted.Count))];
    }
}
