using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>Each mishap acts on the plant, shows itself, and the stand-in brewer comes through it.</summary>
public sealed class MishapTests
{
    private const long StartMs = 1_780_000_000_000;

    private static readonly Plan Plan = Demo.Plan();

    public static TheoryData<MishapKind> Kinds => [.. Enum.GetValues<MishapKind>()];

    private static ImmutableArray<Mishap> All => [.. Enum.GetValues<MishapKind>().Select(k => new Mishap(k, Severity.Severe))];

    [Fact]
    public void All_of_them_in_one_day_are_seen_and_met_and_the_day_goes_on()
    {
        var day = Day(All);

        Assert.Equal(RehearsalResult.Pitched, day.Ended);
        Assert.All(day.Mishaps, c => Assert.True(c.AtS <= c.SeenS && c.SeenS <= c.ActedS, $"{c}"));
    }

    [Fact]
    public void All_of_them_left_alone_end_in_a_day_that_can_be()
    {
        var manner = new Manner { Answers = Enum.GetValues<MishapKind>().ToImmutableDictionary(k => k, _ => Answer.Leave) };
        Possible(Day(All, manner));
    }

    /// <summary>A day a kind: about eight seconds.</summary>
    [Theory(Explicit = true)]
    [MemberData(nameof(Kinds))]
    public void It_begins_is_seen_is_met_and_the_day_goes_on(MishapKind kind)
    {
        var day = Day([new Mishap(kind, Severity.Severe)]);
        var course = Assert.Single(day.Mishaps);

        Assert.Equal(RehearsalResult.Pitched, day.Ended);
        Assert.True(course.AtS <= course.SeenS && course.SeenS <= course.ActedS, $"{course}");
        Assert.True(Apart(day, Day([])) > 0, "nothing is different from a calm day");
    }

    [Theory(Explicit = true)]
    [MemberData(nameof(Kinds))]
    public void Left_alone_it_still_ends_in_a_day_that_can_be(MishapKind kind)
    {
        var manner = new Manner { Answers = ImmutableDictionary<MishapKind, Answer>.Empty.Add(kind, Answer.Leave) };
        Possible(Day([new Mishap(kind, Severity.Severe)], manner));
    }

    private static void Possible(RehearsalResult day)
    {
        Assert.True(day.Ended == RehearsalResult.Pitched || day.Final.AbortReason.Length > 0, day.Ended);
        Assert.InRange(day.Truth.OriginalGravitySg, 1.0 - 1e-9, 1.1);
        Assert.InRange(day.Truth.FermenterL, 0, Plan.Brewhouse.Kettle.CapacityL);
        Assert.InRange(day.Truth.BitternessIbu, 0, 80);
    }

    [Fact(Explicit = true)]
    public void The_harder_it_is_the_more_it_does()
    {
        double Reads(MishapKind kind, Severity severity, Func<RehearsalResult, double> figure) => figure(Day(
            [new Mishap(kind, severity)],
            new Manner(Mends: false) { Answers = ImmutableDictionary<MishapKind, Answer>.Empty.Add(kind, Answer.Leave) }));
        void Falls(MishapKind kind, Func<RehearsalResult, double> figure) =>
            Assert.True(Reads(kind, Severity.Mild, figure) > Reads(kind, Severity.Severe, figure), $"{kind}");

        Falls(MishapKind.WrongWeighIn, d => d.Truth.OriginalGravitySg);
        Falls(MishapKind.BoilOver, d => d.Truth.FermenterL);
        Falls(MishapKind.MisreadHydrometer, d => d.Readings.First(r => r.Reading is { Kind: ReadingKind.Gravity, Vessel: "kettle" }).Reading.Value);
        Falls(MishapKind.ColdStrike, d => d.Readings.First(r => r.Reading is { Kind: ReadingKind.Temperature, Vessel: "tun" }).Reading.Value);
        Falls(MishapKind.FailedElement, d => -d.Truth.FinishS);
    }

    [Fact]
    public void A_breaker_that_is_only_switched_on_falls_again()
    {
        var manner = new Manner { Answers = ImmutableDictionary<MishapKind, Answer>.Empty.Add(MishapKind.TrippedCircuit, Answer.Of(HandAct.ResetBreaker)) };
        var book = Book();
        RehearsalRun.Of(Truth, book, StartMs, manner, [new Mishap(MishapKind.TrippedCircuit, Severity.Plain)]);

        Assert.Equal([HandAct.ResetBreaker, HandAct.DryAndReset], book.Events.OfType<HandsActed>().Select(e => e.Act));
    }

    [Fact]
    public void What_boils_over_is_in_the_ledger()
    {
        var plant = new VirtualPlant(Quayside.Exact());
        plant.AddWater(Quayside.Boil, 40, 90);
        plant.Advance(120);
        var before = plant.Kettle.ColdL;
        plant.Spill(2.5);

        Assert.Equal(2.5, before - plant.Kettle.ColdL, 1e-6);
        Assert.Equal(0, plant.WaterResidualKg, 1e-9);
        Assert.InRange(plant.HeatResidualJ, -1, 1);
    }

    [Fact]
    public void A_pump_without_prime_moves_nothing_whatever_the_hands_say()
    {
        var plant = new VirtualPlant(Quayside.Exact());
        plant.AddWater(Quayside.Liquor, 30, 70);
        plant.Advance(120);
        plant.Faults.PumpShare = 0;
        plant.Transfer(Quayside.Liquor, Quayside.Mash, 20, 8);
        plant.Advance(600);
        Assert.True(plant.Pouring);
        plant.FinishPours();

        Assert.False(plant.Pouring);
        Assert.Equal(0, plant.Tun.LiquidKg);
    }

    [Fact]
    public void Drawn_mishaps_are_different_ones_that_have_a_place_in_the_day()
    {
        for (var seed = 1; seed <= 20; seed++)
        {
            var drawn = MishapDraw.Of(Plan, seed, 4);
            Assert.Equal(4, drawn.Select(m => m.Kind).Distinct().Count());
            Assert.All(drawn, m => Assert.NotNull(MishapPlaces.In(Plan, m)));
            Assert.Equal(drawn, MishapDraw.Of(Plan, seed, 4));
        }
        Assert.NotEqual(MishapDraw.Of(Plan, 1, 3), MishapDraw.Of(Plan, 2, 3));
        Assert.Equal(Enum.GetValues<MishapKind>().Length, MishapDraw.Of(Plan, 1, 99).Length);
    }

    [Fact]
    public void A_real_day_takes_no_act_of_a_rehearsal()
    {
        var real = RunFold.Of([new BatchOpened(StartMs, Plan, "test", Rehearsed: false)]);

        Assert.Equal(new Decision.Refused("only_rehearsed"), RunDesk.Decide(real, new RunCommand.Tend(HandAct.RakeBed), StartMs));
    }

    private static HiddenTruth Truth => HiddenTruth.AsProfile(Plan.Brewhouse, Plan.Choices);

    private static PaperBook Book() => new(new BatchOpened(StartMs, Plan, "test", Rehearsed: true));

    private static RehearsalResult Day(ImmutableArray<Mishap> mishaps, Manner? manner = null) =>
        RehearsalRun.Of(Truth, Book(), StartMs, manner, mishaps);

    private static double Apart(RehearsalResult a, RehearsalResult b) =>
        Math.Abs(a.Truth.FinishS - b.Truth.FinishS) + Math.Abs(a.Truth.OriginalGravitySg - b.Truth.OriginalGravitySg) + Math.Abs(a.Truth.FermenterL - b.Truth.FermenterL);
}
