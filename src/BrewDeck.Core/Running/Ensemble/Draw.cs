using System.Collections.Concurrent;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>Standard normal numbers, the same for a seed on every machine and in every run.</summary>
internal static class Draw
{
    private static readonly ConcurrentDictionary<int, float[]> _quantiles = [];

    /// <summary>
    /// Columns with mean 0, standard deviation 1 and no correlation at all (second-order exact sampling, Pham 2001). Each holds the quantiles
    /// of the normal that is cut at <see cref="UsualSpreads.CutAt"/>, in an order of its own (Latin hypercube; McKay, Beckman, Conover 1979).
    /// </summary>
    /// <param name="rows">A multiple of four.</param>
    public static float[][] Whitened(int columns, int rows, long seed)
    {
        var state = (ulong)seed;
        var quantiles = _quantiles.GetOrAdd(rows, Quantiles);
        var z = new float[columns][];
        for (var j = 0; j < columns; j++)
            z[j] = Shuffled(quantiles, ref state);
        for (var k = 0; k < columns; k++)
        {
            Scale(z[k]);
            for (var j = k + 1; j < columns; j++)
                Lanes.Move(z[j], z[k], 0, (float)(-Lanes.Dot(z[j], z[k]) / (rows - 1)), z[j]);
        }
        return z;
    }

    /// <summary>Middles of shares of the cut normal that are all as likely: symmetric, so their mean is 0.</summary>
    private static float[] Quantiles(int count)
    {
        var quantiles = new float[count];
        double below = Below(-UsualSpreads.CutAt), share = (1 - 2 * below) / count, x = -UsualSpreads.CutAt;
        for (var i = 0; i < count; i++)
        {
            // Newton from the one before it: a step of a share is small, and no longer moves after some five
            var before = double.NaN;
            for (var k = 0; k < 8 && x != before; k++)
                (before, x) = (x, x - (Below(x) - below - share * (i + 0.5)) / Density(x));
            quantiles[i] = (float)x;
        }
        return quantiles;
    }

    /// <summary>Share of a normal below a value: its Taylor series (Marsaglia 2004, Journal of Statistical Software 11).</summary>
    private static double Below(double x)
    {
        double sum = x, term = x, before = 0;
        for (var i = 3; sum != before; i += 2)
        {
            before = sum;
            term *= x * x / i;
            sum += term;
        }
        return 0.5 + sum * Density(x);
    }

    private static double Density(double x) => Math.Exp(-0.5 * x * x) / Math.Sqrt(2 * Math.PI);

    private static float[] Shuffled(float[] values, ref ulong state)
    {
        var order = (float[])values.Clone();
        for (var i = order.Length - 1; i > 0; i--)
        {
            var other = (int)(Next(ref state) % (ulong)(i + 1));
            (order[i], order[other]) = (order[other], order[i]);
        }
        return order;
    }

    private static void Scale(float[] column)
    {
        var sd = (float)Math.Sqrt(Lanes.Dot(column, column) / (column.Length - 1));
        for (var i = 0; i < column.Length; i++)
            column[i] /= sd;
    }

    /// <summary>SplitMix64.</summary>
    private static ulong Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
