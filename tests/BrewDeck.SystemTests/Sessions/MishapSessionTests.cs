using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Each mishap in the real deck: it shows itself, the trainee meets it by keys, and the day goes on.</summary>
public sealed class MishapSessionTests
{
    [Theory]
    [InlineData(MishapKind.ThickMash, "The paddle stands up", HandAct.PumpOver, StepKind.Rest, RunStatus.Running)]
    [InlineData(MishapKind.PumpLostPrime, "The pump whines", HandAct.PrimePump, StepKind.DoughIn, RunStatus.Running)]
    [InlineData(MishapKind.WrongWeighIn, "A sack that should be empty", HandAct.AddRestOfGrist, StepKind.Vorlauf, RunStatus.Running)]
    [InlineData(MishapKind.StuckBed, "thins to a trickle", HandAct.RakeBed, StepKind.HeatToBoil, RunStatus.Running)]
    [InlineData(MishapKind.MisreadHydrometer, "a jar too hot", HandAct.CoolSample, StepKind.HeatToBoil, RunStatus.Running)]
    [InlineData(MishapKind.TrippedCircuit, "the breaker of circuit C has tripped", HandAct.DryAndReset, StepKind.HotBreak, RunStatus.Complete)]
    [InlineData(MishapKind.FailedElement, "its ammeter stands far below", HandAct.CoverKettle, StepKind.HotBreak, RunStatus.Complete)]
    [InlineData(MishapKind.BoilOver, "Foam climbs", HandAct.TurnDown, StepKind.HotBreak, RunStatus.Complete)]
    [InlineData(MishapKind.SlowChiller, "wort valve is nearly shut", HandAct.FlushChiller, StepKind.Pitch, RunStatus.Running)]
    public void It_shows_itself_is_met_by_keys_and_the_day_goes_on(MishapKind kind, string sign, HandAct act, StepKind then, RunStatus status)
    {
        using var at = new AtTheRehearsal(new Mishap(kind, Severity.Plain));
        at.UntilItShows();
        Assert.Contains(sign, at.Signs, StringComparison.Ordinal);
        Assert.Contains(": ", at.Deck.Plant[1].ToString(), StringComparison.Ordinal);
        Assert.Equal(1, at.Clock.Speed);

        at.Strike("m").Strike(Enter);
        Assert.Equal(act, Assert.Single(at.Events.OfType<HandsActed>()).Act);
        Assert.Empty(at.Clock.Signs);

        at.Until(then, status);
        Assert.True(at.State.Status == RunStatus.Running, at.Text);
    }

