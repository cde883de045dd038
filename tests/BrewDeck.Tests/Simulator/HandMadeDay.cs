using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Simulator;

/// <summary>Drives a plant through steps written by hand: each is started, waited for and finished.</summary>
internal sealed class HandMadeDay
{
    private readonly HumanPace _pace;

    public HandMadeDay(HiddenTruth truth, double steadiness = 0)
    {
        Plant = new VirtualPlant(truth);
        Instruments = new Instruments(Plant);
        _pace = new HumanPace(truth.Seed, steadiness);
        Hands = new PlantFollower(Plant, Instruments, _pace, new LiveMishaps([], Plant));
    }

    public VirtualPlant Plant { get; }

    public Instruments Instruments { get; }

    public PlantFollower Hands { get; }

    /// <summary>Seconds until the step was done.</summary>
    public double Do(StepSpec spec)
    {
        var start = Plant.NowS;
        Begin(spec);
        WaitFor(spec.Id);
        Hands.Finished(spec.Id);
        return Plant.NowS - start;
    }

    public void Begin(StepSpec spec) => Hands.Started(new Order(spec, spec.TargetC, 3600));

    public void WaitFor(string stepId)
    {
        for (var i = 0; i < 20_000 && !Hands.IsDone(stepId); i++)
            Hands.Advance(5);
        Assert.True(Hands.IsDone(stepId), stepId);
    }

    public void DoAll(IEnumerable<StepSpec> specs)
    {
        foreach (var spec in specs)
            Do(spec);
    }

    public static StepSpec Step(string id, StepKind kind, string vessel = "", string to = "") =>
        new() { Id = id, Kind = kind, Unit = UnitProcedure.Mash, Vessel = vessel, To = to };

    public static StepSpec[] UntilRest() =>
    [
        Step("fill", StepKind.Fill, Quayside.Liquor) with { VolumeL = 31.5 },
        Step("strike", StepKind.HeatStrike, Quayside.Liquor, Quayside.Mash) with { TargetC = 74.5 },
        Step("transfer", StepKind.TransferStrike, Quayside.Liquor, Quayside.Mash) with { VolumeL = 30 },
        Step("dough-in", StepKind.DoughIn, Quayside.Mash) with { Minutes = 10, Charges = [Quayside.Grist] },
    ];

    public static StepSpec[] UntilRunOff() =>
    [
        .. UntilRest(),
        Step("fill-sparge", StepKind.Fill, Quayside.Liquor) with { VolumeL = 28 },
        Step("heat-sparge", StepKind.HeatSparge, Quayside.Liquor) with { TargetC = 77 },
        Step("rest", StepKind.Rest, Quayside.Mash) with { Minutes = 35, TargetC = 66 },
        Step("ramp", StepKind.Ramp, Quayside.Mash) with { TargetC = 76 },
        Step("vorlauf", StepKind.Vorlauf, Quayside.Mash) with { Minutes = 10, TargetC = 76 },
    ];

    public static StepSpec FlySparge(double untilL = 46, double spargeL = 26) =>
        Step("lauter", StepKind.Lauter, Quayside.Mash, Quayside.Boil) with { VolumeL = untilL, SpargeL = spargeL };

    public static StepSpec[] FromBoil() =>
    [
        Step("heat", StepKind.HeatToBoil, Quayside.Boil),
        Step("hot-break", StepKind.HotBreak, Quayside.Boil) with { Minutes = 5 },
        Step("add", StepKind.AddToBoil, Quayside.Boil) with { Charges = [Quayside.Hops], HandsS = 60 },
        Step("boil", StepKind.Boil, Quayside.Boil) with { Minutes = 60 },
        Step("knock-out", StepKind.KnockOut, Quayside.Boil) with { Minutes = 1 },
        Step("whirlpool", StepKind.Whirlpool, Quayside.Boil) with { Minutes = 5 },
        Step("stand", StepKind.Stand, Quayside.Boil) with { Minutes = 15 },
        Step("cast-out", StepKind.CastOut, Quayside.Boil, Quayside.Fermenter) with { TargetC = 19 },
    ];

    public static StepSpec[] Whole() => [.. UntilRunOff(), FlySparge(), .. FromBoil()];
}
