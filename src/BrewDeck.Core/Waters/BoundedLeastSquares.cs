namespace BrewDeck.Core.Waters;

/// <summary>
/// Least squares within bounds: minimises |A x - b|² for lower ≤ x ≤ upper. Active sets after Lawson and Hanson, Solving Least Squares
/// Problems (1974), with upper bounds after Stark and Parker (1995); with lower 0 and no upper it is their NNLS. For a few tens of
/// unknowns whose columns are not alike to within a millionth (normal equations, solved by Cholesky's square roots).
/// </summary>
internal sealed class BoundedLeastSquares
{
    private const double Tiny = 1e-11;

    private readonly int _n;
    private readonly double[,] _gram;
    private readonly double[] _right;

    /// <param name="rows">Of A, each with one number for each unknown.</param>
    public BoundedLeastSquares(IReadOnlyList<double[]> rows, IReadOnlyList<double> wanted)
    {
        _n = rows.Count == 0 ? 0 : rows[0].Length;
        (_gram, _right) = (new double[_n, _n], new double[_n]);
        for (var r = 0; r < rows.Count; r++)
        {
            for (var i = 0; i < _n; i++)
            {
                _right[i] += rows[r][i] * wanted[r];
                for (var j = 0; j < _n; j++)
                    _gram[i, j] += rows[r][i] * rows[r][j];
            }
        }
    }

    /// <param name="lower">Finite.</param>
    /// <param name="upper">Not below <paramref name="lower"/>; may be infinite.</param>
    public double[] Solve(double[] lower, double[] upper)
    {
        var x = (double[])lower.Clone();
        var free = new bool[_n];
        // each turn lowers the sum of squares, so no set of free unknowns comes twice; the bound is for rounding errors
        for (var turn = 0; turn < 20 + 10 * _n; turn++)
        {
            var next = MostPromising(x, free, lower, upper);
            if (next < 0)
                break;
            free[next] = true;
            while (!StepWithin(x, free, lower, upper))
            {
            }
        }
        return x;
    }

    /// <summary>The unknown at a bound whose release lowers the sum most steeply; -1: none does, the optimum.</summary>
    private int MostPromising(double[] x, bool[] free, double[] lower, double[] upper)
    {
        var (best, steepest) = (-1, 0.0);
        for (var i = 0; i < _n; i++)
        {
            if (free[i] || lower[i] >= upper[i])
                continue;
            var (slope, size) = Slope(i, x);
            var towards = x[i] <= lower[i] ? slope : -slope;
            var scaled = towards / Math.Sqrt(_gram[i, i] + double.Epsilon);
            if (towards > Tiny * size && scaled > steepest)
                (best, steepest) = (i, scaled);
        }
        return best;
    }

    private (double Slope, double Size) Slope(int i, double[] x)
    {
        var (slope, size) = (_right[i], Math.Abs(_right[i]));
        for (var j = 0; j < _n; j++)
        {
            slope -= _gram[i, j] * x[j];
            size += Math.Abs(_gram[i, j] * x[j]);
        }
        return (slope, size);
    }

    /// <summary>Goes towards the optimum of the free unknowns, as far as all stay in bounds; those that meet one are fixed there.</summary>
    /// <returns>True when it was reached.</returns>
    private bool StepWithin(double[] x, bool[] free, double[] lower, double[] upper)
    {
        var wanted = OptimumOfFree(x, free);
        var share = 1.0;
        for (var i = 0; i < _n; i++)
        {
            if (free[i] && (wanted[i] < lower[i] || wanted[i] > upper[i]))
                share = Math.Min(share, Math.Max(0, ((wanted[i] < lower[i] ? lower[i] : upper[i]) - x[i]) / (wanted[i] - x[i])));
        }
        var reached = true;
        for (var i = 0; i < _n; i++)
        {
            if (!free[i])
                continue;
            var bound = wanted[i] < lower[i] ? lower[i] : wanted[i] > upper[i] ? upper[i] : double.NaN;
            var meets = !double.IsNaN(bound) && (bound - x[i]) / (wanted[i] - x[i]) <= share;
            x[i] = meets ? bound : Math.Clamp(x[i] + share * (wanted[i] - x[i]), lower[i], upper[i]);
            free[i] = !meets;
            reached &= !meets;
        }
        return reached;
    }

    private double[] OptimumOfFree(double[] x, bool[] free)
    {
        var at = Enumerable.Range(0, _n).Where(i => free[i]).ToArray();
        var right = new double[at.Length];
        for (var k = 0; k < at.Length; k++)
        {
            right[k] = _right[at[k]];
            for (var j = 0; j < _n; j++)
                right[k] -= free[j] ? 0 : _gram[at[k], j] * x[j];
        }
        Cholesky(at, right);
        var wanted = (double[])x.Clone();
        for (var k = 0; k < at.Length; k++)
            wanted[at[k]] = right[k];
        return wanted;
    }

    /// <summary>Solves in place with the rows and columns of the normal equations that <paramref name="at"/> names.</summary>
    private void Cholesky(int[] at, double[] right)
    {
        var m = at.Length;
        var root = new double[m, m];
        for (var i = 0; i < m; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = _gram[at[i], at[j]];
                for (var k = 0; k < j; k++)
                    rest -= root[i, k] * root[j, k];
                // a column that depends on the others gets a hair's breadth of its own
                root[i, j] = i == j ? Math.Sqrt(Math.Max(rest, Tiny * _gram[at[i], at[i]] + double.Epsilon)) : rest / root[j, j];
            }
        }
        for (var i = 0; i < m; i++)
        {
            for (var k = 0; k < i; k++)
                right[i] -= root[i, k] * right[k];
            right[i] /= root[i, i];
        }
        for (var i = m - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < m; k++)
                right[i] -= root[k, i] * right[k];
            right[i] /= root[i, i];
        }
    }
}
