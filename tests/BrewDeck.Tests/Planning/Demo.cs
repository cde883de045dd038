using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

/// <summary>A 65 L three-vessel brewhouse and recipes of the invented Quayside, built in code.</summary>
internal static class Demo
{
    public static readonly Brewhouse House = new()
    {
        Name = "Quayside 65",
        Vessels =
        [
            new Vessel
            {
                Id = "liquor", Name = "hot liquor tank", Roles = VesselRoles.HotLiquor, CapacityL = 65, HeadroomL = 3,
                DeadSpaceL = 1.5, HeatCapacityJPerK = 6000, LossWPerK = 6, DiameterM = 0.45,
                Elements = [new Element(5500, 0.97, 10, "A")],
            },
            new Vessel
            {
                Id = "tun", Name = "mash tun", Roles = VesselRoles.Mash, CapacityL = 65, HeadroomL = 5, DeadSpaceL = 2,
                HeatCapacityJPerK = 7000, LossWPerK = 5, DiameterM = 0.45, Elements = [new Element(3500, 0.92, 8, "B")],
                FalseBottom = new FalseBottom(0.39, 500),
            },
            new Vessel
            {
                Id = "kettle", Name = "kettle", Roles = VesselRoles.Boil, CapacityL = 75, HeadroomL = 10, DeadSpaceL = 1,
                HeatCapacityJPerK = 7000, LossWPerK = 7, DiameterM = 0.45, Elements = [new Element(5500, 0.95, 12, "C")],
            },
        ],
        Circuits = [new Circuit("A", 240, 30, 0.8), new Circuit("B", 240, 20, 0.8), new Circuit("C", 240, 30, 0.8)],
        Pumps = [new Pump("P1", 3.4, 12, 60), new Pump("P2", 3.4, 12, 60)],
        Chiller = new Chiller(ChillerKind.Counterflow, 900, 12, 6),
        Fermenter = new Fermenter("steel 60", 60, 8),
        Habits = new Habits
        {
            MashThicknessLPerKg = 3,
            ConversionYield = 0.96,
            AbsorptionLPerKg = 1,
            SpargeStages = 1.5,
            RunoffLPerMin = 1.2,
            EvaporationKgPerH = 5,
            TrubL = 1.5,
            HopAbsorptionLPerKg = 7,
            LineLossL = 1,
            SpargeC = 77,
        },
    };

    /// <summary>The same with a lauter tun and a whirlpool of their own.</summary>
    public static readonly Brewhouse FiveVessels = House with
    {
        Vessels =
        [
            House.Vessels[0],
            House.Vessels[1] with { FalseBottom = null },
            new Vessel
            {
                Id = "lauter", Name = "lauter tun", Roles = VesselRoles.Lauter, CapacityL = 65, HeadroomL = 5, DeadSpaceL = 2,
                HeatCapacityJPerK = 7000, LossWPerK = 5, FalseBottom = House.Vessels[1].FalseBottom,
            },
            House.Vessels[2],
            new Vessel
            {
                Id = "whirlpool", Name = "whirlpool", Roles = VesselRoles.Whirlpool, CapacityL = 65, HeadroomL = 5, DeadSpaceL = 1,
                HeatCapacityJPerK = 6000, LossWPerK = 5,
            },
        ],
    };

    public static readonly Recipe Amber = new()
    {
        Name = "Quayside Amber",
        BatchL = 40,
        OriginalGravitySg = 1.048,
        BitternessIbu = 30,
        Grist =
        [
            new GristLine("pale malt", 8, 0.81, 0.04, 6, GristUse.Mash),
            new GristLine("crystal malt", 0.8, 0.76, 0.05, 120, GristUse.Mash),
        ],
        Rests = [new MashRest("saccharification", 66, 60), new MashRest("mash-out", 76, 10)],
        BoilMin = 60,
        Hops =
        [
            new HopAddition("bittering", 50, 0.06, HopForm.Pellet, HopUse.Boil, 60),
            new HopAddition("aroma", 40, 0.05, HopForm.Pellet, HopUse.Boil, 10),
            new HopAddition("aroma", 40, 0.05, HopForm.Pellet, HopUse.Whirlpool, 15),
        ],
        Others = [new OtherAddition("carrageen", 5, "g", AdditionUse.Boil, 10)],
        Yeast = new Yeast("ale yeast", 0.76, 19, 0.75),
    };

    public static Plan Plan(Recipe? recipe = null, DayChoices? choices = null, Brewhouse? house = null) =>
        Planner.Draw(house ?? House, recipe ?? Amber, choices ?? new DayChoices()) switch
        {
            PlanResult.Drawn drawn => drawn.Plan,
            PlanResult.Refused refused => throw new InvalidOperationException(string.Join("; ", refused.Refusals)),
            _ => throw new InvalidOperationException(),
        };
}
