using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>Small brew days made by hand: the logbook is tested without the planner.</summary>
internal static class Days
{
    public const long StartMs = 1_790_000_000_000;

    public static BatchOpened Opened(string recipe = "Quayside Amber", int steps = 3, bool rehearsed = false) =>
        new(StartMs, PlanOf(recipe, steps), "0.1.0", rehearsed);

    /// <summary>Opening, then for each step a start, two readings and a finish.</summary>
    public static IEnumerable<RunEvent> Events(int steps = 3, string recipe = "Quayside Amber")
    {
        yield return Opened(recipe, steps);
        for (var i = 0; i < steps; i++)
        {
            var at = StartMs + (i * 600_000L);
            yield return new StepStarted(at, Id(i));
            yield return Reading(at + 60_000, 60.25 + i);
            yield return Reading(at + 120_000, 66.125 + i);
            yield return new StepFinished(at + 590_000, Id(i));
        }
    }

    public static ReadingTaken Reading(long atMs, double tempC) => new(
        atMs,
        new Reading(ReadingKind.Temperature, "tun", tempC, $"{tempC} °C"),
        [new Shift("original_gravity_sg", 1.048, 1.0478), new Shift("finish_s", 25_200, 25_320)]);

    public static StepStarted Started(long atMs) => new(atMs, Id((int)atMs));

    /// <summary>Where a run of <see cref="Events"/> stands; the fold proper has its own tests.</summary>
    public static RunStatus StatusOf(IReadOnlyList<RunEvent> events)
    {
        var undone = events.OfType<Undone>().Select(u => u.Seq).ToHashSet();
        var standing = events.Where((_, seq) => !undone.Contains(seq)).ToList();
        if (standing.Exists(e => e is RunAborted))
            return RunStatus.Aborted;
        var steps = ((BatchOpened)events[0]).Plan.Steps.Length;
        if (standing.Count(e => e is StepFinished or StepSkipped) == steps)
            return RunStatus.Complete;
        return standing.Exists(e => e is StepStarted) ? RunStatus.Running : RunStatus.Idle;
    }

    public static Plan PlanOf(string recipe, int steps)
    {
        var numbers = new Random(7);
        return new Plan
        {
            Brewhouse = Brewhouse(),
            Recipe = Recipe(recipe),
            Choices = new DayChoices
            {
                Start = DateTimeOffset.FromUnixTimeMilliseconds(StartMs).ToOffset(TimeSpan.FromHours(2)),
                SourceWaterC = 0, // not the default: a default left out would come back wrong
                MeasuredAlpha = ImmutableDictionary<string, double>.Empty.Add("Cascade", 0.071),
                HopsOnHand = ImmutableDictionary<string, HopOnHand>.Empty.Add("Fuggle", new HopOnHand("Willamette", 0.052)),
                GristOnHand = ImmutableDictionary<string, GristLine>.Empty.Add("pale malt", Recipe(recipe).Grist[0]),
            },
            Start = State(numbers, 0),
            Steps = [.. Enumerable.Range(0, steps).Select(i => Step(numbers, i))],
            Totals = new Totals(31.2, 22.8, 48.1, 1.0441, 43.7, 40, 1.0484, 34.9, 11.2, 22.1, 19, 25_200, 7_400),
            Limits = [new Limit("tun_working_l", 44.2, 60, "L"), new Limit("kettle_cover_l", 18.9, 12, "L", AtMost: false)],
        };
    }

    private static string Id(int i) => $"mash.rest-{i + 1}";

    private static PlanStep Step(Random numbers, int i) => new(
        new StepSpec
        {
            Id = Id(i),
            Kind = (StepKind)(i % Enum.GetValues<StepKind>().Length),
            Unit = UnitProcedure.Mash,
            Vessel = "tun",
            To = i % 3 == 0 ? "kettle" : "",
            TargetC = 66,
            Minutes = i % 2 == 0 ? 10 : null,
            Charges = i % 8 == 0 ? [new Charge(ChargeKind.Hop, "Cascade", 25, "g", AlphaG: 1.775, Minutes: 60)] : [],
            Label = "saccharification",
            HandsS = 120,
            Background = i % 5 == 0,
            Cautions = Cautions.Scald | Cautions.MainsNearWater,
        },
        i * 600,
        590,
        66,
        numbers.NextDouble() * 60,
        i % 2 == 0 ? 3_450 : null,
        i % 2 == 0 ? "A" : null,
        [new ExpectedReading(ReadingKind.Temperature, "tun", 66 + numbers.NextDouble())],
        State(numbers, i * 600));

