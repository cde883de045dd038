using BrewDeck.Core.Running.Ensemble;
using CsCheck;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>Held against the sort of the base class library.</summary>
public class RankedTests
{
    [Fact]
    public void The_values_of_ranks_are_where_sorting_would_put_them() =>
        Gen.Select(Spread.Array[1, 300], Gen.Double[0, 1].Array[3]).Sample(
            (values, shares) =>
            {
                int[] ranks = [.. shares.Select(s => (int)(s * (values.Length - 1)))];
                float[] sorted = [.. values.Order()], found = new float[ranks.Length];
                Ranked.At(values, ranks, found);
                Assert.Equal(ranks.Select(r => sorted[r]), found);
            },
            iter: 2000);

    /// <summary>Ties, a wide spread, and now and then one far away from all others.</summary>
    private static Gen<float> Spread => Gen.Frequency((6, Gen.Int[-9, 9].Select(i => i / 4f)), (6, Gen.Float[-3, 3]), (1, Gen.Float[-1e9f, 1e9f]));
}
