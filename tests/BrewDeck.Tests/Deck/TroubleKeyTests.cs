using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Screens;

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

        Assert.StartsWith("The run-off is stuck. Stop the pump", _brewer.Notice, StringComparison.Ordinal);
        Assert.Equal(TroubleKind.RunoffStuck, Assert.Single(_brewer.Session.State!.Troubles).Trouble.Kind);

        _brewer.Keys("f");
        Assert.Equal("The run-off runs again", Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options[0].Cells[0]);
        _brewer.Enter();
        Assert.Equal(RunStatus.Running, _brewer.Session.State!.Step("lauter.run")!.Status);
    }

    /// <summary>A pump that pulls on a closed bed breaks the false bottom.</summary>
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
