using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Simulator;

/// <summary>A three-vessel brewhouse of 65 L and a single-infusion ale, written by hand so that no planner is needed.</summary>
internal static class Quayside
{
    public const string Liquor = "liquor";
    public const string Mash = "tun";
    public const string Boil = "kettle";
    public const string Fermenter = "fermenter";

    public static readonly Brewhouse Brewhouse = new()
    {
        Name = "Quayside",
        Vessels =
        [
            Vessel(Liquor, VesselRoles.HotLiquor, 65, 1.5, "A", 3450),
            Vessel(Mash, VesselRoles.Mash, 65, 1.0, "B", 3450),
            Vessel(Boil, VesselRoles.Boil, 80, 1.5, "C", 3450, 2050),
        ],
        Circuits = [new("A", 230, 15, 1), new("B", 230, 15, 1), new("C", 230, 25, 1)],
        Pumps = [new("pump", 3.4, 8, 65)],
        Chiller = new(ChillerKind.Counterflow, 900, 12, 5),
        Fermenter = new("tank", 60, 8),
        Habits = new Habits
        {
            MashThicknessLPerKg = 3,
            ConversionYield = 0.96,
            AbsorptionLPerKg = 1.0,
            SpargeStages = 2.5,
            RunoffLPerMin = 1.5,
            EvaporationKgPerH = 5,
            TrubL = 1.5,
            HopAbsorptionLPerKg = 6,
            LineLossL = 1,
            SpargeC = 77,
        },
    };

    public static readonly DayChoices Choices = new();

    public static readonly Charge Grist = new(ChargeKind.Grist, "pale malt", 10, "kg", ExtractKg: 7.68, WaterKg: 0.4);

    public static readonly Charge Hops = new(ChargeKind.Hop, "Northern Brewer", 40, "g", AlphaG: 3.2);

    public static HiddenTruth Exact(Brewhouse? brewhouse = null, DayChoices? choices = null) =>
        HiddenTruth.AsProfile(brewhouse ?? Brewhouse, choices ?? Choices);

    public static HiddenTruth Drawn(int seed) => HiddenTruth.Draw(Brewhouse, Choices, seed);

    private static Vessel Vessel(
        string id, VesselRoles roles, double capacityL, double deadL, string circuit, params double[] watts) => new()
        {
            Id = id,
            Name = id,
            Roles = roles,
            CapacityL = capacityL,
            HeadroomL = 3,
            DeadSpaceL = deadL,
            DiameterM = 0.45,
            HeatCapacityJPerK = 6_000,
            LossWPerK = 4,
            Elements = [.. watts.Select(w => new Element(w, 0.97, 8, circuit))],
        };
}
