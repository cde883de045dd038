using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

public class SessionRehearsalTests
{
    private readonly RehearsalKnobs _knobs = new();
    private readonly Player _brewer;

    public SessionRehearsalTests()
    {
        _brewer = new Player(rehearsal: _knobs);
        Assert.True(_brewer.Session.Begin(Demo.Plan(), _brewer.Now));
    }

    [Fact]
    public void The_corner_says_that_it_is_a_rehearsal_and_how_fast()
    {
        Assert.Contains("rehearsal x60", _brewer.Screen.Corner, StringComparison.Ordinal);
        Assert.True(_brewer.Session.State!.Rehearsed);
    }

    [Fact]
    public void Keys_steer_its_clock()
    {
        _brewer.Strike(KeyStroke.Of('+'), 120);
        Assert.Equal(120, _knobs.Speed);
        _brewer.Strike(KeyStroke.Of('-'), 120).Strike(KeyStroke.Of('-'), 120);
        Assert.Equal(30, _knobs.Speed);
        _brewer.Strike(KeyStroke.Of('.'), 120);
        Assert.True(_knobs.Paused);
        Assert.Contains("rehearsal paused", _brewer.Screen.Corner, StringComparison.Ordinal);
        Assert.Null(_brewer.Session.NextTick);
        _brewer.Strike(KeyStroke.Of('.'), 120).Strike(KeyStroke.Of('o'), 120);
        Assert.False(_knobs.Paused);
        Assert.True(_knobs.HandsOn);
        Assert.Contains("own hands", _brewer.Screen.Corner, StringComparison.Ordinal);
    }

    /// <summary>Half a minute after the step had changed a Space was swallowed without a word: the day's seconds were counted at the new speed.</summary>
    [Theory]
    [InlineData("..")]
    [InlineData("++")]
    public void The_big_key_is_heard_right_after_the_keys_of_the_clock(string clock)
    {
        OnTheWall(0, ' ');
        OnTheWall(10, clock[0]);
        OnTheWall(10.1, clock[0]);
        OnTheWall(20, clock[1]);
        var before = _brewer.Store[1].Count;
        OnTheWall(20.1, ' ');

        Assert.True(_brewer.Store[1].Count > before || _brewer.Screen.Overlay is not null, _brewer.Text);
        Assert.DoesNotContain("Struck twice", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Hands_do_not_get_faster_with_the_day()
    {
        OnTheWall(0, 'o');
        OnTheWall(0.3, 'o');
        Assert.True(_knobs.HandsOn);
        OnTheWall(1, 'o');
        Assert.False(_knobs.HandsOn);
    }

    [Fact]
    public void The_key_that_is_wanted_most_stands_in_the_bottom_line()
    {
        Assert.Equal("o", _brewer.Deck.Keys[2].Key);
        _knobs.HandsOn = true;
        _brewer.Space().Wait(1);
        Assert.True(_brewer.Session.Focus is { Act: FocusAct.Wait } or { DueMs: > 0 });
        Assert.Equal(_brewer.Session.Focus!.DueMs > _brewer.Now.ToUnixTimeMilliseconds() ? "j" : "u", _brewer.Deck.Keys[2].Key);
        _brewer.RunUntil(s => _brewer.Session.Focus!.Act == FocusAct.Wait || _brewer.Session.Focus.DueMs > _brewer.Now.ToUnixTimeMilliseconds());
        Assert.Equal("j", _brewer.Deck.Keys[2].Key);
        _knobs.Signs = [new Sign(Core.Rehearsing.MishapKind.BoilOver, "kettle", [])];
        _brewer.Wait(1);
        Assert.Equal("m", _brewer.Deck.Keys[2].Key);
    }

    /// <summary>Seconds on the wall since the morning; the day goes as fast as it is set to.</summary>
    private void OnTheWall(double seconds, char key)
    {
        var wall = Player.Morning.AddSeconds(seconds);
        _brewer.Now += (_knobs.Paused ? 0 : _knobs.Speed) * (wall - (_knobs.Wall ?? Player.Morning));
        _knobs.Wall = wall;
        _brewer.Send(new Input.Key(key == ' ' ? new KeyStroke(KeyName.Space) : KeyStroke.Of(key)));
    }

    [Fact]
    public void The_stand_in_acts_in_the_same_way_as_the_keys()
    {
        var decision = _brewer.Session.Act(new RunCommand.Start("setup.check"), _brewer.Now);

        Assert.IsType<Decision.Accepted>(decision);
        Assert.Equal("Started: Check fittings and valves.", _brewer.Notice);
        Assert.IsType<StepStarted>(_brewer.Store[1][^1]);
    }

    [Fact]
    public void The_stand_in_is_told_when_nothing_was_written()
    {
        _brewer.Store.Trouble = "the disk is full";

        Assert.Equal(new Decision.Refused("store_trouble"), _brewer.Session.Act(new RunCommand.Start("setup.check"), _brewer.Now));
    }

    [Fact]
    public void A_fast_clock_asks_for_no_more_than_four_ticks_a_second_of_the_wall()
    {
        _brewer.Session.Act(new RunCommand.Start("setup.check"), _brewer.Now);
        _brewer.Wait(1);

        Assert.InRange((_brewer.Session.NextTick!.Value - _brewer.Now).TotalSeconds, _knobs.Speed / 4 - 1, _knobs.Speed / 4 + 1);
    }

    [Fact]
    public void The_help_has_the_rehearsals_keys()
    {
        _brewer.Strike(KeyStroke.Of('?'), 120).Strike(new KeyStroke(KeyName.PageDown), 120);

        Assert.Contains("In a rehearsal", _brewer.Text, StringComparison.Ordinal);
    }
}
