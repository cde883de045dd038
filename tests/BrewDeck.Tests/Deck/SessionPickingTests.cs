using BrewDeck.Deck;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Tests.Deck;

/// <summary>From the opening screen to the plan.</summary>
public class SessionPickingTests
{
    private readonly Player _brewer = new();

    [Fact]
    public void A_broken_file_says_what_is_wrong_and_cannot_be_chosen()
    {
        _brewer.Enter().Down();
        Assert.Contains("broken.toml:3: unknown key", _brewer.Text, StringComparison.Ordinal);

        _brewer.Enter();

        Assert.Equal("Which brewhouse?", _brewer.Screen.Title);
        Assert.StartsWith("broken.toml:3:", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_brewed_says_the_number_and_what_would_mend_it_and_opens_nothing()
    {
        _brewer.Enter().Enter().Down().Enter();
        Assert.Contains("This cannot be brewed", _brewer.Text, StringComparison.Ordinal);

        _brewer.Space();
        Assert.Equal("This cannot be brewed", _brewer.Screen.Title);
        Assert.Matches(@"Mash in the tun: \d+\.\d L, the limit is 60\.0 L\.", _brewer.Text);
        Assert.Contains("Brew a smaller batch:", _brewer.Text, StringComparison.Ordinal);
        _brewer.Space().Enter();

        Assert.Empty(_brewer.Store.List());
    }

    [Fact]
    public void Where_the_chiller_is_the_trouble_nothing_is_said_of_a_thick_mash()
    {
        Choices().Down(4).Enter().Line("30");
        Assert.Contains("Cool with colder water:", _brewer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("how thick the mash is", _brewer.Text, StringComparison.Ordinal);
        _brewer.Enter().Line("10").Escape();
        _brewer.Down().Enter();
        Assert.Contains("how thick the mash is", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tap_room_and_sack_are_the_brewhouses_whatever_is_brewed_on_it()
    {
        Choices().Down(4).Enter().Line("14").Down().Enter().Line("21").Down().Enter().Line("12").Key(KeyName.Home).Down().Enter().Line("30").Escape();
        _brewer.Down().Enter();
        Assert.StartsWith("Water, room, grain and height are as last given", _brewer.Notice, StringComparison.Ordinal);
        Assert.Contains("Source water | 14.0 °C", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Room | 21.0 °C", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Grain | 12.0 °C", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Into the fermenter | 90.0 L", _brewer.Text, StringComparison.Ordinal);
        _brewer.Down(4).Enter().Line("13").Escape();
        _brewer.Key(KeyName.Up).Enter();
        Assert.Contains("Source water | 13.0 °C", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Into the fermenter | 30.0 L", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cursor_of_the_opening_page_stays_on_its_row_when_a_batch_comes_above_it()
    {
        var rows = Assert.IsType<ListScreen>(_brewer.Screen).Rows.Select(r => r.Cells[0]).ToList();
        var keys = rows.IndexOf("Keys");
        _brewer.Down(keys);
        _brewer.Store.Open(new BrewDeck.Core.Running.BatchOpened(Quayside.StartMs, Quayside.Plan, "test", false));
        _brewer.Wait(1);
        var list = Assert.IsType<ListScreen>(_brewer.Screen);
        Assert.Equal(("Keys", keys + 1), (list.Rows[list.Selected].Cells[0], list.Selected));
    }

    [Fact]
    public void Undo_is_named_only_where_there_is_something_to_take_back()
    {
        _brewer.Begin();
        Assert.DoesNotContain(_brewer.Deck.Keys, k => k.Key == "u");
        _brewer.GoOn();
        Assert.Contains(_brewer.Deck.Keys, k => k.Key == "u" && k.Does.StartsWith("undo", StringComparison.Ordinal));
    }

    [Fact]
    public void Digits_type_a_new_batch_volume_and_the_plan_is_drawn_anew()
    {
        Choices().Down().Keys("3");
        Assert.Equal("Into the fermenter?", _brewer.Question);
        _brewer.Line("30 L");

        Assert.Contains("> Into the fermenter | 30.0 L", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("30.0 L into the fermenter: gravity 1.048", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_turns_the_sparge_method_and_what_then_fits_no_more_is_said_at_once()
    {
        Choices().Down(2).Enter();
        Assert.Contains("> Sparge | batch", _brewer.Text, StringComparison.Ordinal);
        _brewer.Enter();
        Assert.Contains("> Sparge | none", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Brew a smaller batch:", _brewer.Text, StringComparison.Ordinal);

        _brewer.Key(KeyName.Up).Keys("3").Line("30");

        Assert.Contains("sparge 0.0 L", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wanted_finish_sets_the_times_of_the_plan()
    {
        Choices().Down(9).Enter().Line("17:00");
        Assert.Contains("> Finish by | 2026-01-01 17:00", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Start | as the finish asks", _brewer.Text, StringComparison.Ordinal);

        _brewer.Key(KeyName.Up).Enter().Line("9");

        Assert.Contains("> Start | 2026-01-01 09:00", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains("Finish by | no wish", _brewer.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1200 ft", "366 m")]
    [InlineData("2240", "2240 m")]
    public void The_height_above_the_sea_is_typed_in_either_unit(string text, string shown)
    {
        Choices().Down(7).Enter().Line(text);

        Assert.Contains($"> Above the sea | {shown}", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_alpha_acid_changes_what_is_weighed()
    {
        Choices();
        var before = Plan();

        _brewer.Down(10).Enter().Line("9");
        Assert.Contains("> Alpha acid of bittering | 9.0 % measured", _brewer.Text, StringComparison.Ordinal);

        Assert.NotEqual(before, Plan());
    }

    [Theory]
    [InlineData(0, "0", "outside")]
    [InlineData(0, "many", "many")]
    [InlineData(3, "99", "outside")]
    [InlineData(6, "9000", "-400 m to 5000 m")]
    [InlineData(6, "high", "such as 350 m")]
    [InlineData(7, "25:00", "time of day")]
    [InlineData(9, "80", "percent")]
    public void What_cannot_be_a_choice_says_why(int row, string text, string why)
    {
        Choices().Down(row + 1).Enter().Line(text);

        Assert.Contains(why, Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Escape_leads_back_one_screen_at_a_time_and_then_out()
    {
        Choices().Escape();
        Assert.StartsWith("Which recipe", _brewer.Screen.Title, StringComparison.Ordinal);
        _brewer.Escape().Escape();
        Assert.Equal("BrewDeck", _brewer.Screen.Title);
        Assert.False(_brewer.Session.Ended);
        _brewer.Escape();
        Assert.True(_brewer.Session.Ended);
    }

    [Fact]
    public void The_help_is_one_key_away_from_everywhere()
    {
        Choices().Keys("?");
        Assert.Equal("Keys", _brewer.Screen.Title);
        _brewer.Escape();
        Assert.EndsWith("the day", _brewer.Screen.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_is_scrolled_and_never_beyond_its_end()
    {
        Choices().Space().Key(KeyName.End);
        var last = Assert.IsType<TextScreen>(_brewer.Screen);
        Assert.InRange(last.Offset, 1, last.Lines.Length - 1);

        _brewer.Key(KeyName.PageDown);
        Assert.Equal(last.Offset, Assert.IsType<TextScreen>(_brewer.Screen).Offset);
        _brewer.Key(KeyName.Home);
        Assert.Equal(0, Assert.IsType<TextScreen>(_brewer.Screen).Offset);
    }

    private Player Choices() => _brewer.Enter().Enter().Enter();

    private string Plan()
    {
        _brewer.Space();
        var text = string.Join("\n", Assert.IsType<TextScreen>(_brewer.Screen).Lines);
        _brewer.Escape();
        return text;
    }
}
