using BrewDeck.Deck.Keys;

namespace BrewDeck.Deck.Pages;

/// <summary>The keys that steer a rehearsal's clock.</summary>
internal static class RehearsalKeys
{
    private static readonly double[] Speeds = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 3600];

    public static void Strike(IRehearsalControls? controls, Command command)
    {
        if (controls is null)
            return;
        switch (command)
        {
            case Command.Faster:
                controls.Speed = Speeds.FirstOrDefault(s => s > controls.Speed, Speeds[^1]);
                break;
            case Command.Slower:
                controls.Speed = Speeds.LastOrDefault(s => s < controls.Speed, Speeds[0]);
                break;
            case Command.Pause:
                controls.Paused = !controls.Paused;
                break;
            case Command.Leap:
                controls.Leap();
                break;
        }
    }
}
