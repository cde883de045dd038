using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>A vessel that a set-up asks about.</summary>
/// <param name="Headroom">Share of its capacity that is kept free.</param>
/// <param name="UsualHeat">Offered for a brewhouse of 65 L.</param>
internal sealed record SetUpVessel(string Id, string Name, VesselRoles Roles, double Headroom, string UsualHeat, bool MayBeCold)
{
    /// <summary>As said in a question.</summary>
    public Named Called => new(Name);

    private static readonly SetUpVessel Liquor = new("liquor", "hot liquor tank", VesselRoles.HotLiquor, 0.04, "5.5 kW", false);
    private static readonly SetUpVessel Tun = new("tun", "mash tun", VesselRoles.Mash, 0.05, "3.5 kW", true);
    private static readonly SetUpVessel Lauter = new("lauter", "lauter tun", VesselRoles.Lauter, 0.08, "none", true);
    private static readonly SetUpVessel Kettle = new("kettle", "kettle", VesselRoles.Boil, 0.08, "5.5 kW", false);

    /// <summary>The one that a false bottom lies in; null: the grain is lifted out.</summary>
    public static SetUpVessel? Lautering(IReadOnlyList<SetUpVessel> vessels) => vessels.FirstOrDefault(v => v == Lauter) ?? vessels.FirstOrDefault(v => v == Tun);

    /// <param name="layout">The answer: four, three, two or one.</param>
    public static SetUpVessel[] Of(string layout) => layout switch
    {
        "one" => [Kettle with { Roles = VesselRoles.HotLiquor | VesselRoles.Mash | VesselRoles.Boil, Headroom = 0.09, UsualHeat = "3 kW" }],
        "four" => [Liquor, Tun, Lauter, Kettle],
        "two" => [Kettle with { Roles = VesselRoles.HotLiquor | VesselRoles.Boil }, Tun],
        _ => [Liquor, Tun, Kettle],
    };
}
