using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>A rehearsed plant is drawn from the spreads that the outlook states: two tables that must say the same.</summary>
public class SpreadTests
{
    [Fact]
    public void The_simulator_draws_from_the_spreads_that_the_outlook_states()
    {
        foreach (var usual in UsualSpreads.All)
        {
            var drawn = Spreads.All.Single(s => s.Name == usual.Name);
            Assert.Equal((usual.Unit, usual.Sd), (drawn.Unit, drawn.Sd));
        }
        Assert.Equal(32, UsualSpreads.All.Length);
    }

    [Fact]
    public void The_stand_in_brewer_has_the_pace_that_the_outlook_states()
    {
        List<double> notice = [], measure = [], work = [], valve = [];
        for (var seed = 1; seed <= 2000; seed++)
        {
            var pace = new HumanPace(seed);
            notice.Add(Math.Log(pace.NoticeS()));
            measure.Add(Math.Log(pace.MeasureS()));
            work.Add(Math.Log(pace.WorkFactor()));
            valve.Add(pace.ValveErrorK());
        }
        Close(notice, Math.Log(UsualPace.NoticeS), UsualPace.NoticeLogSd);
        Close(measure, Math.Log(UsualPace.MeasureS), UsualPace.MeasureLogSd);
        Close(work, 0, UsualPace.WorkLogSd);
        Close(valve, 0, UsualPace.ValveK);
    }

    // 2,000 draws know a mean to a fortieth of their spread
    private static void Close(List<double> draws, double mean, double sd)
    {
        var seen = draws.Average();
        Assert.Equal(mean, seen, 0.1 * sd);
        Assert.Equal(sd, Math.Sqrt(draws.Average(d => (d - seen) * (d - seen))), 0.1 * sd);
    }
}
