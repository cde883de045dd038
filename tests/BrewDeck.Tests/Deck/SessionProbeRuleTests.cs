using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;

namespace BrewDeck.Tests.Deck;

/// <summary>A probe whose temperatures are taken by rule.</summary>
public class SessionProbeRuleTests
{
    private readonly Player _brewer = new Player(byRule: ReadingKind.Temperature).Begin().Until("mash.rest-1");

    private IEnumerable<Reading> Taken => _brewer.Store[1].OfType<ReadingTaken>().Select(r => r.Reading);

    [Fact]
    public void A_quiet_value_near_the_expected_is_taken_once_and_the_record_says_how()
    {
        Offers(66.1, 12);

        Assert.Equal([new Reading(ReadingKind.Temperature, "tun", 66.1, "probe 66.1, by rule")], Taken);
        Assert.Contains("mash tun temperature 66.1 °C (probe, by rule)", _brewer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_said_when_it_is_taken()
    {
        Offers(66.1, 5);

        Assert.StartsWith("By rule from the probe: Mash tun temperature 66.1 °C", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_takes_it_back_for_good()
    {
        Offers(66.1, 6);
        _brewer.Keys("u");
        Assert.Empty(_brewer.Session.State!.Readings);

        Offers(66.1, 12);

        Assert.Empty(_brewer.Session.State!.Readings);
    }

    [Fact]
    public void Not_before_it_has_been_quiet_for_a_while()
    {
        Offers(66.1, 4);
        Assert.Empty(Taken);
    }

    [Theory]
    [InlineData(62.5)] // off: the brewer should look
    [InlineData(20)] // absurd
    public void Not_what_lies_apart_from_the_expected(double value)
    {
        Offers(value, 12);
        Assert.Empty(Taken);
    }

    [Fact]
    public void Not_what_is_noisy()
    {
        for (var i = 0; i < 12; i++)
            Offers(66 + (i % 2 == 0 ? 1.5 : -1.5), 1);
        Assert.Empty(Taken);
    }

    [Fact]
    public void Not_while_something_is_typed_or_asked_and_not_what_was_typed_already()
    {
        _brewer.Keys("6");
        Offers(66.1, 12);
        Assert.Empty(Taken);
        _brewer.Line("65.9");

        Offers(66.1, 12);

        Assert.Equal("65.9", Assert.Single(Taken).AsTyped);
    }

    [Fact]
    public void Not_of_a_kind_that_no_rule_is_for()
    {
        var brewer = new Player(byRule: ReadingKind.Gravity).Begin().Until("mash.rest-1");
        for (var i = 0; i < 12; i++)
            brewer.Send(new Input.Offered([new ProbeValue(ReadingKind.Temperature, "tun", 66.1, TimeSpan.Zero)])).Wait(5);
        Assert.Empty(brewer.Session.State!.Readings);
    }

    private void Offers(double value, int times)
    {
        for (var i = 0; i < times; i++)
            _brewer.Send(new Input.Offered([new ProbeValue(ReadingKind.Temperature, "tun", value, TimeSpan.Zero)])).Wait(5);
    }
}
