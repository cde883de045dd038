using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Tests.Deck;

/// <summary>A probe beside the keys: it offers, the brewer takes.</summary>
public class SessionProbeTests
{
    private readonly Player _brewer = new Player().Begin().Until("mash.rest-1");

    private string Hint => Entry.Hint.ToString();

    private string? Fault => Entry.Fault?.ToString();

    private EntryOverlay Entry => Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay);

    private IEnumerable<Reading> Taken => _brewer.Store[1].OfType<ReadingTaken>().Select(r => r.Reading);

    [Fact]
    public void Enter_takes_what_a_fresh_probe_offers()
    {
        Offer(65.44).Keys("t").Enter();
        Assert.StartsWith("probe 65.4 °C: enter takes it · expected ", Hint, StringComparison.Ordinal);

        _brewer.Line("");

        Assert.Equal([new Reading(ReadingKind.Temperature, "tun", 65.44, "probe 65.44")], Taken);
        Assert.Null(_brewer.Screen.Overlay);
    }

    [Fact]
    public void What_is_typed_counts_and_the_probe_only_stands_beside_it()
    {
        Offer(65.4).Keys("6");
        Assert.StartsWith("probe 65.4 °C · ", Hint, StringComparison.Ordinal);

        _brewer.Line("65.9");

        Assert.Equal([new Reading(ReadingKind.Temperature, "tun", 65.9, "65.9")], Taken);
    }

    [Fact]
    public void The_offer_follows_the_probe_while_it_is_asked()
    {
        Offer(65.4).Keys("t").Enter();

        Offer(65.6);

        Assert.StartsWith("probe 65.6 °C: enter takes it", Hint, StringComparison.Ordinal);
        _brewer.Key(KeyName.Tab);
        Assert.DoesNotContain("probe", Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_goes_stale_in_a_minute_and_is_not_taken()
    {
        Offer(65.4).Keys("t").Enter().Wait(61);
        Assert.StartsWith("probe 65.4 °C, stale · ", Hint, StringComparison.Ordinal);

        _brewer.Line("");

        Assert.Equal("The probe's value is stale, older than a minute: type a value.", Fault);
        Assert.Empty(Taken);
    }

    [Fact]
    public void A_value_that_was_measured_long_ago_comes_stale()
    {
        _brewer.Send(new Input.Offered([new ProbeValue(ReadingKind.Temperature, "tun", 65.4, TimeSpan.FromDays(400_000))])).Keys("t").Enter();

        Assert.StartsWith("probe 65.4 °C, stale · ", Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(85)]
    [InlineData(-127)]
    [InlineData(400)]
    public void An_absurd_value_is_not_taken(double value)
    {
        Offer(value).Keys("t").Enter().Line("");

        Assert.Contains(" °C, absurd · ", Hint, StringComparison.Ordinal);
        Assert.Equal("The probe's value is absurd here: look at the probe, and type a value.", Fault);
        Assert.Empty(Taken);
    }

    [Fact]
    public void A_loose_wire_is_noisy_until_it_has_been_quiet_for_a_minute()
    {
        foreach (var value in (double[])[65.4, 62.0, 65.5, 65.4])
            Offer(value).Wait(5);
        _brewer.Keys("t").Enter().Line("");
        Assert.StartsWith("probe 65.4 °C, noisy · ", Hint, StringComparison.Ordinal);
        Assert.Empty(Taken);

        for (var i = 0; i < 12; i++)
            Offer(65.4).Wait(5);

        Assert.StartsWith("probe 65.4 °C: enter takes it", Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_steady_rise_is_no_noise()
    {
        for (var i = 0; i < 12; i++)
            Offer(62 + (0.3 * i)).Wait(5);

        _brewer.Keys("t").Enter();

        Assert.StartsWith("probe 65.3 °C: enter takes it", Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_is_set_back_makes_what_was_heard_stale_and_spoils_nothing_after()
    {
        Offer(61).Keys("t").Enter();
        _brewer.Now = _brewer.Now.AddSeconds(-30);
        _brewer.Send(new Input.Tick());
        Assert.StartsWith("probe 61.0 °C, stale · ", Hint, StringComparison.Ordinal);

        Offer(65.4);

        Assert.StartsWith("probe 65.4 °C: enter takes it", Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void An_enter_that_bounces_off_the_choice_takes_nothing()
    {
        Offer(65.4).Keys("t").Enter();
        _brewer.Now = _brewer.Now.AddMilliseconds(80);

        _brewer.Send(new Input.Submitted(""));

        Assert.Empty(Taken);
        Assert.Null(Fault);
    }

    [Fact]
    public void A_minute_is_one_of_the_wall_in_a_rehearsal()
    {
        var knobs = new RehearsalKnobs { Speed = 1 };
        var brewer = new Player(rehearsal: knobs).Begin().Until("mash.rest-1");
        knobs.Speed = 60;
        brewer.Send(new Input.Offered([Value(65.4)])).Wait(59 * 60).Keys("t").Enter();
        Assert.Contains("probe 65.4 °C: enter takes it", brewer.Text, StringComparison.Ordinal);

        brewer.Wait(2 * 60);

        Assert.Contains("probe 65.4 °C, stale", brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Trouble_with_a_probe_is_a_note_told_once_that_displaces_nothing()
    {
        _brewer.Keys("6").Line("65.4");
        var said = _brewer.Notice;
        _brewer.Send(new Input.Offered([Value(65) with { Vessel = "tn" }], 1, "it is no JSON")).Send(new Input.ProbeGone());
        Assert.Equal(said, _brewer.Notice);

        _brewer.Keys("?");
        Assert.Equal("A line of the probe is passed over: it is no JSON. Right is {\"vessel\":\"tun\",\"temperature_c\":66.4}.", _brewer.Notice);
        _brewer.Keys("q");
        Assert.StartsWith("The probe measures \"tn\", which is no vessel here; these are ", _brewer.Notice, StringComparison.Ordinal);
        _brewer.Keys("?");
        Assert.Equal("The probe is not there; readings are typed until it comes back.", _brewer.Notice);
        _brewer.Keys("q").Send(new Input.Offered([Value(65.4) with { Age = TimeSpan.FromMinutes(2) }], 3, "it is no JSON")).Keys("t").Enter();

        Assert.Equal("", _brewer.Notice);
        Assert.StartsWith("probe 65.4 °C, stale (3 lines not read) · ", Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_probe_an_empty_line_asks_for_a_value()
    {
        _brewer.Keys("t").Enter().Line("");

        Assert.Equal("Type a value.", Fault);
        Assert.DoesNotContain("probe", Hint, StringComparison.Ordinal);
    }

    private static ProbeValue Value(double value) => new(ReadingKind.Temperature, "tun", value, TimeSpan.Zero);

    private Player Offer(double value) => _brewer.Send(new Input.Offered([Value(value)]));
}
