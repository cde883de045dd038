using BrewDeck.Core.Waters;
using CsCheck;

namespace BrewDeck.Tests.Waters;

public class BoundedLeastSquaresTests
{
    /// <summary>In hundredths: columns are then the same or clearly apart, as those of salts are.</summary>
    private static readonly Gen<double> Entry = Gen.Int[-300, 300].Select(i => i / 100.0);

    /// <summary>Rows of A (more than columns), b, and upper bounds, a third of them infinite.</summary>
    private static readonly Gen<(double[][] Rows, double[] Wanted, double[] Upper)> Problems =
        from columns in Gen.Int[1, 6]
        from extra in Gen.Int[1, 4]
        from rows in Entry.Array[columns].Array[columns + extra]
        from wanted in Entry.Array[columns + extra]
        from upper in Gen.OneOf(Gen.Double[0, 2], Gen.Double[0, 0.3], Gen.Const(double.PositiveInfinity)).Array[columns]
        select (rows, wanted, upper);

    /// <summary>Karush-Kuhn-Tucker: within bounds, level where free, uphill where a bound holds.</summary>
    [Fact]
    public void The_optimality_conditions_hold() => Problems.Sample(p =>
    {
        var x = new BoundedLeastSquares(p.Rows, p.Wanted).Solve(new double[p.Upper.Length], p.Upper);
        for (var i = 0; i < x.Length; i++)
        {
            Assert.InRange(x[i], 0, p.Upper[i]);
            var slope = Slope(p.Rows, p.Wanted, x, i);
            if (x[i] > 0)
                Assert.True(slope > -1e-6, $"x{i} = {x[i]} could be less: slope {slope}");
            if (x[i] < p.Upper[i])
                Assert.True(slope < 1e-6, $"x{i} = {x[i]} could be more: slope {slope}");
        }
    }, iter: 3000);

    /// <summary>Every choice of free unknowns is tried by elimination; none gives a smaller sum of squares.</summary>
    [Fact]
    public void No_other_choice_of_active_bounds_is_better() => Problems.Sample(p =>
    {
        double[] zero = new double[p.Upper.Length];
        var x = new BoundedLeastSquares(p.Rows, p.Wanted).Solve(zero, [.. zero.Select(_ => double.PositiveInfinity)]);
        Assert.Equal(BestOfAllSubsets(p.Rows, p.Wanted), Squares(p.Rows, p.Wanted, x), 1e-7);
    }, iter: 500);

    [Fact]
    public void A_bound_that_cuts_the_free_optimum_moves_the_others()
    {
        // x + y near 3 and x - y near 1: (2, 1) when free. With x at most 1 the best y is 1, by hand: (1+y-3)² + (1-y-1)² is least there.
        var squares = new BoundedLeastSquares([[1, 1], [1, -1]], [3, 1]);
        Assert.Equal([2, 1], squares.Solve([0, 0], [9, 9]).Select(v => Math.Round(v, 9)));
        Assert.Equal([1, 1], squares.Solve([0, 0], [1, 9]).Select(v => Math.Round(v, 9)));
    }

    [Fact]
    public void A_lower_bound_is_kept()
    {
        // -x + y near -2: without bounds y = x - 2; with y at least 1 and x at most 2 the best is (2, 1), missing by 1
        var x = new BoundedLeastSquares([[-1, 1], [0.001, 0], [0, 0.001]], [-2, 0, 0]).Solve([0, 1], [2, 5]);
        Assert.Equal([2, 1], x.Select(v => Math.Round(v, 6)));
    }

    [Fact]
    public void Columns_that_depend_on_each_other_still_give_the_least_sum()
    {
        double[][] rows = [[1, 2, 3], [1, 2, 3], [0, 0, 1]];
        double[] wanted = [6, 6, 1];
        var x = new BoundedLeastSquares(rows, wanted).Solve([0, 0, 0], [9, 9, 9]);
        Assert.Equal(0, Squares(rows, wanted, x), 1e-9);
    }

    private static double Slope(double[][] rows, double[] wanted, double[] x, int i) =>
        rows.Zip(wanted, (r, b) => r[i] * (b - r.Zip(x, (a, v) => a * v).Sum())).Sum();

    private static double Squares(double[][] rows, double[] wanted, double[] x) =>
        rows.Zip(wanted, (r, b) => Math.Pow(b - r.Zip(x, (a, v) => a * v).Sum(), 2)).Sum();

    private static double BestOfAllSubsets(double[][] rows, double[] wanted)
    {
        var n = rows[0].Length;
        var best = double.PositiveInfinity;
        for (var set = 0; set < 1 << n; set++)
        {
            var at = Enumerable.Range(0, n).Where(i => (set >> i & 1) == 1).ToArray();
            var x = new double[n];
            var solved = Eliminated(rows, wanted, at);
            for (var k = 0; k < at.Length; k++)
                x[at[k]] = solved[k];
            if (x.All(v => v >= 0))
                best = Math.Min(best, Squares(rows, wanted, x));
        }
        return best;
    }

    /// <summary>Normal equations by Gauss-Jordan with pivoting: another way than the code under test.</summary>
    private static double[] Eliminated(double[][] rows, double[] wanted, int[] at)
    {
        var m = at.Length;
        var t = at.Select(i => at.Select(j => rows.Sum(r => r[i] * r[j])).Append(rows.Zip(wanted, (r, b) => r[i] * b).Sum()).ToArray()).ToArray();
        for (var c = 0; c < m; c++)
        {
            var pivot = Enumerable.Range(c, m - c).MaxBy(r => Math.Abs(t[r][c]));
            (t[c], t[pivot]) = (t[pivot], t[c]);
            for (var r = 0; r < m; r++)
            {
                if (r == c)
                    continue;
                var f = t[r][c] / t[c][c];
                for (var k = c; k <= m; k++)
                    t[r][k] -= f * t[c][k];
            }
        }
        return [.. t.Select((row, i) => row[m] / row[i])];
    }
}
