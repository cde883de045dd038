using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>Places where somebody who brewed with the program for the first time did not know what to do.</summary>
public class SessionHesitationTests
{
    private readonly Player _brewer = new();

    private ListScreen List => Assert.IsType<ListScreen>(_brewer.Screen);

    [Fact]
    public void A_finish_that_the_day_cannot_meet_is_refused_with_one_that_it_can()
    {
        ToTheChoices();
        MoveTo("Finish by");
        _brewer.Enter().Line("9:00");

        Assert.Matches(@"^The day takes .*: begun now it ends at 2026-01-01 1\d:\d\d\. Take that or later\.$", Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay).Fault!.ToString());
        _brewer.Line("20:00");
        Assert.Equal("2026-01-01 20:00", List.Rows[List.Selected].Cells[1]);
    }

    [Fact]
    public void Leaving_the_days_choices_keeps_them_until_a_batch_is_opened()
    {
        ToTheChoices();
        MoveTo("Into the fermenter");
        _brewer.Enter().Line("36").Escape().Enter();

        Assert.Equal("The day's choices are as you left them.", _brewer.Notice);
        Assert.Equal("36.0 L", Cell("Into the fermenter"));
        _brewer.Space().Space();
        Assert.Equal(36, _brewer.Session.State!.Plan!.Totals.FermenterL, 0.1);
    }

    [Fact]
    public void A_digit_chooses_the_circuits_and_says_so_where_it_chooses_nothing()
    {
        ToTheChoices();
        MoveTo("Circuits in use");
        _brewer.Keys("2");
        Assert.Equal("2 of 3", Cell("Circuits in use"));
        _brewer.Keys("9");
        Assert.Equal("2 of 3", Cell("Circuits in use"));
        Assert.Equal("That digit chooses nothing here; enter turns to the next value.", _brewer.Notice);
    }

    [Fact]
    public void What_is_weighed_in_is_told_beside_what_the_recipe_says()
    {
        ToTheChoices();
        Assert.Contains(List.Details, l => l.ToString().StartsWith("fitted to this brewhouse: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Casting_out_asks_for_a_reading_once_and_takes_no_for_an_answer()
    {
        _brewer.Begin().Until("cool.cast-out").Wait(3600).Space();
        Assert.Equal("Nothing has been read yet. Read it first?", _brewer.Question);

        _brewer.Down().Enter();
        Assert.Equal("Fermenter volume?", _brewer.Question);
        _brewer.Escape().Space().Enter();

        Assert.Equal(RunStatus.Complete, _brewer.Session.State!.Step("cool.cast-out")!.Status);
    }

    [Fact]
    public void Digits_after_a_reading_open_the_next_one_that_is_due()
    {
        _brewer.Begin().Until("cool.cast-out").Wait(3600).Keys("3").Line("39.5").Keys("1");

        Assert.Equal("Fermenter temperature?", _brewer.Question);
    }

    [Fact]
    public void Leaving_it_always_stands_last()
    {
        _brewer.Begin().Until("lauter.run", RunStatus.Complete).Keys("t").Down().Enter().Line("1.044").Keys("r");

        var offers = Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Options;
        Assert.True(offers.Length > 1);
        Assert.Equal("Leave it", offers[^1].Cells[0]);
    }

    [Fact]
    public void The_run_sheet_says_all_orders_of_the_step_in_hand_and_goes_on_in_the_order_of_time()
    {
        _brewer.Begin().Until("setup.weigh-in").Keys("p");
        var lines = Assert.IsType<TextScreen>(_brewer.Screen).Lines.Select(l => l.ToString()).ToList();

        Assert.Equal("Weigh in", lines[0]);
        Assert.Contains("  Each into its own tub, marked as below.", lines);
        var clocks = lines.Where(l => l.Length > 7 && l[4] == ':').Select(l => l[2..7]).ToList();
        Assert.True(clocks.Count > 10);
        Assert.Equal(clocks.Order(StringComparer.Ordinal), clocks);
    }

    [Fact]
    public void All_of_the_alarms_page_is_reached_by_the_arrow()
    {
        _brewer.Begin().Until("mash.rest-1").Keys("l");
        for (var i = 0; i < 40; i++)
            _brewer.Down();

        Assert.Equal(List.Rows.Length - 1, List.Selected);
        Assert.Equal(List.Rows[^1].Cells[^1], List.Details[0].ToString());
        _brewer.Enter();
        Assert.Null(_brewer.Screen.Overlay);
    }

    [Fact]
    public void The_help_is_closed_by_the_key_that_opened_it()
    {
        _brewer.Keys("?");
        Assert.Equal("Keys", _brewer.Screen.Title);
        _brewer.Keys("?");
        Assert.Equal("BrewDeck", _brewer.Screen.Title);
    }

    /// <summary>A mash that waits to be said in goes on cooling: the target stays, and what it will show by now stands beside it.</summary>
    [Fact]
    public void The_expected_of_a_step_that_waits_for_the_brewer_does_not_drift()
    {
        _brewer.Begin().Until("mash.dough-in");
        var target = Expected();
        _brewer.Wait(40 * 60);

        Assert.StartsWith(target.TrimEnd('.'), Expected(), StringComparison.Ordinal);
        Assert.Contains("(by now ", Expected(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(93, "2 min", "1 minute and 33 seconds")]
    [InlineData(60, "1 min", "1 minute")]
    [InlineData(45, "45 s", "45 seconds")]
    [InlineData(100, "2 min", "2 minutes")]
    public void A_table_has_minutes_from_one_minute_on(double seconds, string brief, string words) =>
        Assert.Equal((brief, words), (Durations.Short(seconds), Durations.Words(seconds, Notation.Metric)));

    [Theory]
    [InlineData(0.357, "357 g")]
    [InlineData(6.549, "6.549 kg")]
    [InlineData(21.959, "21.96 kg")]
    [InlineData(219.59, "219.6 kg")]
    public void Masses_are_as_fine_as_a_scale_for_them(double kg, string text) => Assert.Equal(text, Notation.Metric.Mass(kg));

    private string Expected() => _brewer.Deck.Sentences.Select(s => s.ToString()).Single(s => s.StartsWith("Expected", StringComparison.Ordinal));

    private void ToTheChoices()
    {
        _brewer.Enter().Enter().Enter();
        Assert.EndsWith(": the day", _brewer.Screen.Title, StringComparison.Ordinal);
    }

    private string Cell(string label) => List.Rows.Single(r => r.Cells[0] == label).Cells[1];

    private void MoveTo(string label)
    {
        while (List.Rows[List.Selected].Cells[0] != label)
            _brewer.Down();
    }
}
