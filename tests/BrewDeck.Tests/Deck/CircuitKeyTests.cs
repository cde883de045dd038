using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Tests.Deck;

/// <summary>A circuit that has tripped: no plug goes anywhere before somebody has said that it is dry.</summary>
public sealed class CircuitKeyTests
{
    private readonly Player _brewer = new();

    [Fact]
    public void Another_circuit_is_taken_only_when_the_plug_is_said_to_be_dry()
    {
        Tripped().Keys("r");
        var offers = Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay);
        Assert.StartsWith("Circuit", offers.Lines[0].ToString(), StringComparison.Ordinal);
        Assert.Contains(offers.Lines, l => l.ToString().Contains("Breaker off before a plug is touched", StringComparison.Ordinal));
        Assert.Contains(offers.Lines, l => l.ToString().Contains("licensed electrician", StringComparison.Ordinal));

        _brewer.Choose("Once it is dry, plug it into circuit");
        Assert.Equal("Are plug and socket dry, and is the cause found?", _brewer.Question);
        _brewer.Enter();
        Assert.Empty(_brewer.Session.State!.Remedies);

        _brewer.Keys("r").Choose("Once it is dry, plug it into circuit").Choose("Yes: plug it into circuit");
        Assert.Equal(RemedyKind.OtherCircuit, Assert.Single(_brewer.Session.State!.Remedies).Remedy.Kind);
    }

    [Fact]
    public void The_report_says_which_key_tells_that_it_is_over()
    {
        Tripped();
        Assert.Contains("f once it is over", _brewer.Notice, StringComparison.Ordinal);

        _brewer.Keys("f");
        var rows = Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay);
        Assert.EndsWith("is on again", rows.Options[0].Cells[0], StringComparison.Ordinal);
        Assert.Contains(rows.Lines, l => l.ToString().Contains("If it trips again: stop", StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_says_how_the_troubles_are_told_apart()
    {
        _brewer.Begin().Until("boil.boil-1").Keys("f");
        var rows = Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options;

        Assert.Contains(rows, r => r.Cells is ["Wort has boiled over", "foam or wort over the rim"]);
        Assert.Contains(rows, r => r.Cells[0].EndsWith("has tripped", StringComparison.Ordinal) && r.Cells[1] == "breaker tripped, lamp out");
        Assert.Contains(rows, r => r.Cells[0].EndsWith("does not heat", StringComparison.Ordinal) && r.Cells[1] == "breaker on, lamp lit, no heat");
    }

    [Fact]
    public void After_a_boil_over_the_kettle_is_to_be_read()
    {
        _brewer.Begin().Until("boil.boil-1").Keys("f").Choose("Wort has boiled over");

        Assert.Contains("read the kettle", _brewer.Notice, StringComparison.Ordinal);
        Assert.Equal(RunStatus.Running, _brewer.Session.State!.Step("boil.boil-1")!.Status);
    }

    private Player Tripped()
    {
        _brewer.Begin().Until("lauter.run").Wait(1200).Keys("f");
        return _brewer.Choose("Circuit C has tripped");
    }
}
