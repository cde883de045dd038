using System.Numerics;
using System.Runtime.InteropServices;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// Possible days, each a deviation of every source in its standard deviations. A reading moves them by the ensemble square root filter
/// (Whitaker and Hamill 2002, Monthly Weather Review 130): no random numbers, mean and covariance exactly as Kalman's, and no weights
/// that could all end on one member.
/// </summary>
internal sealed class Members
{
    public const int Count = 4096;

    private static readonly Dictionary<int, Members> _priors = [];

    /// <summary>One row of members for each source.</summary>
    private readonly float[] _z;

    private Members(float[] z, int sources)
    {
        _z = z;
        Sources = sources;
        Mean = new double[sources];
        for (var j = 0; j < sources; j++)
            Mean[j] = Sum(Of(j)) / Count;
    }

    public int Sources { get; }

    public double[] Mean { get; }

    public ReadOnlySpan<float> Of(int source) => _z.AsSpan(source * Count, Count);

    /// <summary>As stated: means 0, covariance exactly the identity, always the same draw.</summary>
    public static Members Prior(int sources)
    {
        lock (_priors)
        {
            if (!_priors.TryGetValue(sources, out var prior))
                _priors[sources] = prior = new Members(Draw.Whitened(sources, Count), sources);
            return prior;
        }
    }

    /// <summary>A quantity for every member.</summary>
    public void Give(Quadratic row, Span<float> into)
    {
        into.Fill((float)row.AsStated);
        var sums = MemoryMarshal.Cast<float, Vector<float>>(into);
        for (var j = 0; j < Sources; j++)
        {
            if (row.Slope[j] == 0 && row.Bend[j] == 0)
                continue;
            Vector<float> slope = new((float)row.Slope[j]), bend = new((float)row.Bend[j]);
            var z = MemoryMarshal.Cast<float, Vector<float>>(Of(j));
            for (var i = 0; i < z.Length; i++)
                sums[i] += (slope + bend * z[i]) * z[i];
        }
    }

    /// <summary>The members after a reading.</summary>
    /// <param name="shown">What each member would have shown against the mean member, and without the chance error.</param>
    /// <param name="off">The reading against what the mean member would have shown.</param>
    /// <param name="errorSd">Chance error of the reading.</param>
    public Members After(ReadOnlySpan<float> shown, double off, double errorSd)
    {
        var mean = Sum(shown) / Count;
        var away = new float[Count];
        for (var i = 0; i < Count; i++)
            away[i] = shown[i] - (float)mean;
        double own = Dot(away, away) / (Count - 1), all = own + errorSd * errorSd;
        var shrink = 1 / (1 + Math.Sqrt(errorSd * errorSd / all));
        var z = new float[_z.Length];
        for (var j = 0; j < Sources; j++)
        {
            var gain = Dot(Of(j), away) / (Count - 1) / all;
            Move(Of(j), away, (float)(gain * (off - mean)), (float)(-shrink * gain), z.AsSpan(j * Count, Count));
        }
        return new(z, Sources);
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
        var z = new float[_z.Length];
        for (var j = 0; j < Sources; j++)
        {
            var factor = (float)(1 + more * told[j] / told.Max());
            for (var i = 0; i < Count; i++)
                z[j * Count + i] = (float)Mean[j] + factor * (Of(j)[i] - (float)Mean[j]);
        }
        return new(z, Sources);
    }

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
        var mean = Sum(values) / values.Length;
        double squares = 0;
        foreach (var v in values)
            squares += (v - mean) * (v - mean);
        return (mean, Math.Sqrt(squares / (values.Length - 1)));
    }

    private static void Move(ReadOnlySpan<float> from, ReadOnlySpan<float> away, float shift, float factor, Span<float> into)
    {
        ReadOnlySpan<Vector<float>> a = MemoryMarshal.Cast<float, Vector<float>>(from), b = MemoryMarshal.Cast<float, Vector<float>>(away);
        var c = MemoryMarshal.Cast<float, Vector<float>>(into);
        Vector<float> shifts = new(shift), factors = new(factor);
        for (var i = 0; i < a.Length; i++)
            c[i] = a[i] + shifts + factors * b[i];
    }

    /// <summary>Blocks in single precision, their sums in double: float alone loses the third digit over so many.</summary>
    private static double Dot(ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        ReadOnlySpan<Vector<float>> x = MemoryMarshal.Cast<float, Vector<float>>(a), y = MemoryMarshal.Cast<float, Vector<float>>(b);
        double sum = 0;
        for (var i = 0; i < x.Length; i += 16)
        {
            var block = Vector<float>.Zero;
            for (var k = i; k < Math.Min(x.Length, i + 16); k++)
                block += x[k] * y[k];
            sum += Vector.Sum(block);
        }
        return sum;
    }

    private static double Sum(ReadOnlySpan<float> a)
    {
        double sum = 0;
        foreach (var v in a)
            sum += v;
        return sum;
    }
}
