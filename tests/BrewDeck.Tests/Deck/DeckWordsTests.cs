using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

/// <summary>What the deck says in the middle of a day, held against the state that it says it of.</summary>
public sealed class DeckWordsTests
{
    [Fact]
    public void A_raise_that_waits_wants_its_own_temperature_and_not_that_of_the_rest_before_it()
    {
        var brewer = new Player().Begin().Until("liquor.heat-sparge").Wait(64 * 60);

        Assert.Equal("mash.ramp-2", brewer.Session.Focus!.StepId);
        Assert.Contains("Expected: temperature 76.0 °C", brewer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("wanted", brewer.Text, StringComparison.Ordinal);
    }

    /// <summary>As much as the tank has to give, whatever was asked for in the morning and came from below since.</summary>
    [Fact]
    public void A_lauter_that_runs_tells_the_liquor_still_to_come()
    {
        var brewer = new Player().Begin().Until("lauter.run").Wait(15 * 60);
        var first = ToCome(brewer);
        Assert.InRange(first, 1, brewer.Session.State!.Step("lauter.run")!.Spec.SpargeL!.Value - 5);

        brewer.Keys("f").Choose("The run-off is stuck").Keys("r").Choose("Underlet").Space().Wait(9 * 60).Space();
        Assert.Equal(RunStatus.Running, brewer.Session.State!.Step("lauter.run")!.Status);
        Assert.InRange(ToCome(brewer), 0, first - 1);
    }

    /// <summary>Liquor that lay in layers shows while it is pumped over; the pump ran all the while.</summary>
    [Theory]
    [InlineData(MishapKind.ColdStrike, false)]
    [InlineData(MishapKind.PumpLostPrime, true)]
    public void Only_a_pump_that_failed_is_asked_what_it_moved(MishapKind shows, bool asks)
    {
        var knobs = new RehearsalKnobs();
        var brewer = new Player(rehearsal: knobs).Begin().Until("mash.transfer");
        knobs.Signs = [new Sign(shows, "liquor", [])];

        brewer.Wait(20 * 60).Space();

        Assert.Equal(asks, brewer.Question?.StartsWith("The pump did not run", StringComparison.Ordinal) == true);
        Assert.Equal(asks ? RunStatus.Running : RunStatus.Complete, brewer.Session.State!.Step("mash.transfer")!.Status);
    }

    [Fact]
    public void A_tun_that_waits_to_be_cleaned_while_the_kettle_boils_moves_nothing_back()
    {
        var brewer = new Player().Begin().RunUntil(s => s.LastDone(x => x.Kind == StepKind.HotBreak) is not null);
        for (var i = 0; i < 60 && brewer.Session.Focus?.StepId != "clean.tun"; i++)
            brewer.GoOn();
        Assert.Equal("clean.tun", brewer.Session.Focus!.StepId);
        brewer.Wait(8 * 60);

        var alarm = Assert.Single(brewer.Deck.Alarms).ToString();
        Assert.Contains("This waits for you: Dig out and clean the mash tun. The brew goes on without it", alarm, StringComparison.Ordinal);
    }

    /// <summary>A reading and the reckoning are weighed: which number counts from now on is said as one.</summary>
    [Fact]
    public void A_reading_that_is_weighed_says_with_what_the_deck_goes_on()
    {
        var brewer = new Player().Begin().Until("cool.knock-out");
        var reckoned = brewer.Session.Forecast!.Step("cool.knock-out")!.Expected.Single(e => e.Kind == ReadingKind.Volume).Value;

        brewer.Keys("4").Line((reckoned - 0.9).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture));

        Assert.Matches(@"the deck weighs both and goes on with [0-9.]+ L", brewer.Notice);
        Assert.DoesNotContain("counts as", brewer.Notice, StringComparison.Ordinal);
    }

    private static double ToCome(Player brewer)
    {
        var said = System.Text.RegularExpressions.Regex.Match(brewer.Text, @"Slowly\. ([0-9.]+) L more liquor, bed covered\.");
        Assert.True(said.Success, brewer.Text);
        return double.Parse(said.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
    }
}
