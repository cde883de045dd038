using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class TroubleKeyTests
{
    private readonly Player _brewer = new();

    [Fact]
    public void A_stuck_run_off_is_reported_with_one_key_and_a_row()
    {
        _brewer.Begin().Until("lauter.run").Keys("f");
        Assert.Equal("What is wrong?", _brewer.Question);
        Assert.Equal("The run-off is stuck", Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options[0].Cells[0]);

        _brewer.Enter();

        Assert.StartsWith("The run-off is stuck. Stop both pumps: they fill the tun and break the false bottom. Kettle heat off.", _brewer.Notice, StringComparison.Ordinal);
        Assert.Equal(TroubleKind.RunoffStuck, Assert.Single(_brewer.Session.State!.Troubles).Trouble.Kind);

        _brewer.Keys("f");
        Assert.Equal("The run-off runs again", Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options[0].Cells[0]);
        _brewer.Enter();
        Assert.Equal(RunStatus.Running, _brewer.Session.State!.Step("lauter.run")!.Status);
    }

    /// <summary>A pump that pulls on a closed bed breaks the false bottom.</summary>
    [Theory]
    [InlineData(2, 30, "Stop both pumps: they fill the tun")]
    [InlineData(1, 30, "Stop the pump, shut the liquor off: the tun fills")]
    [InlineData(2, 0, "Stop the pump: its pull")]
    public void What_runs_into_a_stuck_tun_is_stopped_too(int pumps, double spargeL, string said)
    {
        var drawn = Planning.Demo.Plan();
        var plan = drawn with
        {
            Brewhouse = drawn.Brewhouse with { Pumps = drawn.Brewhouse.Pumps[..pumps] },
            Steps = [.. drawn.Steps.Select(s => s.Spec.Id == "lauter.run" ? s with { Spec = s.Spec with { SpargeL = spargeL } } : s)],
        };

        var words = TroubleWords.AtOnce(new Trouble(TroubleKind.RunoffStuck, "lauter.run"), plan, Notation.Metric);
        Assert.StartsWith(said, words, StringComparison.Ordinal);
        Assert.EndsWith("Kettle heat off.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_big_key_struck_twice_more_does_not_run_a_stuck_bed_off_again()
    {
        _brewer.Begin().Until("lauter.run").Keys("f").Enter().Wait(60);

        _brewer.Space();
        Assert.Equal("The run-off is stuck. Is that over?", _brewer.Question);
        _brewer.Space();
        Assert.Equal(RunStatus.Held, _brewer.Session.State!.Step("lauter.run")!.Status);

        _brewer.Space().Down().Enter();
        Assert.Equal(RunStatus.Running, _brewer.Session.State!.Step("lauter.run")!.Status);
        Assert.False(Assert.Single(_brewer.Session.State.Troubles).Stands);
    }
}