    private static PlantState State(Random numbers, double atS) => new()
    {
        Vessels = [Vessel(numbers, atS, 77), Vessel(numbers, atS, 66), Vessel(numbers, atS, double.NaN), new VesselState(0, 0, 0, 18)],
        Hops = [new HopDose("Cascade", 1.775, 0.03, numbers.NextDouble() * 60, 1 + 0.1 * numbers.NextDouble()), new HopDose("Fuggle", 1.1, 0.02, numbers.NextDouble())],
        ColourKgEbc = 61.7 * numbers.NextDouble(),
        ColouredKg = 9.2 * numbers.NextDouble(),
        HandsFreeS = atS + 120,
        CircuitFreeS = [atS, atS + (600 * numbers.NextDouble())],
    };

    private static VesselState Vessel(Random numbers, double atS, double holdC) => new(
        atS + numbers.NextDouble(), 40 * numbers.NextDouble(), 5 * numbers.NextDouble(), 60 + (10 * numbers.NextDouble()),
        9.2, 8.8 * numbers.NextDouble(), 4 * numbers.NextDouble(), HoldC: holdC);

    private static Brewhouse Brewhouse() => new()
    {
        Name = "Quayside",
        Vessels =
        [
            Vessel("liquor", VesselRoles.HotLiquor, null),
            Vessel("tun", VesselRoles.Mash, new FalseBottom(0.39, 300)),
            Vessel("kettle", VesselRoles.Boil, null),
        ],
        Circuits = [new Circuit("A", 230, 15, 1), new Circuit("B", 230, 15, 0.8)],
        Pumps = [new Pump("wort", 3.4, 12, 45)],
        Chiller = new Chiller(ChillerKind.Counterflow, 900, 8, 4),
        Fermenter = new Fermenter("tank 1", 60, 10),
        Habits = new Habits
        {
            MashThicknessLPerKg = 3,
            ConversionYield = 0.96,
            AbsorptionLPerKg = 0.95,
            SpargeStages = 3,
            RunoffLPerMin = 1.5,
            EvaporationKgPerH = 4.1,
            TrubL = 1.5,
            HopAbsorptionLPerKg = 7,
            LineLossL = 1,
            SpargeC = 77,
        },
    };

    private static Vessel Vessel(string id, VesselRoles roles, FalseBottom? bottom) => new()
    {
        Id = id,
        Name = $"the {id}",
        Roles = roles,
        CapacityL = 65,
        HeadroomL = 5,
        DeadSpaceL = 1.5,
        DiameterM = 0.45,
        HeatCapacityJPerK = 6_000,
        LossWPerK = 7,
        Elements = [new Element(3_450, 0.96, 12, "A")],
        FalseBottom = bottom,
    };

    private static Recipe Recipe(string name) => new()
    {
        Name = name,
        BatchL = 40,
        OriginalGravitySg = 1.048,
        Grist =
        [
            new GristLine("pale malt", 8.4, 0.81, 0.04, 6, GristUse.Mash),
            new GristLine("crystal malt", 0.8, 0.75, 0.05, 150, GristUse.Mash),
        ],
        Rests = [new MashRest("saccharification", 66, 60), new MashRest("mash-out", 76, 10)],
        BoilMin = 60,
        Hops =
        [
            new HopAddition("Cascade", 25, 0.071, HopForm.Pellet, HopUse.Boil, 60),
            new HopAddition("Fuggle", 40, 0.045, HopForm.Cone, HopUse.Whirlpool, 20),
        ],
        Others = [new OtherAddition("finings", 5, "g", AdditionUse.Boil, 10)],
        Yeast = new Yeast("ale yeast", 0.77, 19, 0.75),
    };
}
