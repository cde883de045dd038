using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>A kettle whose only element is dead: what is really left is offered, and where nothing is, giving the day up.</summary>
public sealed class GiveUpTests
{
    [Fact]
    public void Where_nothing_else_boils_the_wort_the_day_can_be_given_up_from_the_list()
    {
        var brewer = WithDeadKettle(foams: true);
        var rows = Rows(brewer);
        Assert.Equal(["Leave it", "Give the day up: all heat off, lid on"], rows.Select(r => r.Cells[0]));

        // by the same typed word as from the deck: no row alone ends a batch
        brewer.Choose("Give the day up");
        Assert.Equal("Give up this batch", brewer.Question);
        Assert.Equal(RunStatus.Running, brewer.Session.State!.Status);
        brewer.Line("yes");
        Assert.Equal(RunStatus.Running, brewer.Session.State!.Status);
        brewer.Line("abort");
        Assert.Equal(RunStatus.Aborted, brewer.Session.State!.Status);
    }

    [Fact]
    public void Where_the_tank_boils_it_nobody_is_sent_home()
    {
        var rows = Rows(WithDeadKettle(foams: false));
        Assert.StartsWith("Pump the wort over", rows[0].Cells[0], StringComparison.Ordinal);
        Assert.DoesNotContain(rows, r => r.Cells[0].StartsWith("Give the day up", StringComparison.Ordinal));
    }

    private static IReadOnlyList<Row> Rows(Player brewer) => Assert.IsType<ChoiceOverlay>(brewer.Screen.Overlay).Options;

    /// <param name="foams">The kettle keeps so much free for foam that the tank has no room for this wort.</param>
    private static Player WithDeadKettle(bool foams)
    {
        var kettle = Demo.House.Vessels[2];
        var house = foams ? Demo.House with { Vessels = Demo.House.Vessels.Replace(kettle, kettle with { CapacityL = 85, HeadroomL = 20 }) } : Demo.House;
        var store = new MemoryStore();
        var brewer = new Player(store, ports: new SessionPorts(store, new OneHouse(house))).Begin().Until("boil.heat").Wait(60);
        return brewer.Keys("f").Choose("Element 1").Keys("r");
    }

    private sealed class OneHouse(Brewhouse house) : IProfiles
    {
        public IReadOnlyList<ProfileEntry> Brewhouses() => [new("Quayside 65", "quay.toml"), new("The same", "same.toml")];

        public IReadOnlyList<ProfileEntry> Recipes() => [new("Quayside Amber", "amber.toml"), new("The same", "same.toml")];

        public Brewhouse Brewhouse(ProfileEntry entry) => house;

        public Recipe Recipe(ProfileEntry entry) => Demo.Amber;

        public GristLine? GristOnHand(string name) => null;

        public HopOnHand? HopOnHand(string name) => null;
    }
}
