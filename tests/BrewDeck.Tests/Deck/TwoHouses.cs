using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>Two brewhouses, two recipes, and one file that is broken.</summary>
internal sealed class TwoHouses : IProfiles
{
    public IReadOnlyList<ProfileEntry> Brewhouses() => [new("Quayside 65", "quay.toml"), new("Broken", "broken.toml")];

    public IReadOnlyList<ProfileEntry> Recipes() => [new("Quayside Amber", "amber.toml"), new("Too much", "much.toml")];

    public Brewhouse Brewhouse(ProfileEntry entry) => entry.Path == "quay.toml"
        ? Demo.House
        : throw new ProfileException("broken.toml:3: unknown key 'vesel', did you mean 'vessel'?");

    public Recipe Recipe(ProfileEntry entry) => entry.Path == "amber.toml" ? Demo.Amber : Demo.Amber with { Name = "Too much", BatchL = 90 };

    public GristLine? GristOnHand(string name) => name == "mild malt" ? new GristLine("mild malt", 0, 0.8, 0.04, 10, GristUse.Mash) : null;

    public HopOnHand? HopOnHand(string name) => name == "strong hop" ? new HopOnHand("strong hop", 0.12) : null;
}
