using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Reports;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>What there is to brew, and on what: by the words that the options take.</summary>
public sealed class StockCommandTests
{
    [Theory]
    [InlineData("recipes", "--recipe")]
    [InlineData("brewhouses", "--brewhouse")]
    public void Each_word_that_is_listed_is_taken(string command, string option)
    {
        using var folder = new TempFolder();
        var (code, listed, _) = RehearsedLogbook.RunOn(folder.At("log"), command);
        Assert.Equal(0, code);
        var lines = listed.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches(@"^[a-z0-9-]+ +\S.*$", line));
        var (_, _, errors) = RehearsedLogbook.RunOn(folder.At("log"), "plan", option, lines[0].Split(' ')[0]);
        Assert.DoesNotContain("there is no such", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recipe_of_another_format_is_sent_to_convert()
    {
        using var folder = new TempFolder();
        var xml = folder.At("stout.xml");
        File.WriteAllText(xml, "<RECIPES/>");
        var (code, _, errors) = RehearsedLogbook.RunOn(folder.At("log"), "plan", "--recipe", xml);
        Assert.NotEqual(0, code);
        Assert.Contains($"brewdeck convert \"{xml}\" \"{folder.At("stout.toml")}\"", errors, StringComparison.Ordinal);
        Assert.Single(errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_finish_that_a_given_start_does_not_keep_is_said()
    {
        using var folder = new TempFolder();
        var (_, _, kept) = RehearsedLogbook.RunOn(folder.At("log"), "plan", "--start", "2099-05-30T08:30", "--finish", "2099-05-31T08:30");
        var (_, _, missed) = RehearsedLogbook.RunOn(folder.At("log"), "plan", "--start", "2099-05-30T08:30", "--finish", "2099-05-30T02:00");
        Assert.Empty(kept);
        Assert.Contains("--start counts, so --finish", missed, StringComparison.Ordinal);
    }
}
