using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>Crashes, full disks, clocks and the bell.</summary>
public class SessionTroubleTests
{
    [Fact]
    public void After_a_crash_the_same_screen_comes_back_with_the_right_time_left()
    {
        var brewer = new Player();
        brewer.Begin().Until("mash.rest-1").Keys("6").Line("65.5").Wait(600);
        var before = ScreenDump.Of(brewer.Screen with { Notice = null });

        var again = new Player(brewer.Store, at: brewer.Now);

        Assert.Equal(before, ScreenDump.Of(again.Screen with { Notice = null }));
        Assert.Equal(brewer.Session.Batch, again.Session.Batch);
        Assert.Contains("Batch 1 is taken up again; its last entry is", again.Notice, StringComparison.Ordinal);
        Assert.Contains("Is the heat as the gauges say", again.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_suspended_laptop_loses_nothing()
    {
        var brewer = new Player();
        brewer.Begin().Space();

        brewer.Wait(3600);

        Assert.Equal(("50:00", "over the planned time"), (brewer.Deck.Big, brewer.Deck.BigLabel));
    }

    [Fact]
    public void An_old_open_batch_is_offered_but_not_entered()
    {
        var brewer = new Player();
        brewer.Begin().Space();

        var later = new Player(brewer.Store, at: brewer.Now.AddDays(3));

        Assert.Contains("> Go on with batch 1: Quayside Amber", later.Text, StringComparison.Ordinal);
        later.Enter();
        Assert.IsType<DeckScreen>(later.Screen);
    }

    [Fact]
    public void While_a_batch_runs_no_other_one_is_opened()
    {
        var brewer = new Player();
        brewer.Begin().Space().Keys("q").Down().Enter().Enter().Enter().Space().Space();

        Assert.Equal("Batch 1 still runs: finish it or give it up first.", brewer.Notice);
        Assert.Single(brewer.Store.List());
    }

    [Fact]
    public void What_is_not_on_disk_does_not_count()
    {
        var brewer = new Player();
        brewer.Begin();
        brewer.Store.Trouble = "the disk is full";

        brewer.Space();

        Assert.Equal("Not written, so it does not count: the disk is full", brewer.Notice);
        Assert.Equal(RunStatus.Idle, brewer.Session.State!.Step("setup.check")!.Status);
        brewer.Store.Trouble = null;
        brewer.Space();
        Assert.Equal(RunStatus.Running, brewer.Session.State!.Step("setup.check")!.Status);
    }

    [Fact]
    public void A_batch_that_cannot_be_opened_leaves_the_plan_on_the_screen()
    {
        var brewer = new Player();
        brewer.Enter().Enter().Enter().Space();
        brewer.Store.Trouble = "the disk is full";

        brewer.Space();

        Assert.Equal(("The plan", "the disk is full"), (brewer.Screen.Title, brewer.Notice));
    }

    [Fact]
    public void The_bell_rings_once_when_the_hands_become_wanted()
    {
        var brewer = new Player();
        brewer.Begin().Space();
        Assert.False(brewer.Session.TakeBell());
        brewer.GoOn().GoOn();
        Assert.Equal(FocusAct.Wait, brewer.Session.Focus!.Act);

        brewer.Wait(300);
        Assert.True(brewer.Session.TakeBell());
        Assert.False(brewer.Session.TakeBell());
        brewer.Wait(1);
        Assert.False(brewer.Session.TakeBell());
    }

    [Fact]
    public void The_next_tick_is_the_countdowns_next_second()
    {
        var brewer = new Player();
        Assert.Null(brewer.Session.NextTick);
        brewer.Begin().Space();

        brewer.Wait(0.25);
        var wait = brewer.Session.NextTick!.Value - brewer.Now;

        Assert.InRange(wait.TotalMilliseconds, 1, 1000);
    }

    [Fact]
    public void A_clock_that_is_set_back_throws_nothing_and_loses_nothing()
    {
        var brewer = new Player();
        brewer.Begin().Until("mash.rest-1");
        brewer.Now = brewer.Now.AddHours(-1);

        brewer.Keys("6").Line("65.5").Space();

        Assert.Single(brewer.Session.State!.Readings);
        var events = brewer.Store[1];
        for (var i = 1; i < events.Count; i++)
            Assert.True(events[i].AtMs >= events[i - 1].AtMs);
    }

    [Fact]
    public void A_clock_that_is_set_forward_asks_for_hands_and_forgets_nothing()
    {
        var brewer = new Player();
        brewer.Begin().Until("mash.rest-1");
        var events = brewer.Store[1].Count;

        brewer.Wait(30 * 3600).Keys("6").Line("65.5");

        Assert.Single(brewer.Session.State!.Readings);
        Assert.Equal(brewer.Store[1].Take(events), new Player(brewer.Store, at: brewer.Now).Store[1].Take(events));
    }

    /// <summary>The wall clock leaps by its offset, in autumn and spring or on a journey: no event is early or late for it.</summary>
    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    [InlineData(9)]
    public void Another_offset_of_the_clock_moves_no_countdown_and_no_event(double hours)
    {
        var (stays, moves) = (new Player(), new Player());
        foreach (var brewer in (Player[])[stays, moves])
            brewer.Begin().Until("mash.rest-1").Wait(90);
        moves.Now = moves.Now.ToOffset(moves.Now.Offset + TimeSpan.FromHours(hours));

        foreach (var brewer in (Player[])[stays, moves])
            brewer.Wait(600).Keys("6").Line("65.5");

        Assert.Equal((stays.Deck.Big, stays.Deck.BigLabel), (moves.Deck.Big, moves.Deck.BigLabel));
        Assert.Equal(stays.Store[1].Select(e => e.AtMs), moves.Store[1].Select(e => e.AtMs));
    }

    /// <summary>A night in autumn has an hour twice: the words show local time, the day counts on.</summary>
    [Fact]
    public void The_hour_that_comes_twice_counts_once()
    {
        var zone = ShedTime();
        var before = new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero);
        var notation = new Notation(UnitSystem.Metric, zone);
        Assert.Equal(("02:30", "02:30", "03:30"), (Local(0), Local(1), Local(2)));

        string Local(int hours) => notation.Local(before.AddHours(hours).ToUnixTimeMilliseconds()).ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Leaving_while_a_batch_runs_is_asked_about()
    {
        var brewer = new Player();
        brewer.Begin().Space().Keys("qq");
        Assert.Equal("Leave while batch 1 runs?", brewer.Question);
        brewer.Enter();
        Assert.False(brewer.Session.Ended);

        brewer.Keys("q").Down().Enter();

        Assert.True(brewer.Session.Ended);
    }

    [Fact]
    public void A_resize_keeps_everything()
    {
        var brewer = new Player();
        brewer.Begin().Until("mash.rest-1").Keys("6").Send(new Input.Typed("65"));
        var before = brewer.Text;

        brewer.Send(new Input.Resized(120, 40)).Send(new Input.Resized(10, 2));

        Assert.Equal(before, brewer.Text);
    }

    /// <summary>One hour east of UTC, and another one in summer.</summary>
    private static TimeZoneInfo ShedTime()
    {
        var (spring, autumn) = (
            TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 2, 0, 0), 3, 5, DayOfWeek.Sunday),
            TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 3, 0, 0), 10, 5, DayOfWeek.Sunday));
        var summer = TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(DateTime.MinValue.Date, DateTime.MaxValue.Date, TimeSpan.FromHours(1), spring, autumn);
        return TimeZoneInfo.CreateCustomTimeZone("shed", TimeSpan.FromHours(1), "shed", "shed", "shed in summer", [summer]);
    }
}
