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

    public Vessel HotLiquorTank => With(VesselRoles.HotLiquor);

    public Vessel MashTun => With(VesselRoles.Mash);

    public Vessel Kettle => With(VesselRoles.Boil);

    public Vessel this[string vesselId] => Vessels.First(v => v.Id == vesselId);

    private Vessel With(VesselRoles role) => Vessels.First(v => v.Roles.HasFlag(role));
}
