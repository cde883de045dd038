using System.Collections.Immutable;

namespace BrewDeck.Core.Brewhouses;

/// <summary>The vessels, heat, pumps, lines and circuits that a batch is brewed on, as its owner described them.</summary>
public sealed record Brewhouse
{
    public required string Name { get; init; }

    /// <summary>In the order in which liquor and wort usually pass them.</summary>
    public required ImmutableArray<Vessel> Vessels { get; init; }

    public required ImmutableArray<Circuit> Circuits { get; init; }

    public ImmutableArray<Pump> Pumps { get; init; } = [];

    public required Chiller Chiller { get; init; }

    public required Fermenter Fermenter { get; init; }

    public required Habits Habits { get; init; }

    /// <summary>Null: nothing has been learned of this brewhouse.</summary>
    public DaySpreads? Spreads { get; init; }

    /// <summary>That liquor and wort are moved through; null: as usual for the flow.</summary>
    public Hose? Hose { get; init; }

    /// <summary>In the hot liquor tank, for wort that is pumped round; null without.</summary>
    public Coil? Coil { get; init; }

    /// <summary>Cold wort of a usual batch, litres at 20 °C; null: as each recipe says.</summary>
    public double? UsualBatchL { get; init; }

    public Vessel HotLiquorTank => With(VesselRoles.HotLiquor);

    public Vessel MashTun => With(VesselRoles.Mash);

    public Vessel Kettle => With(VesselRoles.Boil);

    /// <summary>The mash tun, unless the mash is pumped into a vessel of its own to be lautered.</summary>
    public Vessel LauterTun => Vessels.FirstOrDefault(v => v.Roles.HasFlag(VesselRoles.Lauter)) ?? MashTun;

    /// <summary>The kettle, unless the hot wort is pumped into a vessel of its own to settle.</summary>
    public Vessel Whirlpool => Vessels.FirstOrDefault(v => v.Roles.HasFlag(VesselRoles.Whirlpool)) ?? Kettle;

    /// <summary>Liquor for a sparge needs a vessel that neither mash nor wort stands in meanwhile.</summary>
    public bool CanSparge => HotLiquorTank != MashTun && HotLiquorTank != Kettle && HotLiquorTank != LauterTun;

    /// <summary>The grain is lifted out of the kettle instead of the wort being drawn from under it.</summary>
    public bool LiftsGrain => MashTun == Kettle;

    /// <summary>The same with another vessel in the kettle's place: what the kettle keeps free for foam is kept free there.</summary>
    public Brewhouse BoilingIn(string vesselId)
    {
        var kettle = Kettle;
        var roles = kettle.Roles & (VesselRoles.Boil | VesselRoles.Whirlpool);
        Vessel Of(Vessel v) => v.Id == vesselId ? v with { Roles = v.Roles | roles, HeadroomL = Math.Max(v.HeadroomL, kettle.HeadroomL) }
            : v.Id == kettle.Id ? v with { Roles = v.Roles & ~roles }
            : v;
        return this with { Vessels = [.. Vessels.Select(Of)] };
    }

    public Vessel this[string vesselId] => Vessels.First(v => v.Id == vesselId);

    /// <summary>Asked for at each step of each day that is folded, so without a delegate.</summary>
    private Vessel With(VesselRoles role)
    {
        foreach (var vessel in Vessels)
        {
            if (vessel.Roles.HasFlag(role))
                return vessel;
        }
        throw new InvalidOperationException($"no vessel of {Name} has the role {role}");
    }
}
