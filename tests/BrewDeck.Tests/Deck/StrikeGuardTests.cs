using BrewDeck.Deck;
using BrewDeck.Deck.Keys;

namespace BrewDeck.Tests.Deck;

public class StrikeGuardTests
{
    private static readonly DateTimeOffset T0 = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs);
    private static readonly KeyStroke Space = new(KeyName.Space);

    private readonly StrikeGuard _guard = new(TimeSpan.FromMilliseconds(400), TimeSpan.FromMilliseconds(1200));

    [Fact]
    public void A_double_strike_counts_once()
    {
        Assert.True(Lets(Space, 0));
        Assert.False(Lets(Space, 399));
        Assert.True(Lets(Space, 800));
    }

    [Fact]
    public void A_held_key_counts_once()
    {
        Assert.True(Lets(Space, 0));
        for (var ms = 30; ms < 3000; ms += 30)
            Assert.False(Lets(Space, ms));
    }

    [Fact]
    public void Another_key_counts_at_once()
    {
        Assert.True(Lets(Space, 0));
        Assert.True(Lets(KeyStroke.Of('u'), 50));
    }

    [Fact]
    public void After_a_step_change_only_the_big_key_rests()
    {
        _guard.LeaveAlone(T0);

        Assert.False(Lets(Space, 1199));
        Assert.True(Lets(KeyStroke.Of('n'), 1199));
        Assert.True(Lets(Space, 1600));
    }

    [Fact]
    public void The_enter_that_sent_an_entry_does_not_go_on_as_well()
    {
        _guard.Submitted(T0);

        Assert.False(Lets(new KeyStroke(KeyName.Enter), 100));
    }

    [Fact]
    public void A_clock_that_was_set_back_locks_nothing()
    {
        _guard.LeaveAlone(T0);
        Assert.True(Lets(Space, -3_600_000));
    }

    private bool Lets(KeyStroke stroke, double ms) => _guard.Lets(stroke, T0.AddMilliseconds(ms));
}
