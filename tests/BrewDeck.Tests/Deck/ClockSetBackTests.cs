namespace BrewDeck.Tests.Deck;

/// <summary>Somebody, or a time server, sets the computer's clock back while a batch runs.</summary>
public class ClockSetBackTests
{
    private const string Said = "The computer's clock went back by 2 h";

    [Fact]
    public void It_is_said_once_and_again_only_after_the_clock_has_caught_up()
    {
        var brewer = new Player().Begin();
        brewer.GoOn();
        brewer.Wait(600);
        brewer.Now = brewer.Now.AddHours(-2);
        Assert.StartsWith(Said, brewer.Wait(1).Notice, StringComparison.Ordinal);
        brewer.Keys("?").Escape();
        Assert.DoesNotContain(Said, brewer.Wait(1).Notice, StringComparison.Ordinal);
        brewer.Now = brewer.Now.AddHours(2);
        brewer.Wait(1).Keys("?").Escape();
        brewer.Now = brewer.Now.AddHours(-2);
        Assert.StartsWith(Said, brewer.Wait(1).Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_start_before_the_last_entry_says_it_and_seconds_are_let_be()
    {
        var store = new MemoryStore();
        var brewer = new Player(store).Begin();
        brewer.GoOn();
        var last = brewer.Now;
        Assert.StartsWith(Said, new Player(store, at: last.AddHours(-2)).Notice, StringComparison.Ordinal);
        Assert.DoesNotContain("clock", new Player(store, at: last.AddSeconds(-30)).Notice, StringComparison.Ordinal);
    }
}
