using BrewDeck.Profiles;
using CsCheck;

namespace BrewDeck.SystemTests.Profiles;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("capcity", "capacity")]
    [InlineData("CAPACITY", "capacity")]
    [InlineData("deadspace", "dead_space")]
    [InlineData("heatloss", "heat_loss")]
    [InlineData("walls", null)]
    [InlineData("", null)]
    public void Finds_what_was_meant(string written, string? meant) =>
        Assert.Equal(meant, NearestName.To(written, ["capacity", "headroom", "dead_space", "heat_capacity", "heat_loss"]));

    [Fact]
    public void The_number_of_edits_is_a_distance() =>
        Gen.Select(Gen.String[0, 12], Gen.String[0, 12], Gen.String[0, 12]).Sample((a, b, c) =>
        {
            Assert.Equal(0, NearestName.Edits(a, a));
            Assert.Equal(NearestName.Edits(a, b), NearestName.Edits(b, a));
            Assert.True(NearestName.Edits(a, c) <= NearestName.Edits(a, b) + NearestName.Edits(b, c));
            Assert.Equal(a == b, NearestName.Edits(a, b) == 0);
        });
}
