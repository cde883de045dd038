using BrewDeck.Terminal.Tty;
using static BrewDeck.Terminal.Tty.Doorbell;

namespace BrewDeck.SystemTests.Terminal;

public sealed class DoorbellTests
{
    /// <summary>Ctrl-Z and then a hang-up: the stop came while the shell was given time to stop the program, and the loop slept on.</summary>
    [Fact]
    public async Task What_is_said_while_the_loop_pauses_wakes_it_afterwards()
    {
        using var bell = new Doorbell();
        bell.Say(News.StopAsked);
        bell.Pause(TimeSpan.Zero);

        await Task.Run(() => bell.Wait(null), TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);

        Assert.Equal(News.StopAsked, bell.Take());
    }
}
