using BrewDeck.Core.Learning;

namespace BrewDeck.Tests.Learning;

/// <summary>
/// Worked by hand. 40 kg of water (4.186 kJ/(kg K)) in a vessel of 5.5 kJ/K: 172.94 kJ/K. Room 20 °C.
/// Stood from 80 to 77 °C in an hour: 172940 / 3600 x ln(60 / 57) = 48.039 x 0.051293 = 2.464 W/K.
/// Warmed from 20 to 70 °C in half an hour: 172940 x 50 / 1800 = 4803.9 W without a loss; with it x = 2.464 x 1800 / 172940 = 0.025647,
/// (1 - e^-x) / x = 1 - x/2 + x²/6 = 0.98729, so 4803.9 / 0.98729 = 4865.7 W.
/// </summary>
public class WaterTrialTests
{
    private const double JPerK = 40 * 4186 + 5500;

    [Fact]
    public void A_stand_with_the_heat_off_gives_the_loss() =>
        Assert.Equal(2.464, WaterTrials.LossWPerK(JPerK, 20, 80, 77, 3600), 1e-3);

    [Fact]
    public void A_timed_heat_up_gives_the_net_power()
    {
        Assert.Equal(4803.9, WaterTrials.NetWatts(JPerK, 0, 20, 20, 70, 1800), 0.1);
        Assert.Equal(4865.7, WaterTrials.NetWatts(JPerK, 2.464, 20, 20, 70, 1800), 0.5);
    }

    [Fact]
    public void What_did_not_cool_or_cooled_below_the_room_gives_no_loss()
    {
        Assert.True(double.IsNaN(WaterTrials.LossWPerK(JPerK, 20, 77, 80, 3600)));
        Assert.True(double.IsNaN(WaterTrials.LossWPerK(JPerK, 20, 80, 19, 3600)));
    }

    /// <summary>45 cm across: 0.15904 m², 2.5 cm less is 3.976 L; at 100 °C 0.95835 kg/L: 3.810 kg in 50 min, 4.573 kg/h.</summary>
    [Fact]
    public void A_timed_boil_gives_the_evaporation() =>
        Assert.Equal(4.573, WaterTrials.EvaporationKgPerH(0.45, 0.300, 0.275, 100, 3000), 2e-3);

    /// <summary>5.00 kg in, 3.80 kg out: 1.20 kg at 0.99821 kg/L.</summary>
    [Fact]
    public void Water_weighed_in_and_out_gives_the_dead_space() =>
        Assert.Equal(1.202, WaterTrials.DeadSpaceL(5, 3.8, 20), 1e-3);
}
