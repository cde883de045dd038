using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;

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

        Assert.Equal(before, again.Text);
        Assert.Equal(brewer.Session.Batch, again.Session.Batch);
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
}
