using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Learning;

/// <summary>A brewhouse with hidden numbers that is brewed on day after day.</summary>
/// <param name="calibrated">Its instruments have no bias of their own, only noise.</param>
internal sealed class SimulatedHouse(int house, bool calibrated)
{
    private const long DayMs = 86_400_000;

    private const long StartMs = 1_780_000_000_000;

    public static readonly Brewhouse Profile = Demo.House;

    /// <summary>What stays from day to day.</summary>
    public HiddenTruth Truth { get; } = Calibrated(HiddenTruth.OfHouse(Profile, new DayChoices(), house), calibrated);

    /// <summary>A day as a diligent brewer brews it: fly sparge twice, batch sparge the third time.</summary>
    public BatchTrace Brew(int day) =>
        BatchTrace.Of(day, Events(day)) ?? throw new InvalidOperationException($"house {house} day {day} was not finished");

    public IReadOnlyList<RunEvent> Events(int day)
    {
        var choices = new DayChoices { Sparge = day % 3 == 0 ? SpargeMethod.Batch : SpargeMethod.Fly };
        var plan = Demo.Plan(choices: choices);
        var book = new PaperBook(new BatchOpened(StartMs + day * DayMs, plan, "", Rehearsed: true));
        RehearsalRun.Of(Day(choices, day), book, StartMs + day * DayMs);
        return book.Events;
    }

    public static BatchTrace LikeProfile(int day) => LikeProfile(day, Profile);

    public static BatchTrace LikeProfile(int day, Brewhouse profile)
    {
        var choices = new DayChoices { Sparge = day % 3 == 0 ? SpargeMethod.Batch : SpargeMethod.Fly };
        var book = new PaperBook(new BatchOpened(StartMs, Demo.Plan(house: profile, choices: choices), "", Rehearsed: true));
        RehearsalRun.Of(HiddenTruth.AsProfile(profile, choices), book, StartMs, new Manner(Mends: false));
        return BatchTrace.Of(day, book.Events)!;
    }

    /// <summary>True original gravity less the planned one, in points, when nobody mends anything.</summary>
    public double MissOfPoints(Brewhouse profile, int day, Recipe? recipe = null)
    {
        var plan = Demo.Plan(recipe, house: profile);
        var book = new PaperBook(new BatchOpened(StartMs, plan, "", Rehearsed: true));
        var result = RehearsalRun.Of(Day(new DayChoices(), day), book, StartMs, new Manner(Mends: false));
        return 1000 * (result.Truth.OriginalGravitySg - plan.Totals.OriginalGravitySg);
    }

    /// <summary>The hidden number behind a lesson; null where the plant has none of that name.</summary>
    public double? Of(string parameter) => parameter switch
    {
        LessonParameters.ConversionYield => Truth.ConversionYield,
        LessonParameters.Absorption => Truth.Bed.AbsorptionLPerKg,
        LessonParameters.Evaporation => EvaporationKgPerH(),
        // the plant counts its flow in cold litres
        LessonParameters.Runoff => Truth.RunoffLPerMin * HotPerCold,
        LessonParameters.PumpFlow => Truth.PumpLPerMin,
        LessonParameters.CastOutLoss => KeptL() - (Profile.Kettle.DeadSpaceL + Profile.Habits.LineLossL + Profile.Habits.HopAbsorptionLPerKg * HopsKg),
        LessonParameters.Net + "liquor" => 0.97 * Truth.Tanks[0].PowerFactor,
        // a ramp also heats the room through the hoses that the mash is pumped round by
        LessonParameters.Net + "tun" => 0.92 * Truth.Tanks[1].PowerFactor - Truth.HoseLossWPerK * (71 - 18) / 3500,
        LessonParameters.Chiller => TransferWPerK(),
        _ => null,
    };

    private static double HotPerCold => Water.DensityKgPerM3(20) / Water.DensityKgPerM3(75);

    private static double HopsKg { get; } = Demo.Plan().Recipe.Hops.Where(h => h.Use != HopUse.DryHop).Sum(h => h.MassG) / 1000;

    private double KeptL() => Truth.TrubL + Truth.Tanks[2].DeadSpaceL + Truth.HopAbsorptionLPerKg * HopsKg + Truth.LineLossL;

    /// <summary>What the knob's power raises when element and loss are what they are.</summary>
    private double EvaporationKgPerH()
    {
        const double LatentJPerKg = 2_257_000;
        var kettle = Truth.Tanks[2];
        var given = Truth.EvaporationKgPerH / 3600 * LatentJPerKg + Profile.Kettle.LossWPerK * (100 - 18);
        var loss = kettle.LossWPerK * kettle.WallWPerK / (kettle.LossWPerK + kettle.WallWPerK) * (100.3 - 18);
        return 3600 * (kettle.PowerFactor * given - loss) / LatentJPerKg;
    }

    /// <summary>The profile's water flow with the heat transfer that gives the flow of the true chiller.</summary>
    private double TransferWPerK()
    {
        const double WortJPerKgK = 3950, InC = 94, WaterC = 12, OutC = 19;
        double Out(double kgPerS, double ua, double waterLPerMin) =>
            BrewDeck.Core.Physics.Chiller.CounterflowOutletC(kgPerS * WortJPerKgK, InC, waterLPerMin / 60 * 4186, WaterC, ua);
        var flow = Solve(0.005, 0.2, f => Out(f, Truth.Chiller.UaWPerK, Truth.Chiller.WaterLPerMin) - OutC);
        return Solve(100, 5000, ua => OutC - Out(flow, ua, Profile.Chiller.WaterLPerMin));
    }

    private static double Solve(double low, double high, Func<double, double> rising)
    {
        for (var i = 0; i < 80; i++)
        {
            var middle = 0.5 * (low + high);
            if (rising(middle) > 0)
                high = middle;
            else
                low = middle;
        }
        return low;
    }

    private HiddenTruth Day(DayChoices choices, int day) =>
        Calibrated(HiddenTruth.Draw(Profile, choices, house, 1000 * house + day), calibrated);

    private static HiddenTruth Calibrated(HiddenTruth truth, bool calibrated) => !calibrated ? truth : truth with
    {
        Tanks = [.. truth.Tanks.Select(t => t with { ThermometerBiasK = 0, SightScale = 1, SightOffsetL = 0 })],
        Instruments = truth.Instruments with { HydrometerBiasSg = 0, RefractometerBiasPercent = 0 },
    };
}
