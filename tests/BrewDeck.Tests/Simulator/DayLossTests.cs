using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>What counts when a debrief puts answers in an order.</summary>
public sealed class DayLossTests
{
    private static readonly DayResult Lager = new(1.049, 38, 25, 10, 20_000, 0, 0);

    [Fact]
    public void Wort_that_is_pitched_warm_is_off_the_plan()
    {
        Assert.Equal(0, DayLoss.Of(Lager, Lager, pitched: true));
        Assert.Equal(6 / DayLoss.PitchK, DayLoss.Of(Lager with { PitchC = 16 }, Lager, pitched: true), 1e-9);
        Assert.Equal(6 / DayLoss.PitchK, DayLoss.Of(Lager with { PitchC = 4 }, Lager, pitched: true), 1e-9);
        // an empty fermenter has no temperature
        Assert.Equal(DayLoss.Of(Lager, Lager, pitched: false), DayLoss.Of(Lager with { PitchC = 60 }, Lager, pitched: false), 1e-9);
    }

    /// <summary>Warmer out of the chiller is sooner done, and no better.</summary>
    [Fact]
    public void Of_a_slow_chiller_the_cure_is_better_than_warm_wort()
    {
        const long startMs = 1_780_000_000_000;
        ImmutableArray<Mishap> mishaps = MishapPlaces.Placed(Demo.Plan(), [new Mishap(MishapKind.SlowChiller, Severity.Severe)]);
        var book = new PaperBook(new BatchOpened(startMs, Demo.Plan(), "test", Rehearsed: true) { Card = new(7, mishaps) });
        var manner = new Manner { Answers = ImmutableDictionary<MishapKind, Answer>.Empty.Add(MishapKind.SlowChiller, Answer.Of(HandAct.RunWarmer)) };
        RehearsalRun.Of(book, RehearsalPlayer.For(Demo.Plan(), 7, startMs, mishaps, manner));
        var m = Assert.Single(Debriefing.Of(book.Events)!.Mishaps);

        Assert.Equal(HandAct.RunWarmer, m.Chosen!.Answer.Act);
        Assert.Equal(HandAct.FlushChiller, m.Better!.Answer.Act);
        Assert.True(m.Chosen.Gives.PitchC > m.Better.Gives.PitchC + 1);
    }
}
