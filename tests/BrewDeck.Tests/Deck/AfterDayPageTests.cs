using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Deck;

public sealed class AfterDayPageTests
{
    private readonly MemoryStore _store = new();
    private readonly Session _session;
    private DateTimeOffset _now;

    public AfterDayPageTests()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunToEnd();
        _store.Open((BatchOpened)day.Events[0] with { Rehearsed = false });
        foreach (var happened in day.Events.Skip(1))
            _store.Append(1, happened);
        _now = DateTimeOffset.FromUnixTimeMilliseconds(day.NowMs).AddDays(6);
        _session = new Session(new SessionPorts(_store, new TwoHouses()), new SessionSettings(), _now);
    }

    [Fact]
    public void What_is_due_stands_on_the_opening_screen_and_leads_to_the_batch()
    {
        Assert.StartsWith("Overdue: gravity, batch 1", Rows()[0], StringComparison.Ordinal);
        var theDayBefore = new Session(new SessionPorts(_store, new TwoHouses()), new SessionSettings(), _now.AddDays(-1));
        Assert.StartsWith("Due today: gravity, batch 1", ((ListScreen)theDayBefore.Screen).Rows[0].Cells[0], StringComparison.Ordinal);
        Strike(KeyName.Enter);
        Assert.StartsWith("Batch 1 after the day", _session.Screen.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gravity_typed_at_a_temperature_is_corrected_kept_and_shown()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit("1.010@30");

        var read = Assert.IsType<FermenterRead>(_store.Read(1)[^1]);
        Assert.InRange(read.Reading.Value, 1.0115, 1.0135);
        Assert.Contains(Details(), d => d.Contains("alcohol by volume", StringComparison.Ordinal));
        Strike(KeyName.Escape);
        Assert.DoesNotContain(Rows(), r => r.Contains("gravity", StringComparison.Ordinal));
    }

    [Fact]
    public void A_refractometer_and_undo()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit("6.2bx");
        Assert.Equal(6.2, Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading.Brix);
        _session.Receive(new Input.Key(KeyStroke.Of('u')), Later());
        Assert.IsType<Undone>(_store.Read(1)[^1]);
        _session.Receive(new Input.Key(KeyStroke.Of('u')), Later());
        Assert.IsType<Undone>(_store.Read(1)[^1]);
        Assert.Contains("Nothing written after the day", _session.Screen.Notice!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_misread_gravity_gives_way_to_the_one_that_is_above_it()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit("1.002");
        Strike(KeyName.Enter);
        Submit("1.020");
        Strike(KeyName.Down);
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Assert.IsType<Undone>(_store.Read(1)[^2]);
        Assert.Equal(1.020, Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading.Value, 1e-9);
        Assert.Equal([1.020], RunFold.Of(_store.Read(1)).Ferment.Readings.Select(r => r.Reading.Value));
    }

    /// <summary>12 bx of wort kept apart made 1.037 of a beer that had been at 1.012.</summary>
    [Fact]
    public void A_gravity_that_rises_is_asked_about_and_taken_when_confirmed()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit("1.012");
        Strike(KeyName.Enter);
        Submit("1.014");
        Strike(KeyName.Enter);
        Submit("12bx");
        Assert.Contains("is higher than the last reading, 1.014. Take it?", _session.Screen.Overlay!.Question, StringComparison.Ordinal);
        Strike(KeyName.Enter);
        Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
        Assert.Equal(2, _store.Read(1).OfType<FermenterRead>().Count());

        Submit("12bx");
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Assert.Equal(12, _store.Read(1).OfType<FermenterRead>().Last().Reading.Brix);
    }

    [Fact]
    public void Nonsense_is_asked_again_in_one_line()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit("wet");
        var overlay = Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
        Assert.NotNull(overlay.Fault);
        Assert.Equal(RunStatus.Complete, _store.List()[0].Status);
        Assert.IsNotType<FermenterRead>(_store.Read(1)[^1]);
    }

    [Theory]
    [InlineData("5 g Citra", 5, "g", "Citra")]
    [InlineData("5g Citra", 5, "g", "Citra")]
    [InlineData("1,5kg sour cherries", 1.5, "kg", "sour cherries")]
    [InlineData("2 each vanilla pod", 2, "each", "vanilla pod")]
    public void An_addition_is_read_with_its_unit_apart_or_glued_to_the_number(string typed, double amount, string unit, string name)
    {
        Strike(KeyName.Enter);
        Choose("Another addition");
        Submit(typed);
        Assert.Equal(new DatedAddition(name, amount, unit), RunFold.Of(_store.Read(1)).Ferment.Additions[^1].Addition);
    }

    [Theory]
    [InlineData("5g")]
    [InlineData("g Citra")]
    [InlineData("0g Citra")]
    public void An_addition_without_one_of_the_three_is_asked_again(string typed)
    {
        Strike(KeyName.Enter);
        Choose("Another addition");
        Submit(typed);
        Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        Assert.Empty(RunFold.Of(_store.Read(1)).Ferment.Additions);
    }

    [Fact]
    public void A_keg_is_asked_for_piece_by_piece()
    {
        Strike(KeyName.Enter);
        Choose("Keg");
        Submit("38");
        Submit("2.4");
        Assert.Contains("°C", _session.Screen.Overlay!.Question, StringComparison.Ordinal);
        Submit("40");
        Assert.Contains("0 °C to 30 °C", Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        Submit("4");
        var pressure = Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay);
        Assert.Contains("bar gauge (above the air's)", pressure.Question, StringComparison.Ordinal);
        Assert.Contains(pressure.Lines, l => l.ToString().Contains("rated pressure", StringComparison.Ordinal) && l.ToString().Contains("relief valve", StringComparison.Ordinal));
        Assert.Empty(_store.Read(1).OfType<BeerPackaged>());
        Strike(KeyName.Enter);

        var packaged = Assert.IsType<BeerPackaged>(_store.Read(1)[^1]).Packaging;
        Assert.Equal((38, 2.4, 4), (packaged.VolumeL, packaged.Co2Volumes, packaged.TempC));
        Assert.NotNull(packaged.PressurePa);
        Assert.Contains(Details(), d => d.Contains("bar gauge at 4.0 °C", StringComparison.Ordinal));
    }

    /// <summary>A keg of the rest once wiped the bottles off the page.</summary>
    [Fact]
    public void Bottles_and_a_keg_of_one_batch_both_stand_on_the_page_and_undo_takes_the_last()
    {
        Strike(KeyName.Enter);
        Keg("19");
        Assert.Contains(Rows(), r => r.StartsWith("Packaging is done: the rest is lees", StringComparison.Ordinal));
        Assert.Contains(Rows(), r => r.StartsWith("Date: packaging", StringComparison.Ordinal));
        Keg("18");
        Assert.Contains(Details(), d => d.Contains("into keg 19.0 L", StringComparison.Ordinal));
        Assert.Contains(Details(), d => d.Contains("into keg 18.0 L", StringComparison.Ordinal));
        Assert.Contains(Details(), d => d.Contains("37.0 L of ", StringComparison.Ordinal));
        Assert.DoesNotContain(Rows(), r => r.StartsWith("Date: packaging", StringComparison.Ordinal) || r.StartsWith("Packaging is done", StringComparison.Ordinal));

        _session.Receive(new Input.Key(KeyStroke.Of('u')), Later());
        Assert.Contains(Details(), d => d.Contains("into keg 19.0 L", StringComparison.Ordinal));
        Assert.DoesNotContain(Details(), d => d.Contains("into keg 18.0 L", StringComparison.Ordinal));
        Choose("Packaging is done");
        Assert.Contains(Details(), d => d.Contains("packaging done: the rest is lees", StringComparison.Ordinal));
        Assert.DoesNotContain(Rows(), r => r.StartsWith("Date: packaging", StringComparison.Ordinal));
    }

    [Fact]
    public void More_beer_than_there_is_is_asked_again_before_anything_else()
    {
        Strike(KeyName.Enter);
        Choose("Keg");
        Submit("500");
        Assert.Contains("500.0 L are more than is there", Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay).Question, StringComparison.Ordinal);
        Strike(KeyName.Enter);
        Submit("60");
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Submit("2.4");
        Submit("4");
        Strike(KeyName.Enter);
        Assert.Equal(60, Assert.IsType<BeerPackaged>(_store.Read(1)[^1]).Packaging.VolumeL);
    }

    [Fact]
    public void Much_carbonation_asks_whether_the_bottles_are_rated_for_it()
    {
        Strike(KeyName.Enter);
        Choose("Bottles");
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Submit("20 L");
        Submit("3.4");
        var ask = Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay);
        Assert.Contains("rated for 3.4 volumes", ask.Question, StringComparison.Ordinal);
        Assert.Contains(ask.Lines, l => l.ToString().Contains("common practice, no source", StringComparison.Ordinal));
        Strike(KeyName.Enter);
        Submit("4.6");
        Assert.Contains("no bottle", Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        Submit("2.9");
        Assert.Contains("Warmest", _session.Screen.Overlay!.Question, StringComparison.Ordinal);
        Submit("35");
        Assert.Contains("0 °C to 25 °C", Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A day without its year, month and day is no day; noon of the day meant.</summary>
    [Fact]
    public void A_reading_may_be_of_another_day()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        var day = _now.UtcDateTime.Date.AddDays(-2);
        foreach (var nonsense in (string[])["1.020 2026-13-40", $"1.020 {_now.AddDays(1):yyyy-MM-dd}", $"1.020 {_now.AddDays(-9):yyyy-MM-dd}"])
        {
            Submit(nonsense);
            Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        }
        Submit($"1.020 {day:yyyy-MM-dd}");
        var read = Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading;
        Assert.Equal((1.020, new DateTimeOffset(day.AddHours(12), TimeSpan.Zero).ToUnixTimeMilliseconds()), (read.Value, read.TakenMs));
        Assert.Contains(Details(), d => d.Contains($"{day:yyyy-MM-dd} 12:00", StringComparison.Ordinal) && d.Contains("gravity 1.020", StringComparison.Ordinal));
        Strike(KeyName.Enter);
        Submit($"1.019 {_now:yyyy-MM-dd}");
        Assert.Null(Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading.TakenMs);
    }

    [Fact]
    public void A_gravity_that_no_yeast_reaches_so_soon_is_asked_about()
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        var pitchDay = DateTimeOffset.FromUnixTimeMilliseconds(RunFold.Of(_store.Read(1)).Ferment.PitchedMs!.Value);
        Submit($"1.015 {pitchDay:yyyy-MM-dd}");
        Assert.Contains("% fermented", Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay).Question, StringComparison.Ordinal);
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Assert.Equal(1.015, Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading.Value);
    }

    /// <summary>It was a mash's: 66.5.</summary>
    [Fact]
    public void The_example_of_a_fermenters_temperature_is_one_a_fermenter_can_have()
    {
        Strike(KeyName.Enter);
        Choose("Temperature");
        var example = Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Hint.ToString().Split(' ')[2];
        Submit(example);
        Assert.Equal(18.5, Assert.IsType<FermenterRead>(_store.Read(1)[^1]).Reading.Value);
    }

    [Fact]
    public void Bottles_wait_until_the_gravity_is_steady_unless_the_brewer_insists()
    {
        Strike(KeyName.Enter);
        Choose("Bottles");
        var warned = Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay);
        Assert.Equal((0, 2), (warned.Selected, warned.Options.Length));
        Assert.Contains(warned.Lines, l => l.ToString().Contains("burst", StringComparison.Ordinal));
        Strike(KeyName.Enter);
        Assert.Null(_session.Screen.Overlay);
        Assert.Empty(_store.Read(1).OfType<BeerPackaged>());
    }

    [Theory]
    [InlineData(PrimingSugar.TableSugar)]
    [InlineData(PrimingSugar.Dextrose)]
    [InlineData(PrimingSugar.Glucose)]
    public void Bottles_are_primed_with_the_sugar_chosen(PrimingSugar sugar)
    {
        Strike(KeyName.Enter);
        Choose("Bottles");
        Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Submit("38 L");
        foreach (var nonsense in (string[])["much", "0.4", "5.1", "NaN", "-2"])
        {
            Submit(nonsense);
            Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        }
        Submit("2,4");
        Submit("hot");
        Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        Submit("21");
        Assert.Equal(3, Assert.IsType<ChoiceOverlay>(_session.Screen.Overlay).Options.Length);
        for (var i = 0; i < (int)sugar; i++)
            Strike(KeyName.Down);
        Strike(KeyName.Enter);

        Assert.Equal(Packaging.InBottles(38, 2.4, 21, sugar), Assert.IsType<BeerPackaged>(_store.Read(1)[^1]).Packaging);
    }

    /// <summary>Noon of the day meant, in the zone of the deck, which is UTC here.</summary>
    [Theory]
    [InlineData("today", 0)]
    [InlineData("Tomorrow", 1)]
    [InlineData("3 d", 3)]
    [InlineData("+10 d", 10)]
    [InlineData("2 weeks", 14)]
    public void A_date_may_be_typed_as_days_from_now(string text, int days)
    {
        Strike(KeyName.Enter);
        Choose("Date for another addition");
        Submit("oak chips");
        Submit(text);
        var due = Assert.IsType<DateSet>(_store.Read(1)[^1]).Item;
        Assert.Equal("oak chips", due.Name);
        Assert.Equal(_now.UtcDateTime.Date.AddDays(days).AddHours(12), DateTimeOffset.FromUnixTimeMilliseconds(due.DueMs).UtcDateTime);
    }

    [Theory]
    [InlineData("soon")]
    [InlineData("2026-02-30")]
    [InlineData("1999-01-01")]
    [InlineData("500 d")]
    public void A_date_that_cannot_be_meant_is_asked_again(string text)
    {
        Strike(KeyName.Enter);
        Choose("Date for another addition");
        Submit(" ");
        Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        Submit("oak chips");
        Submit(text);
        Assert.Contains("date", Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        Assert.Empty(_store.Read(1).OfType<DateSet>());
    }

    [Theory]
    [InlineData("4 clean, dry", 4, "clean, dry")]
    [InlineData("5: hops", 5, "hops")]
    [InlineData("6 pints gone", null, "6 pints gone")]
    [InlineData("still young", null, "still young")]
    [InlineData("3", 3, "")]
    [InlineData("4/5 bright, thin", 4, "bright, thin")]
    [InlineData("2 / 5", 2, "")]
    [InlineData("1,thin", 1, "thin")]
    public void A_tasting_is_rated_by_a_leading_figure(string text, int? rating, string note)
    {
        Strike(KeyName.Enter);
        Choose("Tasting");
        Submit(text);
        var tasted = Assert.IsType<BeerTasted>(_store.Read(1)[^1]);
        Assert.Equal((rating, note), (tasted.Rating, tasted.Text));
    }

    [Theory]
    [InlineData("8")]
    [InlineData("0")]
    [InlineData("3.5")]
    [InlineData("8/10")]
    [InlineData("4/10 bright")]
    [InlineData("4.5 clean")]
    [InlineData("4,5 clean")]
    public void A_number_alone_that_is_no_rating_is_asked_again(string text)
    {
        Strike(KeyName.Enter);
        Choose("Tasting");
        Submit(text);
        Assert.Contains("1 to 5", Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        Assert.Empty(_store.Read(1).OfType<BeerTasted>());
    }

    [Theory]
    [InlineData("33bx")]
    [InlineData("bx")]
    [InlineData("1.010@warm")]
    [InlineData("1.010@20@20")]
    public void A_gravity_that_no_instrument_shows_is_asked_again(string text)
    {
        Strike(KeyName.Enter);
        Strike(KeyName.Enter);
        Submit(text);
        Assert.NotNull(Assert.IsType<EntryOverlay>(_session.Screen.Overlay).Fault);
        Assert.Empty(_store.Read(1).OfType<FermenterRead>());
    }

    [Fact]
    public void The_reckoner_opens_over_anything_and_goes_back_there()
    {
        Strike(KeyName.Enter);
        var before = _session.Screen.Title;
        _session.Receive(new Input.Key(KeyStroke.Of('k')), Later());
        Assert.Equal("Reckoner", _session.Screen.Title);
        Strike(KeyName.Enter);
        Assert.Contains(Details(), d => d.StartsWith("Still wanted: reading", StringComparison.Ordinal));
        Strike(KeyName.Enter);
        Submit("1.046");
        Strike(KeyName.Enter);
        Submit("40");
        Assert.Contains(Details(), d => d.StartsWith("gravity at 20 °C: 1.05", StringComparison.Ordinal));
        Strike(KeyName.Escape);
        Strike(KeyName.Escape);
        Assert.Equal(before, _session.Screen.Title);
    }

    private void Keg(string litres)
    {
        Choose("Keg");
        Submit(litres);
        Submit("2.4");
        Submit("4");
        Strike(KeyName.Enter);
    }

    private void Choose(string row)
    {
        while (!Rows()[Selected].StartsWith(row, StringComparison.Ordinal))
            Strike(KeyName.Down);
        Strike(KeyName.Enter);
    }

    private int Selected => ((ListScreen)_session.Screen).Selected;

    private string[] Rows() => [.. ((ListScreen)_session.Screen).Rows.Select(r => string.Join(" ", r.Cells))];

    private string[] Details() => [.. ((ListScreen)_session.Screen).Details.Select(d => d.ToString())];

    private void Strike(KeyName key) => _session.Receive(new Input.Key(new KeyStroke(key)), Later());

    private void Submit(string text) => _session.Receive(new Input.Submitted(text), Later());

    private DateTimeOffset Later() => _now = _now.AddSeconds(5);
}
