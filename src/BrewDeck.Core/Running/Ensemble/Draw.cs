namespace BrewDeck.Core.Running.Ensemble;

/// <summary>Standard normal numbers, the same on every machine and in every run.</summary>
internal static class Draw
{
    /// <summary>Columns with mean 0, standard deviation 1 and no correlation at all (second-order exact sampling, Pham 2001).</summary>
    public static float[][] Whitened(int columns, int rows)
    {
        var state = 0x9E3779B97F4A7C15UL;
        var done = new double[columns][];
        for (var j = 0; j < columns; j++)
        {
            var column = new double[rows];
            for (var i = 0; i < rows; i++)
                column[i] = Normal(ref state);
            Centre(column);
            for (var k = 0; k < j; k++)
                Subtract(column, done[k], Dot(column, done[k]) / (rows - 1));
            Scale(column);
            done[j] = column;
        }
        return [.. done.Select(column => Array.ConvertAll(column, v => (float)v))];
    }

    private static void Centre(double[] column)
    {
        var mean = column.Sum() / column.Length;
        for (var i = 0; i < column.Length; i++)
            column[i] -= mean;
    }

    private static void Scale(double[] column)
    {
        var sd = Math.Sqrt(Dot(column, column) / (column.Length - 1));
        for (var i = 0; i < column.Length; i++)
            column[i] /= sd;
    }

    private static void Subtract(double[] column, double[] other, double factor)
    {
        for (var i = 0; i < column.Length; i++)
            column[i] -= factor * other[i];
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }

    /// <summary>Box and Muller on SplitMix64.</summary>
    private static double Normal(ref ulong state)
    {
        double u = Even(ref state), v = Even(ref state);
        return Math.Sqrt(-2 * Math.Log(1 - u)) * Math.Cos(2 * Math.PI * v);
    }

    private static double Even(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
