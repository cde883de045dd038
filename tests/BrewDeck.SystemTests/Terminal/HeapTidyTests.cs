using BrewDeck.Terminal;

namespace BrewDeck.SystemTests.Terminal;

public class HeapTidyTests
{
    [Fact]
    public void It_collects_when_enough_has_piled_up_since_the_start_and_then_over_what_was_left()
    {
        var bytes = HeapTidy.MostPiledUp - 1;
        var collected = 0;
        var tidy = new HeapTidy(() => bytes, () =>
        {
            collected++;
            bytes = 12 << 20;
        });

        tidy.Tidy();
        Assert.Equal(0, collected);

        bytes++;
        tidy.Tidy();
        Assert.Equal(1, collected);

        bytes += HeapTidy.MostPiledUp - 1;
        tidy.Tidy();
        Assert.Equal(1, collected);
    }
}
