using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class PlanTextTests
{
    [Fact]
    public void The_plain_plan_stands_in_the_order_of_time_and_says_totals_and_limits()
    {
        var lines = PlanText.Plain(Quayside.Plan, Notation.Metric).Split('\n');

        Assert.Equal("Quayside Amber, 40.0 L on Quayside", lines[0]);
        Assert.Contains("original gravity          1.048", lines);
        Assert.Contains("   0:10      10 min  Dough in 8.420 kg grist", lines);
        Assert.Contains("  Mash in the tun 33.4 L, at most 61.0 L: 27.6 L to spare", lines);
        Assert.Equal(
            ["Set up", "Mash", "Liquor", "Mash", "Lauter", "Boil"],
            lines.Where(l => l is "Set up" or "Liquor" or "Mash" or "Lauter" or "Boil"));
    }

    [Fact]
    public void With_a_start_the_times_are_local_clock_times()
    {
        var plan = Quayside.Plan with { Choices = new DayChoices { Start = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs) } };

        Assert.Contains("09:20", PlanText.Plain(plan, Notation.Metric), StringComparison.Ordinal);
        Assert.Equal("09:20", PlanLines.At(Quayside.Vorlauf, plan, Notation.Metric));
    }

    [Fact]
    public void With_a_wanted_finish_the_times_end_there()
    {
        var plan = Quayside.Plan with { Choices = new DayChoices { Finish = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs).AddHours(9) } };

        // the day takes 3:10, so it starts at 13:50
        Assert.Equal("13:50", PlanLines.At(Quayside.Check, plan, Notation.Metric));
    }

    [Fact]
    public void Markdown_tables_stay_tables()
    {
        var odd = Quayside.Plan with { Recipe = Quayside.Recipe with { Name = "A|B" } };

        var lines = PlanText.Markdown(odd, Notation.Metric).Split('\n');

        Assert.Equal("# A\\|B, 40.0 L on Quayside", lines[0]);
        var rows = lines.Where(l => l.StartsWith('|')).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, r => Assert.Equal(6, r.Count(c => c == '|')));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(56)]
    [InlineData(76)]
    public void Wrapped_lines_fit_and_lose_no_word(int width)
    {
        var lines = PlanLines.Of(Quayside.Plan, Notation.Metric);

        var wrapped = Wrap.Lines(lines, width);

        Assert.Equal(Words(lines), Words(wrapped));
        Assert.DoesNotContain(wrapped, l => l.ToString().Length > width && l.ToString().TrimStart().Contains(' ', StringComparison.Ordinal) && l.Spans.Length == 1);
    }

    private static IEnumerable<string> Words(IEnumerable<Line> lines) =>
        lines.SelectMany(l => l.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