    [Fact]
    public void Power_on_a_wet_plug_stands_last_and_is_called_what_it_is()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.TrippedCircuit, Severity.Plain));
        at.UntilItShows().Strike("m");
        var ask = Assert.IsType<ChoiceOverlay>(at.Screen.Overlay);

        Assert.Equal(["Breaker off, unplug, dry plug and socket; plug in, breaker on", "Leave it as it is", "Switch the breaker on with the plug wet: it may kill"], ask.Options.Select(o => o.Cells[0]));
        Assert.Equal(Tone.Alarm, ask.Options[^1].Tone);
        Assert.Contains(ask.Lines, l => l.ToString().Contains("licensed electrician", StringComparison.Ordinal));
    }

    /// <summary>Drying takes its minutes, whatever has been reported meanwhile: a dial that goes on falling is no riddle.</summary>
    [Fact]
    public void A_plug_that_is_being_dried_says_for_how_long()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.TrippedCircuit, Severity.Plain));
        at.UntilItShows().Strike("m").Strike(Enter).WaitOnTheWall(60).Strike("m");
        Assert.Equal("Your hands are still at it, 5 min more; till then it is as it was.", at.Screen.Notice!.ToString());
        Assert.Contains("still at it", at.Signs, StringComparison.Ordinal);

        at.WaitOnTheWall(301).Strike("m");
        Assert.Equal("Nothing is wrong that can be seen.", at.Screen.Notice!.ToString());
        Assert.DoesNotContain("still at it", at.Signs, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kettle_that_runs_over_says_so_and_asks_to_be_read()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.BoilOver, Severity.Plain));
        at.UntilItShows();
        Assert.Contains("a hand's width below the rim", at.Signs, StringComparison.Ordinal);
        at.WaitOnTheWall(100);
        Assert.Contains("run over the rim", at.Signs, StringComparison.Ordinal);

        at.Strike("m").Strike(Enter);
        Assert.True(at.Text.Contains("what went over is gone", StringComparison.Ordinal), at.Text);
    }

    /// <summary>Half the liquor came over: before the deck reckons on it wants to know, and no dead end is without its key.</summary>
    [Fact]
    public void A_pump_that_lost_its_prime_is_asked_what_it_has_moved()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.PumpLostPrime, Severity.Severe) { StepId = "mash.transfer" });
        at.UntilItShows();
        Assert.Contains("m.", at.Strike("r").Screen.Notice!.ToString(), StringComparison.Ordinal);

        at.Strike(AtTheKeys.Space);
        Assert.Equal("The pump did not run all the while: has all the liquor come over?", Assert.IsType<ChoiceOverlay>(at.Screen.Overlay).Question);
        at.Strike(AtTheKeys.Enter);
        Assert.Contains("tun volume", Assert.IsType<EntryOverlay>(at.Screen.Overlay).Question, StringComparison.Ordinal);
        at.Line("4.8");
        // far from what was reckoned: asked about once
        if (at.Screen.Overlay is ChoiceOverlay)
            at.Strike(AtTheKeys.Down).Strike(AtTheKeys.Enter);
        var live = at.State.Live!;
        Assert.Equal(4.8, Contents.StandsL(live.Plant.Vessels[live.Setting.IndexOf("tun")]), 0.1);
        Assert.Equal(RunStatus.Running, at.State.Step("mash.transfer")!.Status);
    }

    /// <summary>Left as it is and read short, it still whines, and the big key ends nothing unasked.</summary>
    [Fact]
    public void A_transfer_read_short_is_not_ended_unasked()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.PumpLostPrime, Severity.Plain) { StepId = "mash.transfer" });
        at.UntilItShows();
        at.Strike("m").Strike(Down).Strike(Down).Strike(Enter);
        Assert.Equal(HandAct.LeaveIt, Assert.Single(at.Events.OfType<HandsActed>()).Act);
        at.WaitOnTheWall(60).Strike("m");
        Assert.IsType<ChoiceOverlay>(at.Screen.Overlay);
        at.Strike(Escape).WaitOnTheWall(2).Line("10.2l").Strike(Down).Strike(Enter);
        Assert.Contains(at.State.Readings, r => r.Reading is { Kind: ReadingKind.Volume, Value: 10.2 });

        at.Strike(Space);
        var ask = Assert.IsType<ChoiceOverlay>(at.Screen.Overlay);
        Assert.StartsWith("Read so far: 10.2 L of ", ask.Question, StringComparison.Ordinal);
        Assert.Equal(RunStatus.Running, at.State.Step("mash.transfer")!.Status);
        at.Strike(Down).Strike(Down).Strike(Enter);
        var live = at.State.Live!;
        Assert.Equal(RunStatus.Complete, at.State.Step("mash.transfer")!.Status);
        Assert.InRange(Contents.StandsL(live.Plant.Vessels[live.Setting.IndexOf("tun")]), 10, 12);
    }

    [Fact]
    public void A_vessel_that_was_cleaned_shows_no_dial_and_no_level()
    {
        using var at = new AtTheRehearsal();
        at.Until(() => at.State.Steps.Any(s => s.Spec is { Kind: StepKind.Clean, Vessel: "tun" } && s.Status == RunStatus.Complete));

        Assert.DoesNotContain(at.Clock.Dials, d => d.Vessel == "tun");
        Assert.Contains(at.Deck.Vessels, g => g is { Name: "tun", Text: "cleaned" });
    }

    [Fact]
    public void A_cold_strike_is_read_and_met_with_a_remedy()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.ColdStrike, Severity.Severe));
        at.UntilItShows();
        Assert.Contains("falls as the liquor moves", at.Signs, StringComparison.Ordinal);

        at.Until(StepKind.Rest, RunStatus.Running);
        Assert.Contains("r shows ways back", at.Text, StringComparison.Ordinal);
        at.Strike("r").Strike(Enter);
        Assert.Equal(RemedyKind.HeatMash, Assert.Single(at.State.Remedies).Remedy.Kind);
        Assert.Empty(at.Clock.Signs);

        at.Until(StepKind.Vorlauf, RunStatus.Running);
    }

    [Fact]
    public void A_power_cut_ends_the_program_and_the_day_goes_on_when_the_power_is_back()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.PowerCut, Severity.Plain));
        at.UntilItShows();
        Assert.True(at.Ended);
        var cut = Assert.IsType<RehearsalMarked>(at.Events[^1]);
        Assert.Equal(RehearsalMark.PowerLost, cut.Mark);

        at.StartAgain().WaitOnTheWall(1);
        Assert.False(at.Ended);
        Assert.InRange((at.Clock.Day - DateTimeOffset.FromUnixTimeMilliseconds(cut.AtMs)).TotalMinutes, 12, 14);

        // whose hands is in the record
        Assert.True(at.Clock.HandsOn);
        at.Until(StepKind.Vorlauf, RunStatus.Running);
    }

    [Fact]
    public void What_is_typed_is_the_trainees_the_dial_only_shows()
    {
        using var at = new AtTheRehearsal();
        at.Until(StepKind.HeatStrike, RunStatus.Running);
        Assert.Contains("Dials: liquor", at.Signs, StringComparison.Ordinal);
        at.Strike("6");
        Assert.Contains("shows ", at.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(at.State.Readings, r => r.Reading.Kind == ReadingKind.Temperature);
    }

    [Fact]
    public void Speeds_go_from_the_clock_to_a_leap_and_a_pause_stands_still()
    {
        using var at = new AtTheRehearsal();
        for (var i = 0; i < 8; i++)
            at.Strike("-");
        Assert.Equal(1, at.Clock.Speed);
        for (var i = 0; i < 14; i++)
            at.Strike("+");
        Assert.Equal(3600, at.Clock.Speed);
        at.Strike(".");
        var stood = at.Clock.Day;
        at.WaitOnTheWall(60);
        Assert.Equal(stood, at.Clock.Day);
    }

    [Fact]
    public void Own_hands_read_a_page_at_the_pace_of_the_wall()
    {
        using var at = new AtTheRehearsal();
        at.Strike("+").Strike("?");
        Assert.Equal(10, PassedIn(10), 1);

        at.Strike("?");
        Assert.InRange(PassedIn(10), 100, double.MaxValue);

        double PassedIn(double wallS)
        {
            var from = at.Clock.Day;
            at.WaitOnTheWall(wallS);
            return (at.Clock.Day - from).TotalSeconds;
        }
    }

    [Fact]
    public void Whose_hands_do_the_work_is_on_record_and_no_act()
    {
        using var at = new AtTheRehearsal();
        at.Strike("o").Strike("o");
        Assert.Equal([RehearsalMark.OwnHands, RehearsalMark.StandIn, RehearsalMark.OwnHands], at.Events.OfType<RehearsalMarked>().Select(e => e.Mark));
        Assert.IsNotType<RehearsalMarked>(at.Events[at.State.UndoSeq!.Value]);
    }
}
