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

    [Fact]
    public void A_keg_is_asked_for_piece_by_piece()
    {
        Strike(KeyName.Enter);
        while (!Rows()[Selected].StartsWith("Keg", StringComparison.Ordinal))
            Strike(KeyName.Down);
        Strike(KeyName.Enter);
        Submit("38");
        Submit("2.4");
        Submit("4");

        var packaged = Assert.IsType<BeerPackaged>(_store.Read(1)[^1]).Packaging;
        Assert.Equal((38, 2.4, 4), (packaged.VolumeL, packaged.Co2Volumes, packaged.TempC));
        Assert.NotNull(packaged.PressurePa);
    }

    [Fact]
    public void The_reckoner_opens_over_anything_and_goes_back_there()
    {
        Strike(KeyName.Enter);
        var before = _session.Screen.Title;
        _session.Receive(new Input.Key(KeyStroke.Of('k')), Later());
        Assert.Equal("Reckoner", _session.Screen.Title);
        Strike(KeyName.Enter);
        Assert.Contains(Details(), d => d.StartsWith("Type reads", StringComparison.Ordinal));
        Strike(KeyName.Enter);
        Submit("1.046");
        Strike(KeyName.Enter);
        Submit("40");
        Assert.Contains(Details(), d => d.StartsWith("gravity at 20 °C: 1.05", StringComparison.Ordinal));
        Strike(KeyName.Escape);
        Strike(KeyName.Escape);
        Assert.Equal(before, _session.Screen.Title);
    }

    private int Selected => ((ListScreen)_session.Screen).Selected;

    private string[] Rows() => [.. ((ListScreen)_session.Screen).Rows.Select(r => string.Join(" ", r.Cells))];

    private string[] Details() => [.. ((ListScreen)_session.Screen).Details.Select(d => d.ToString())];

    private void Strike(KeyName key) => _session.Receive(new Input.Key(new KeyStroke(key)), Later());

    private void Submit(string text) => _session.Receive(new Input.Submitted(text), Later());

    private DateTimeOffset Later() => _now = _now.AddSeconds(5);
}
