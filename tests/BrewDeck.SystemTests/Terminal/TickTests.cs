using BrewDeck.Deck;

namespace BrewDeck.SystemTests.Terminal;

public sealed class TickTests
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    [Fact]
    public void A_tick_comes_when_the_session_wants_it_and_not_before()
    {
        var time = new SteppedTime();
        using var bench = Ticking(time);
        time.Pass(Second - TimeSpan.FromMilliseconds(1));
        bench.Step();
        Assert.Empty(bench.Session.Received);
        time.Pass(TimeSpan.FromMilliseconds(1));
        bench.Step();
        Assert.Equal([new Input.Tick()], bench.Session.Received);
    }

    [Theory]
    [InlineData(-3600)]
    [InlineData(-1)]
    [InlineData(+3600)]
    public void A_clock_that_is_set_does_not_stall_the_countdown(int seconds)
    {
        var time = new SteppedTime();
        using var bench = Ticking(time);
        time.SetWallClock(TimeSpan.FromSeconds(seconds));
        for (var i = 0; i < 5; i++)
        {
            time.Pass(Second);
            bench.Step();
        }

        Assert.Equal(5, bench.Session.Received.Count(input => input is Input.Tick));
    }

    [Fact]
    public void Without_a_wanted_tick_the_loop_waits_for_keys_only()
    {
        using var bench = new Bench(new RecordingSession(SampleScreens.Recipes), new SteppedTime());
        Assert.Null(bench.Pump.UntilTick());
        Assert.Null(bench.Toolkit.UntilDue());
    }

    [Fact]
    public void A_tick_wanted_in_the_past_does_not_spin()
    {
        var time = new SteppedTime();
        using var bench = new Bench(
            new RecordingSession(SampleScreens.Rest) { NextTick = time.GetUtcNow() - Second }, time);
        Assert.True(bench.Pump.UntilTick() >= TimeSpan.FromMilliseconds(10));
    }

    [Fact]
    public void A_tick_far_off_is_looked_at_every_minute_in_case_the_machine_slept()
    {
        var time = new SteppedTime();
        using var bench = new Bench(
            new RecordingSession(SampleScreens.Rest) { NextTick = time.GetUtcNow() + TimeSpan.FromHours(2) }, time);
        Assert.Equal(TimeSpan.FromMinutes(1), bench.Pump.UntilTick());
    }

    [Fact]
    public void The_bell_rings_once_for_each_input_that_wants_it()
    {
        var rings = 0;
        using var bench = new Bench(
            new RecordingSession(SampleScreens.Rest)
            {
                OnReceive = (me, input) => me.Bell = input is Input.Key { Stroke.Character: 'b' },
            },
            new SteppedTime());
        bench.Pump.Ring += () => rings++;
        bench.Type("abba");
        Assert.Equal(2, rings);
    }

    [Fact]
    public void The_session_is_told_the_size()
    {
        using var bench = new Bench(new RecordingSession(SampleScreens.Rest), new SteppedTime());
        bench.Pump.Resize(new System.Drawing.Size(100, 30));
        Assert.Equal([new Input.Resized(100, 30)], bench.Session.Received);
    }

    private static Bench Ticking(SteppedTime time) => new(
        new RecordingSession(SampleScreens.Rest) { OnReceive = (me, _) => me.NextTick = me.Times[^1] + Second }, time);
}
