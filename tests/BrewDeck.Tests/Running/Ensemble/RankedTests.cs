using BrewDeck.Core.Running.Ensemble;
using CsCheck;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>Held against the sort of the base class library.</summary>
public class RankedTests
{
    [Fact]
    public void The_value_of_a_rank_is_where_sorting_would_put_it() =>
        Gen.Select(Gen.Int[-9, 9].Select(i => i / 4f).Array[1, 60], Gen.Double[0, 1]).Sample(
            (values, share) =>
            {
                var rank = (int)(share * (values.Length - 1));
                float[] moved = [.. values], sorted = [.. values.Order()];
                Assert.Equal(sorted[rank], Ranked.At(moved, rank));
                Assert.True(moved[..rank].All(v => v <= moved[rank]) && moved[rank..].All(v => v >= moved[rank]));
                Assert.Equal(sorted, moved.Order());
            },
            iter: 2000);
}
