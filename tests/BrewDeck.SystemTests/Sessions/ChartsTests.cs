using System.Text;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>The charts while a day runs, and those of the same batch when it is looked back at.</summary>
public sealed class ChartsTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_day_is_drawn_while_it_runs_and_afterwards(int columns, int rows)
    {
        using var at = new AtTheKeys(columns, rows);
        var brewer = new BrewerByKeys(at, Space, BrewerByKeys.Decimal, (step, _) => step == StepKind.Lauter ? -1.3 : 0);
        brewer.Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Space);
        brewer.Until(StepKind.Boil);
        var seen = new StringBuilder();

        Turn(at, seen, "the day that runs");
        at.Strike("x").Line("abort").Strike("q");
        at.Pick("Batches").Strike(Enter);
        Turn(at, seen, "the batch that was given up");

        SessionGoldens.Same($"charts-{columns}x{rows}", seen.ToString());
    }

    [Fact]
    public void Each_key_of_the_charts()
    {
        using var at = new AtTheKeys(80, 24);
        new BrewerByKeys(at, Space, BrewerByKeys.Decimal).Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Space);
        at.Strike("c");
        (string Key, int Selected, int Offset)[] story =
        [
            (Space, 1, 0), (Enter, 2, 0), ("\e[C", 3, 0), ("\t", 0, 0), (Left, 3, 0), ("2", 1, 0), ("9", 1, 0),
            (Down, 1, 1), (PageDown, 1, 11), (Up, 1, 10), ("\e[5~", 1, 0), ("\e[F", 1, int.MaxValue), ("\e[H", 1, 0),
        ];

        foreach (var (key, selected, offset) in story)
        {
            at.Strike(key);
            var screen = Assert.IsType<ChartScreen>(at.Session.Screen);
            Assert.Equal(selected, screen.Selected);
            Assert.Equal(Math.Min(offset, screen.Drawings.OfType<TimetableDrawing>().Single().Rows.Length - 1), screen.Offset);
        }
        at.Strike("?");
        Assert.Equal("Keys", at.Session.Screen.Title);
        at.Strike("q").Strike("q");
        Assert.IsType<DeckScreen>(at.Session.Screen);
    }

    private static void Turn(AtTheKeys at, StringBuilder seen, string what)
    {
        at.Strike("c");
        var drawings = Assert.IsType<ChartScreen>(at.Session.Screen).Drawings.Length;
        for (var i = 1; i <= drawings; i++)
        {
            seen.Append("=== ").Append(what).Append(' ').Append(i).Append('\n').Append(at.Text);
            at.Strike(Space);
        }
        at.Strike("q");
    }
}
