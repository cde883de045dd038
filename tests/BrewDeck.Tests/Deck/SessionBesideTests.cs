using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>Before the live day: what a new owner strikes from habit opens nothing and loses nothing.</summary>
public sealed class SessionBesideTests
{
    private readonly Player _brewer = new();

    [Fact]
    public void Enter_on_the_plan_opens_no_batch_without_a_question()
    {
        _brewer.Enter().Enter().Enter().Enter();
        Assert.Equal("The plan", _brewer.Screen.Title);

        _brewer.Enter();
        Assert.Equal("Open the batch and begin the brew day?", _brewer.Question);
        Assert.Empty(_brewer.Store.List());
        // a second Enter from habit says no
        _brewer.Enter();
        Assert.Empty(_brewer.Store.List());
        Assert.Equal("The plan", _brewer.Screen.Title);

        _brewer.Enter().Keys("2").Enter();
        Assert.IsType<DeckScreen>(_brewer.Screen);
        Assert.Single(_brewer.Store.List());
    }

    [Fact]
    public void The_first_outlook_says_why_it_is_not_the_plan()
    {
        _brewer.Begin();
        Assert.StartsWith("The outlook is what such days usually give", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_brewed_has_no_plan_to_see()
    {
        _brewer.Enter().Enter().Down().Enter();

        Assert.Contains("> See what is wrong", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains(_brewer.Screen.Keys, k => k.Does == "see what is wrong");
        Assert.DoesNotContain(_brewer.Screen.Keys, k => k.Does == "see the plan");
    }

    [Fact]
    public void Circuits_are_asked_for_and_the_plugs_to_move_are_counted()
    {
        _brewer.Enter().Enter().Enter().Enter().Keys("c");
        var options = Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options.Select(o => o.Cells[0]).ToList();

        Assert.Equal(3, options.Count);
        Assert.Matches("^1 circuit: .*a plug moved .* by hand$", options[0]);
        Assert.DoesNotContain("moved", options[2], StringComparison.Ordinal);
        _brewer.Escape();
        Assert.Null(_brewer.Question);
        Assert.Contains("> 3 circuits", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_no_room_beside_a_list_has_a_page_of_its_own()
    {
        _brewer.Enter().Enter();
        var beside = Assert.IsType<ListScreen>(_brewer.Screen).Details;
        _brewer.Keys("p");

        Assert.Equal(beside.Select(d => d.ToString()), Assert.IsType<TextScreen>(_brewer.Screen).Lines.Select(l => l.ToString()));
        _brewer.Escape();
        Assert.IsType<ListScreen>(_brewer.Screen);
    }

    [Fact]
    public void The_opening_page_is_left_not_gone_back_from() => Assert.Contains(_brewer.Screen.Keys, k => k is { Key: "q", Does: "leave" });

    [Fact]
    public void A_key_that_was_swallowed_says_so()
    {
        _brewer.Enter();
        _brewer.Strike(KeyStroke.Of('q')).Strike(KeyStroke.Of('q'), afterS: 0.05);

        Assert.Equal("Struck twice within a moment: it counts once.", _brewer.Notice);
        Assert.Equal("BrewDeck", _brewer.Screen.Title);
    }

    [Fact]
    public void The_keys_of_where_one_is_stand_first_and_those_of_every_page_once()
    {
        var lines = HelpText.Lines(rehearsal: false, Notation.Metric, KeyContext.Plan).Select(l => l.ToString()).ToList();

        Assert.Equal("Here", lines[0]);
        Assert.Contains("Open the batch", lines[1], StringComparison.Ordinal);
        Assert.True(lines.Count(l => l.EndsWith("One line down.", StringComparison.Ordinal)) == 2, "here, and once on most pages");
        Assert.Single(HelpText.Lines(rehearsal: false, Notation.Metric), l => l.ToString().EndsWith("All keys.", StringComparison.Ordinal) && !l.ToString().StartsWith("  ?", StringComparison.Ordinal) || l.ToString().EndsWith("To the end.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("strike")]
    [InlineData("infusion")]
    public void The_reckoner_knows_the_tun_of_the_day(string name)
    {
        var sum = Sums.Find(name)!;
        var plan = Demo.Plan();
        var texts = DaySums.Of(sum, plan);

        Assert.Equal("7 kJ/K", texts["tun"]);
        Assert.Null(SumReader.Read(sum, texts, Notation.Metric).Fault);
        Assert.Empty(DaySums.Of(Sums.Find("hydrometer")!, plan));
        // on the deck the numbers stand there at once
        _brewer.Begin().Keys("k");
        var row = Sums.All.ToList().FindIndex(s => s.Name == name);
        _brewer.Down(row).Enter();
        Assert.Contains("7 kJ/K", _brewer.Text, StringComparison.Ordinal);
    }
}
