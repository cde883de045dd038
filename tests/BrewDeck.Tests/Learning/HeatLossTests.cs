using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;

namespace BrewDeck.Tests.Learning;

public sealed class HeatLossTests
{
    private const double LossWPerK = 5;

    /// <summary>Only a mash that nobody heats cools by the loss of its tun alone; the rehearsal's wall and bed make a tenth of difference.</summary>
    [Theory]
    [InlineData(MashHeating.HotWater, true)]
    [InlineData(MashHeating.Coil, false)]
    [InlineData(MashHeating.Direct, false)]
    public void A_rest_tells_the_loss_of_a_tun_that_is_not_kept_warm(MashHeating heating, bool tells)
    {
        var house = SimulatedHouse.Profile with
        {
            Vessels = [.. SimulatedHouse.Profile.Vessels.Select(v => v.Id == "tun" ? v with { CapacityL = 80, LossWPerK = LossWPerK } : v)],
            Coil = new Coil(0.8, 9, 20),
            Habits = SimulatedHouse.Profile.Habits with { MashHeating = heating },
        };
        var told = Lessons.EvidenceOf(SimulatedHouse.LikeProfile(1, house)).Where(e => e.Parameter == LessonParameters.HeatLoss + "tun").ToList();

        Assert.Equal(tells, told.Count > 0);
        Assert.All(told, e => Assert.InRange(e.Value, 0.9 * LossWPerK, 1.1 * LossWPerK));
    }
}
