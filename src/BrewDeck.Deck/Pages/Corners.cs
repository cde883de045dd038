using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The corner of a page that lies over a running brew: the clock, and when something is due there.</summary>
internal static class Corners
{
    public static string Of(Shell shell, DateTimeOffset now)
    {
        var clock = shell.Notation.Clock(now.ToUnixTimeMilliseconds());
        if (shell.Day is not { Over: false } day || day.Focus(now) is not { Act: not FocusAct.None } focus)
            return clock;
        var leftS = (focus.DueMs - day.Ms(now)) / 1000.0;
        return leftS > 0 ? shell.Notation.Text($"brew: due in {Durations.Short(leftS)} · {clock}") : shell.Notation.Text($"brew: hands due · {clock}");
    }

    public static DateTimeOffset? NextTick(Shell shell, DateTimeOffset now) =>
        shell.Day is { Over: false } ? now.AddSeconds(Math.Max(1, shell.Pace / 4)) : null;
}
