using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

namespace BrewDeck.Tests.Deck;

/// <summary>A plan written by hand, so that words and screens can be tested without the model.</summary>
internal static class Quayside
{
    public const long StartMs = 1_767_254_400_000; // 2026-01-01T08:00:00Z

    public static Brewhouse Brewhouse { get; } = new()
    {
        Name = "Quayside",
        Vessels =
        [
            Vessel("liquor", "Hot liquor tank", VesselRoles.HotLiquor, 3450, "A"),
            Vessel("tun", "Mash tun", VesselRoles.Mash, 3450, "B"),
            Vessel("kettle", "Kettle", VesselRoles.Boil, 3450, "B"),
        ],
        Circuits = [new Circuit("A", 230, 15, 1), new Circuit("B", 230, 15, 1)],
        Chiller = new Chiller(ChillerKind.Counterflow, 900, 8, 4),
        Fermenter = new Fermenter("Fermenter", 60, 8),
        Habits = new Habits
        {
            MashThicknessLPerKg = 3,
            ConversionYield = 0.97,
            AbsorptionLPerKg = 0.9,
            SpargeStages = 3,
            RunoffLPerMin = 1.2,
            EvaporationKgPerH = 4,
            TrubL = 2,
            HopAbsorptionLPerKg = 6,
            LineLossL = 1,
            SpargeC = 77,
        },
    };

    public static Recipe Recipe { get; } = new()
    {
        Name = "Quayside Amber",
        BatchL = 40,
        Grist = [new GristLine("Pale malt", 8.42, 0.8, 0.04, 6, GristUse.Mash)],
        Rests = [new MashRest("saccharification", 66, 60)],
        BoilMin = 60,
        Hops = [new HopAddition("Fuggle", 62, 0.045, HopForm.Pellet, HopUse.Boil, 60)],
        Yeast = new Yeast("ale yeast", 0.75, 18, 0.75),
    };

    public static PlantState Plant { get; } = new()
    {
        Vessels =
        [
            new VesselState(0, 40.6, 0, 77.9),
            new VesselState(0, 26, 2, 65.8, 8.42, 6, 4),
            new VesselState(0, 0, 0, 18),
            new VesselState(0, 0, 0, 18),
        ],
    };

    public static PlanStep Check { get; } = Step("setup.check", StepKind.CheckFittings, UnitProcedure.SetUp, 0, 10);

    public static PlanStep HeatSparge { get; } = Step("liquor.heat-sparge", StepKind.HeatSparge, UnitProcedure.HotLiquor, 20, 70, "liquor", 77) with
    {
        PowerW = 3450,
        Circuit = "A",
        Spec = Spec("liquor.heat-sparge", StepKind.HeatSparge, UnitProcedure.HotLiquor) with { Vessel = "liquor", Background = true, Cautions = Cautions.DryFire },
    };

    public static PlanStep DoughIn { get; } = Step("mash.dough-in", StepKind.DoughIn, UnitProcedure.Mash, 10, 10, "tun") with
    {
        Spec = Spec("mash.dough-in", StepKind.DoughIn, UnitProcedure.Mash) with
        {
            Vessel = "tun",
            Cautions = Cautions.Scald | Cautions.Lifting,
            Charges = [new Charge(ChargeKind.Grist, "Pale malt", 8.42, "kg")],
        },
    };

    public static PlanStep Rest { get; } = Step("mash.rest-1", StepKind.Rest, UnitProcedure.Mash, 20, 60, "tun", 66) with
    {
        Expected = [new ExpectedReading(ReadingKind.Temperature, "tun", 66)],
        Spec = Spec("mash.rest-1", StepKind.Rest, UnitProcedure.Mash) with { Vessel = "tun", TargetC = 66, Minutes = 60, Label = "saccharification" },
    };

    public static PlanStep Vorlauf { get; } = Step("lauter.vorlauf", StepKind.Vorlauf, UnitProcedure.Lauter, 80, 10, "tun");

    public static PlanStep Lauter { get; } = Step("lauter.run", StepKind.Lauter, UnitProcedure.Lauter, 90, 40, "tun") with
    {
        VolumeL = 47.5,
        Spec = Spec("lauter.run", StepKind.Lauter, UnitProcedure.Lauter) with { Vessel = "tun", To = "kettle", SpargeL = 28 },
    };

    public static PlanStep Boil { get; } = Step("boil.boil-1", StepKind.Boil, UnitProcedure.Boil, 130, 60, "kettle") with
    {
        Spec = Spec("boil.boil-1", StepKind.Boil, UnitProcedure.Boil) with { Vessel = "kettle", Minutes = 60 },
    };

    public static Plan Plan { get; } = new()
    {
        Brewhouse = Brewhouse,
        Recipe = Recipe,
        Choices = new DayChoices(),
        Start = Plant,
        Steps = [Check, DoughIn, HeatSparge, Rest, Vorlauf, Lauter, Boil],
        Totals = new Totals(26.1, 28, 47.5, 1.043, 44, 40, 1.0484, 31.6, 11.2, 22, 18, 190 * 60, 80 * 60),
        Limits = [new Limit("mash_in_tun", 33.4, 61, "L"), new Limit("circuit_A_for_kettle", 3.45, 3.45, "kW")],
    };

    public static StepSpec Spec(string id, StepKind kind, UnitProcedure unit) => new() { Id = id, Kind = kind, Unit = unit };

    public static PlanStep Step(string id, StepKind kind, UnitProcedure unit, double startMin, double minutes, string vessel = "", double? targetC = null) =>
        new(Spec(id, kind, unit) with { Vessel = vessel }, startMin * 60, minutes * 60, targetC, null, null, null, [], Plant);

    private static Vessel Vessel(string id, string name, VesselRoles role, double watts, string circuit) => new()
    {
        Id = id,
        Name = name,
        Roles = role,
        CapacityL = 65,
        HeadroomL = 4,
        DeadSpaceL = 1,
        DiameterM = 0.4,
        HeatCapacityJPerK = 9000,
        LossWPerK = 8,
        Elements = [new Element(watts, 0.95, 8, circuit)],
    };
}
