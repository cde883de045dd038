using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;
using CsCheck;

namespace BrewDeck.Tests.Waters;

public class BlendTests
{
    private static readonly BrewingSalt[] Three = [BrewingSalt.Gypsum, BrewingSalt.CalciumChlorideDihydrate, BrewingSalt.EpsomSalt];

    private const int MostSteps = 14;

    /// <summary>In 5 L a tenth of a gram is some 10 mg/L: rounding each amount by itself goes wrong here.</summary>
    private static readonly Gen<Blend> Coarse =
        from calcium in Gen.Double[20, 150]
        from chloride in Gen.Double[20, 150]
        from sulphate in Gen.Double[20, 150]
        from magnesium in Gen.Double[0, 20]
        from wide in Gen.Double[0, 15]
        select new Blend(
            new WaterIons(10, 2, 5, 8, 12, 40),
            [.. Three.Select(s => new BlendPart(WaterIons.Of(s, 0.1 / 5), MostSteps, 0.4))],
            [
                new(i => i.CalciumMgPerL, new(calcium, calcium + wide)),
                new(i => i.ChlorideMgPerL, new(chloride, chloride + wide)),
                new(i => i.SulphateMgPerL, new(sulphate, sulphate + wide)),
                new(i => i.MagnesiumMgPerL, new(double.NegativeInfinity, magnesium)),
            ]);

    [Fact]
    public void Whole_steps_are_the_best_of_all_there_are() => Coarse.Sample(blend =>
    {
        var found = blend.Cost(blend.Whole());
        var best = double.PositiveInfinity;
        for (var a = 0; a <= MostSteps; a++)
            for (var b = 0; b <= MostSteps; b++)
                for (var c = 0; c <= MostSteps; c++)
                    best = Math.Min(best, blend.Cost([a, b, c]));
        Assert.InRange(found, best, best + 0.0101);
    }, iter: 300);

    /// <summary>No rounding can beat the solution before rounding, and no neighbour the one after.</summary>
    [Fact]
    public void Whole_steps_lie_between_the_exact_solution_and_their_neighbours() => Coarse.Sample(blend =>
    {
        var whole = blend.Whole();
        var cost = blend.Cost(whole);
        Assert.True(blend.Cost(blend.Exact()) <= cost + 1e-6);
        foreach (var i in Enumerable.Range(0, whole.Length))
            foreach (var by in (double[])[-1, 1])
            {
                var neighbour = (double[])whole.Clone();
                neighbour[i] += by;
                Assert.True(neighbour[i] < 0 || neighbour[i] > MostSteps || blend.Cost(neighbour) >= cost - 0.0101);
            }
    }, iter: 300);

    [Fact]
    public void Rounding_each_amount_by_itself_is_often_worse()
    {
        var worse = 0;
        Coarse.Sample(blend =>
        {
            double[] nearest = [.. blend.Exact().Select(s => Math.Round(s))];
            if (blend.Cost(nearest) > blend.Cost(blend.Whole()) + 0.02)
                Interlocked.Increment(ref worse);
        }, iter: 300);
        Assert.True(worse > 30, $"{worse} of 300: then the search would be idle");
    }

    [Fact]
    public void The_search_stays_small()
    {
        var most = 0;
        Coarse.Sample(blend =>
        {
            blend.Whole();
            if (blend.Nodes > Volatile.Read(ref most))
                Volatile.Write(ref most, blend.Nodes);
        }, iter: 300);
        TestContext.Current.TestOutputHelper?.WriteLine($"most nodes {most}");
        Assert.InRange(most, 1, 300);
    }
}
