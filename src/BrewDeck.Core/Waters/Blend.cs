namespace BrewDeck.Core.Waters;

/// <summary>Something that goes into the water in whole steps.</summary>
/// <param name="PerStep">What one step does to the ions.</param>
/// <param name="MostSteps">Whole, or infinite.</param>
/// <param name="Reluctance">What a step counts as if it were missed by, so that of two ways with one result the smaller is taken.</param>
internal sealed record BlendPart(WaterIons PerStep, double MostSteps, double Reluctance);

/// <summary>
/// Finds the whole steps of each part that miss the aims least: bounded least squares, then branch and bound over what is not whole,
/// so that a scale's resolution is met together and not each amount by itself.
/// </summary>
internal sealed class Blend
{
    /// <summary>Sums of squares nearer than this, (mg/L)², are taken as one: nobody can taste or measure it.</summary>
    private const double Alike = 0.01;

    /// <summary>A random water in some hundred thousand needed more than 3,000 (see the tests); the best found so far is returned then.</summary>
    internal const int MostNodes = 20_000;

    private readonly WaterIons _start;
    private readonly IReadOnlyList<BlendPart> _parts;
    private readonly IReadOnlyList<WaterAim> _aims;
    private readonly BoundedLeastSquares _squares;
    private double[] _best;
    private double _bestCost;

    public Blend(WaterIons start, IReadOnlyList<BlendPart> parts, IReadOnlyList<WaterAim> aims)
    {
        (_start, _parts, _aims) = (start, parts, aims);
        _squares = Squares();
        _best = new double[parts.Count];
        _bestCost = Cost(_best);
    }

    public int Nodes { get; private set; }

    public WaterIons Ions(ReadOnlySpan<double> steps)
    {
        var ions = _start;
        for (var i = 0; i < _parts.Count; i++)
            ions += steps[i] * _parts[i].PerStep;
        return ions;
    }

    /// <summary>Sum of squares: what is missed of the aims, and the reluctance.</summary>
    public double Cost(ReadOnlySpan<double> steps)
    {
        var ions = Ions(steps);
        var sum = 0.0;
        foreach (var aim in _aims)
            sum += Math.Pow(aim.Miss(ions), 2);
        for (var i = 0; i < _parts.Count; i++)
            sum += Math.Pow(steps[i] * _parts[i].Reluctance, 2);
        return sum;
    }

    /// <summary>Steps of each part, not rounded.</summary>
    public double[] Exact() => Relaxed(new double[_parts.Count], Most());

    /// <summary>Whole steps of each part.</summary>
    /// <param name="worthwhile">A part that lowers the sum of squares by less is left out, (mg/L)².</param>
    public double[] Whole(double worthwhile = 0)
    {
        Branch(new double[_parts.Count], Pared(worthwhile));
        return _best;
    }

    /// <summary>Most of each part; 0 for those that are not worth weighing, the least useful first.</summary>
    private double[] Pared(double worthwhile)
    {
        var most = Most();
        var zero = new double[most.Length];
        var steps = Relaxed(zero, most);
        var budget = Cost(steps) + worthwhile;
        while (true)
        {
            var (least, cheapest) = (-1, budget);
            for (var i = 0; i < most.Length; i++)
            {
                if (steps[i] <= 0)
                    continue;
                double[] without = [.. most[..i], 0, .. most[(i + 1)..]];
                var cost = Cost(Relaxed(zero, without));
                if (cost < cheapest)
                    (least, cheapest) = (i, cost);
            }
            if (least < 0)
                return most;
            most[least] = 0;
            steps = Relaxed(zero, most);
        }
    }

    private double[] Most() => [.. _parts.Select(p => p.MostSteps)];

    private void Branch(double[] lower, double[] upper)
    {
        if (++Nodes > MostNodes)
            return;
        var steps = Relaxed(lower, upper);
        if (Cost(steps) >= _bestCost - Alike)
            return;
        Try(steps, lower, upper);
        var part = Coarsest(steps);
        if (part < 0)
            return;
        var below = Math.Floor(steps[part]);
        var left = (double[])upper.Clone();
        var right = (double[])lower.Clone();
        (left[part], right[part]) = (below, below + 1);
        if (steps[part] - below < 0.5)
        {
            Branch(lower, left);
            Branch(right, upper);
        }
        else
        {
            Branch(right, upper);
            Branch(lower, left);
        }
    }

    /// <summary>The nearest whole steps, moved one by one while that helps.</summary>
    private void Try(double[] steps, double[] lower, double[] upper)
    {
        var whole = new double[steps.Length];
        for (var i = 0; i < steps.Length; i++)
            whole[i] = Math.Clamp(Math.Round(steps[i]), lower[i], upper[i]);
        var cost = Cost(whole);
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < whole.Length; i++)
                better |= Move(whole, i, 1, ref cost) || Move(whole, i, -1, ref cost);
        }
        if (cost < _bestCost)
            (_best, _bestCost) = (whole, cost);
    }

    private bool Move(double[] whole, int part, double by, ref double cost)
    {
        if (whole[part] + by < 0 || whole[part] + by > _parts[part].MostSteps)
            return false;
        whole[part] += by;
        var moved = Cost(whole);
        if (moved < cost - 1e-9)
        {
            cost = moved;
            return true;
        }
        whole[part] -= by;
        return false;
    }

    /// <summary>Of the parts that are not whole the one with the largest step; -1: all are.</summary>
    private int Coarsest(double[] steps)
    {
        var (found, largest) = (-1, 0.0);
        for (var i = 0; i < steps.Length; i++)
        {
            var size = Math.Abs(steps[i] - Math.Round(steps[i])) > 1e-7 ? _aims.Sum(a => Math.Pow(a.Weight * a.Of(_parts[i].PerStep), 2)) : 0;
            if (size > largest)
                (found, largest) = (i, size);
        }
        return found;
    }

    private double[] Relaxed(double[] lower, double[] upper)
    {
        var room = new double[_aims.Count];
        for (var k = 0; k < room.Length; k++)
            room[k] = _aims[k].Wanted.Most - _aims[k].Wanted.Least;
        return _squares.Solve([.. lower, .. new double[room.Length]], [.. upper, .. room])[.._parts.Count];
    }

    /// <summary>One row for each aim, with an unknown of its own for the place in its band, and one for each part's reluctance.</summary>
    private BoundedLeastSquares Squares()
    {
        var rows = new List<double[]>();
        var wanted = new List<double>();
        for (var k = 0; k < _aims.Count; k++)
        {
            var aim = _aims[k];
            var fromMost = double.IsFinite(aim.Wanted.Most);
            var row = new double[_parts.Count + _aims.Count];
            for (var i = 0; i < _parts.Count; i++)
                row[i] = aim.Weight * aim.Of(_parts[i].PerStep);
            row[_parts.Count + k] = fromMost ? aim.Weight : -aim.Weight;
            rows.Add(row);
            wanted.Add(aim.Weight * ((fromMost ? aim.Wanted.Most : aim.Wanted.Least) - aim.Of(_start)));
        }
        for (var i = 0; i < _parts.Count; i++)
        {
            var row = new double[_parts.Count + _aims.Count];
            row[i] = _parts[i].Reluctance;
            rows.Add(row);
            wanted.Add(0);
        }
        return new(rows, wanted);
    }
}
