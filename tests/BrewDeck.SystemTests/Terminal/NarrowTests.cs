using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The smallest screen that has all of the deck: what must be read is whole, and what is left out is told.</summary>
public sealed class NarrowTests
{
    private static readonly DeckScreen Screen = SampleScreens.Rest with
    {
        Vessels =
        [
            new("liquor", 0.4, "24.0 L  21.2 °C  heat off", Tone.Normal),
            new("tun", 0.4, "24.0 L  66.2 °C  heat on", Tone.Normal),
            new("kettle", 0, "empty", Tone.Normal),
        ],
        Circuits = [.. "ABC".Select(c => new Gauge($"circuit {c}", 0.2, "10.3 of 30 A", Tone.Normal) { Brief = c.ToString() })],
        Keys = [new("space", "go on"), new("0-9", "reading"), new("u", "undo start of Check fittings"), new("?", "keys"), new("r", "remedies")],
    };

    [Fact]
    public void Whether_the_heat_is_on_is_read_at_60_columns()
    {
        using var bench = new Bench(new RecordingSession(Screen with { Background = [] }), new SteppedTime(), 60, 18);
        var liquor = bench.Text().Split('\n').Single(l => l.Contains("liquor ", StringComparison.Ordinal));
        Assert.Matches("24.0 L  21.2 °C  heat off +A .*10.3 of 30 A *$", liquor);
    }

    [Fact]
    public void Vessels_that_have_no_row_are_counted()
    {
        Line[] signs = [.. Enumerable.Range(1, 9).Select(n => Line.Of($"sign {n}"))];
        var told = Enumerable.Range(1, signs.Length).Select(n =>
        {
            using var bench = new Bench(new RecordingSession(Screen with { Plant = [.. signs[..n]] }), new SteppedTime(), 60, 18);
            return bench.Text().Split('\n').FirstOrDefault(l => l.StartsWith(" liquor ", StringComparison.Ordinal) && !l.Contains("10.3", StringComparison.Ordinal));
        }).OfType<string>().ToList();
        var alone = Assert.Single(told);
        Assert.Contains("heat off", alone, StringComparison.Ordinal);
        Assert.Contains("5 more", alone, StringComparison.Ordinal);
    }

    /// <summary>What is weighed one by one is worth more than the large clock of a step that nothing hurries.</summary>
    [Theory]
    [InlineData(60, 18)]
    [InlineData(80, 24)]
    public void Of_a_list_that_is_worked_through_nothing_is_left_out(int columns, int rows)
    {
        var list = Screen with { ListsFirst = true, Sentences = [.. Enumerable.Range(1, 9).Select(n => Line.Of($"Tub {n} of the hops and what else is weighed."))] };
        using var bench = new Bench(new RecordingSession(list), new SteppedTime(), columns, rows);
        var text = bench.Text();
        Assert.All(Enumerable.Range(1, 9), n => Assert.Contains($"Tub {n} of", text, StringComparison.Ordinal));
        Assert.Contains("23:41", text, StringComparison.Ordinal);
        Assert.Contains("HOLD 66 °C", text, StringComparison.Ordinal);
        Assert.DoesNotContain("p shows all", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(58, "space go on   0-9 reading   ? keys")]
    [InlineData(70, "space go on   0-9 reading   u undo start of Check fittings   ? keys")]
    [InlineData(90, "space go on   0-9 reading   u undo start of Check fittings   ? keys   r remedies")]
    public void The_key_of_the_help_gives_way_last(int width, string keys) =>
        Assert.Equal(keys, EdgeLines.Keys(Screen.Keys, width, 1).Single().ToString());
}
