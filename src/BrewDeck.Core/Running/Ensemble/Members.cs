using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// Possible days, each a deviation of every source in its standard deviations. A reading moves them by the ensemble square root filter
/// (Whitaker and Hamill 2002, Monthly Weather Review 130): no random numbers, mean and covariance exactly as Kalman's, and no weights
/// that could all end on one member. Vectors of one width on every machine: the sums, and so the figures, are the same on all.
/// </summary>
internal sealed class Members
{
    public const int Count = 4096;

    /// <summary>Batches whose first members are kept: a record is folded again and again, drawing them takes some milliseconds.</summary>
    private const int KeptPriors = 16;

    private static readonly Dictionary<(int Sources, long Seed), Members> _priors = [];

    /// <summary>One row of members for each source, each a piece of its own: together they would be a large object, collected with everything else.</summary>
    private readonly float[][] _z;

    private Members(float[][] z)
    {
        _z = z;
        Mean = [.. z.Select(row => Lanes.Sum(row) / Count)];
    }

    public int Sources => _z.Length;

    public double[] Mean { get; }

    public ReadOnlySpan<float> Of(int source) => _z[source];

    /// <summary>As stated: means 0, covariance exactly the identity, for a seed always the same draw.</summary>
    public static Members Prior(int sources, long seed)
    {
        lock (_priors)
        {
            if (_priors.TryGetValue((sources, seed), out var known))
                return known;
            if (_priors.Count >= KeptPriors)
                _priors.Clear();
            return _priors[(sources, seed)] = new Members(Draw.Whitened(sources, Count, seed));
        }
    }

    /// <summary>A quantity for every member.</summary>
    public void Give(Quadratic row, Span<float> into)
    {
        into.Fill((float)row.AsStated);
        var sums = MemoryMarshal.Cast<float, Vector128<float>>(into);
        for (var j = 0; j < Sources; j++)
        {
            if (row.Slope[j] == 0 && row.Bend[j] == 0)
                continue;
            Vector128<float> slope = Vector128.Create((float)row.Slope[j]), bend = Vector128.Create((float)row.Bend[j]);
            var most = Vector128.Create((float)row.Most[j]);
            var z = MemoryMarshal.Cast<float, Vector128<float>>(Of(j));
            for (var i = 0; i < z.Length; i++)
            {
                // of numbers that are any: Min also minds what is none and the sign of zero, with fourteen instructions for one
                var off = Vector128.MinNative(z[i], most);
                sums[i] += (slope + bend * off) * off;
            }
        }
    }

    /// <summary>The members after a reading.</summary>
    /// <param name="shown">What each member would have shown against the mean member, and without the chance error.</param>
    /// <param name="off">The reading against what the mean member would have shown.</param>
    /// <param name="errorSd">Chance error of the reading.</param>
    public Members After(ReadOnlySpan<float> shown, double off, double errorSd)
    {
        var mean = Lanes.Sum(shown) / Count;
        var away = new float[Count];
        for (var i = 0; i < Count; i++)
            away[i] = shown[i] - (float)mean;
        double own = Lanes.Dot(away, away) / (Count - 1), all = own + errorSd * errorSd;
        var shrink = 1 / (1 + Math.Sqrt(errorSd * errorSd / all));
        var z = Rows();
        for (var j = 0; j < Sources; j++)
        {
            var gain = Lanes.Dot(Of(j), away) / (Count - 1) / all;
            Lanes.Move(Of(j), away, (float)(gain * (off - mean)), (float)(-shrink * gain), z[j]);
        }
        return new(z);
    }

    /// <summary>
    /// The members when a surprise has shown that stated spreads were too small: the sources that a reading tells of, each in the measure
    /// in which it does, are spread as wide as makes what was read the most likely (its own deviation then is one standard deviation).
    /// </summary>
    public Members Widened(ReadOnlySpan<float> shown, double off, double errorSd)
    {
        var (mean, own) = Spread(shown);
        var wanted = Math.Sqrt(Math.Max(0, (off - mean) * (off - mean) - errorSd * errorSd));
        if (wanted <= own || own == 0)
            return this;
        var more = Math.Min(10, wanted / own) - 1;
        var told = new double[Sources];
        for (var j = 0; j < Sources; j++)
            told[j] = Math.Abs(Correlation(Of(j), shown, mean, own));
        var z = Rows();
        for (var j = 0; j < Sources; j++)
        {
            var factor = (float)(1 + more * told[j] / told.Max());
            for (var i = 0; i < Count; i++)
                z[j][i] = (float)Mean[j] + factor * (Of(j)[i] - (float)Mean[j]);
        }
        return new(z);
    }

    /// <summary>Rows to be written: clearing them first was a twentieth of a rehearsed day.</summary>
    private float[][] Rows() => [.. _z.Select(_ => GC.AllocateUninitializedArray<float>(Count))];

    private static double Correlation(ReadOnlySpan<float> source, ReadOnlySpan<float> shown, double mean, double sd)
    {
        var (centre, own) = Spread(source);
        double sum = 0;
        for (var i = 0; i < Count; i++)
            sum += (source[i] - centre) * (shown[i] - mean);
        return own * sd > 0 ? sum / (Count - 1) / (own * sd) : 0;
    }

    /// <summary>Mean and standard deviation.</summary>
    public static (double Mean, double Sd) Spread(ReadOnlySpan<float> values)
    {
        var mean = Lanes.Sum(values) / values.Length;
        double squares = 0;
        foreach (var v in values)
            squares += (v - mean) * (v - mean);
        return (mean, Math.Sqrt(squares / (values.Length - 1)));
    }
}
