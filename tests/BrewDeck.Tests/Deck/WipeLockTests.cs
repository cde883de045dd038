using BrewDeck.Deck;
using BrewDeck.Deck.Keys;

namespace BrewDeck.Tests.Deck;

public class WipeLockTests
{
    private static readonly DateTimeOffset T0 = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs);

    [Theory]
    [InlineData("dry", false)]
    [InlineData("DRY", false)]
    [InlineData("asdfdry", false)]
    [InlineData("dr.y", true)]
    [InlineData("ddrryy", true)]
    [InlineData("www", true)]
    [InlineData("dr", true)]
    public void Only_the_word_unlocks(string keys, bool locked)
    {
        var wiped = Locked();

        for (var i = 0; i < keys.Length; i++)
            wiped.Strike(KeyStroke.Of(keys[i]), T0.AddMilliseconds(200 * i));

        Assert.Equal(locked, wiped.Locked);
    }

    [Fact]
    public void A_word_typed_over_minutes_is_no_word()
    {
        var wiped = Locked();

        for (var i = 0; i < wiped.Word.Length; i++)
            wiped.Strike(KeyStroke.Of(wiped.Word[i]), T0.AddSeconds(10 * i));

        Assert.True(wiped.Locked);
    }

    private static WipeLock Locked()
    {
        var wiped = new WipeLock("dry");
        wiped.Lock();
        return wiped;
    }
}
