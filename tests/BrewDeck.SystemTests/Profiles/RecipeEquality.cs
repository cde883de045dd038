using BrewDeck.Core.Recipes;

namespace BrewDeck.SystemTests.Profiles;

internal static class RecipeEquality
{
    /// <summary>Equal to the last bit, part by part: an immutable array's own equality is by reference.</summary>
    public static void AssertSame(Recipe expected, Recipe actual)
    {
        Assert.Equal(expected.Grist, actual.Grist);
        Assert.Equal(expected.Rests, actual.Rests);
        Assert.Equal(expected.Hops, actual.Hops);
        Assert.Equal(expected.Others, actual.Others);
        Assert.Equal(
            expected,
            actual with { Grist = expected.Grist, Rests = expected.Rests, Hops = expected.Hops, Others = expected.Others });
    }
}
