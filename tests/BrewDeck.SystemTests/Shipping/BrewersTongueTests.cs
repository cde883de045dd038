using BrewDeck.Commands;

namespace BrewDeck.SystemTests.Shipping;

public sealed class BrewersTongueTests
{
    [Theory]
    [InlineData(null, "", "en")]
    [InlineData(null, "LANG=de_DE.UTF-8", "de")]
    [InlineData(null, "LANG=en_GB.UTF-8 LC_MESSAGES=de_AT", "de")]
    [InlineData(null, "LANG=de_DE LC_ALL=C", "en")]
    [InlineData(null, "LANG=fr_FR", "en")]
    [InlineData("en", "LANG=de_DE", "en")]
    [InlineData("de", "LC_ALL=C", "de")]
    public void What_is_asked_for_counts_before_the_environment(string? asked, string environment, string code)
    {
        var variables = environment.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1]);

        Assert.Equal(code, BrewersTongue.Of(asked, variables.GetValueOrDefault).Code);
    }
}
