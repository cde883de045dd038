using System.Collections.Immutable;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.SystemTests.Terminal;

public sealed class HourLinesTests
{
    /// <summary>On a long day there is no room for each hour: then every second has its clock, and none is left out between two others.</summary>
    [Theory]
    [InlineData(5.5)]
    [InlineData(8)]
    [InlineData(12.3)]
    [InlineData(16)]
    [InlineData(24)]
    public void The_clocks_below_a_drawing_keep_the_same_step(double hours)
    {
        var marks = Enumerable.Range(0, (int)hours + 1).Select(h => new HourMark(600 + 3600 * h, $"{(6 + h) % 24:00}:00")).Where(m => m.AtS <= 3600 * hours).ToImmutableArray();
        var shown = HourLines.Of(new HourAxis(3600 * hours, null, marks), 6, 70)[1].ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(c => marks.ToList().FindIndex(m => m.Clock == c)).ToList();

        Assert.True(shown.Count >= 4, string.Join(" ", shown));
        Assert.Single(shown.Zip(shown.Skip(1)).Select(p => p.Second - p.First).Distinct());
    }
}
