using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>Plan, desk and fold against a plant that has its own equations and its own faults.</summary>
public sealed class ClosedLoopTests
{
    private const long StartMs = 1_780_000_000_000;

    /// <summary>
    /// Between the last outlook and the truth lie one refractometer and one sight glass (bias and noise), trub, hops and hoses: four of
    /// their standard deviations, and the litre that an open kettle breathes out before the model notices.
    /// </summary>
    private const double NearSg = 4 * 0.00415 * 0.15;

    private const double NearL = 4 * 0.45 + 0.5;

    [Theory]
    [InlineData(SpargeMethod.Fly, 40)]
    [InlineData(SpargeMethod.Batch, 40)]
    [InlineData(SpargeMethod.None, 25)]
    public void EveryDayIsPitchedNearItsLastOutlook(SpargeMethod sparge, double batchL)
    {
        var plan = Demo.Plan(choices: new DayChoices { Sparge = sparge, BatchL = batchL });
        for (var seed = 1; seed <= 12; seed++)
        {
            var day = RehearsalRun.Of(plan, seed, StartMs);
            Assert.True(day is { Ended: RehearsalResult.Pitched, Final.Status: RunStatus.Complete }, $"seed {seed}: {day.Final.AbortReason}");
            var last = day.Outlooks.Single(o => o.At == "end_of_boil").Outlook;
            Assert.InRange(day.Truth.OriginalGravitySg - last.OriginalGravitySg.P50, -NearSg, NearSg);
            Assert.InRange(day.Truth.FermenterL - last.FermenterL.P50, -NearL, NearL);
            Assert.Equal(["start", "after_mash", "pre_boil", "end_of_boil"], day.Outlooks.Select(o => o.At));
        }
    }

    [Fact]
    public void APlantLikeItsProfileGivesThePlan()
    {
        var plan = Demo.Plan();
        var day = Run(HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices), plan);
        Assert.Equal(plan.Totals.OriginalGravitySg, day.Truth.OriginalGravitySg, 0.002);
        Assert.Equal(plan.Totals.FermenterL, day.Truth.FermenterL, 1.0);
        Assert.Equal(plan.Totals.BitternessIbu, day.Truth.BitternessIbu, 2.0);
    }

    /// <summary>A brewer without haste or delay of his own: what he works at is over when it is over, whatever the step of the plant.</summary>
    [Fact]
    public void HandworkIsSeenToBeOverWhenItIs()
    {
        var plan = Demo.Plan();
        var player = new RehearsalPlayer(HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices), StartMs, steadiness: 0, manner: new Manner(Mends: false));
        var day = RehearsalRun.Of(new PaperBook(new BatchOpened(StartMs, plan, "", Rehearsed: true)), player);
        var bare = day.Final.Steps.Where(s => s.Spec is { Kind: StepKind.CheckFittings or StepKind.TreatWater or StepKind.PrimePump or StepKind.Clean, Minutes: not null }).ToList();
        Assert.True(bare.Count >= 4);
        Assert.All(bare, s => Assert.InRange((s.EndedMs - s.StartedMs)!.Value - 60_000 * s.Spec.Minutes!.Value, 7_990, 8_100));
    }

    [Fact]
    public void APlantUnlikeItsProfileIsSeenAndMended()
    {
        var plan = Demo.Plan();
        var poor = HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices) with { ConversionYield = 0.86 };
        var day = Run(poor, plan);
        var runnings = day.Readings.First(r => r.Reading.Kind == ReadingKind.Gravity);
        Assert.True(runnings.Reading.Value < runnings.Expected - 0.002);
        Assert.Contains(day.Remedies, r => r.Remedy.Kind is RemedyKind.RunOffLess or RemedyKind.BoilLonger or RemedyKind.AddExtract);
        Assert.Equal(plan.Totals.OriginalGravitySg, day.Truth.OriginalGravitySg, 0.003);
    }

    [Fact]
    public void WeakElementsMakeALongDay()
    {
        var plan = Demo.Plan();
        var truth = HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices);
        var weak = truth with { Tanks = [.. truth.Tanks.Select(t => t with { PowerFactor = 0.6 })] };
        Assert.True(Run(weak, plan).VirtualS > Run(truth, plan).VirtualS + 1200);
    }

    [Fact]
    public void PlayedPieceByPieceItIsTheSameDay()
    {
        var plan = Demo.Plan();
        var whole = RehearsalRun.Of(plan, 7, StartMs);
        var book = Book(plan);
        var player = RehearsalPlayer.For(plan, 7, StartMs);
        for (var minute = 1; minute < 24 * 60 && book.State.Status != RunStatus.Complete; minute++)
            Play(player, book, StartMs + 60_000L * minute);
        Assert.Equal(whole.Events, book.State.Count);
        Assert.Equal(whole.Truth.FermenterL, player.Plant.Fermenter.ColdL, 0.2);
        Assert.Equal(whole.Truth.OriginalGravitySg, player.Plant.Fermenter.GravitySg, 0.0005);
    }

    [Fact]
    public void TheJournalAloneBringsThePlantBack()
    {
        var plan = Demo.Plan();
        var book = Book(plan);
        var player = RehearsalPlayer.For(plan, 3, StartMs);
        Play(player, book, StartMs + 4 * 3_600_000L);
        var again = RehearsalPlayer.For(plan, 3, StartMs);
        for (var i = 0; i < book.Events.Count; i++)
            again.Happened([book.Events[i]], RunFold.Of([.. book.Events.Take(i + 1)]));
        again.BrewerActs = false;
        Assert.Null(again.Next(book.State, player.NowMs));
        Assert.True(player.Plant.Kettle.ColdL > 40);
        Assert.Equal(player.Plant.Kettle.ColdL, again.Plant.Kettle.ColdL, 0.2);
        Assert.Equal(player.Plant.Kettle.GravitySg, again.Plant.Kettle.GravitySg, 0.0005);
    }

    [Fact]
    public void AHumanMayPressTheKeysInstead()
    {
        var plan = Demo.Plan();
        var book = Book(plan);
        var player = RehearsalPlayer.For(plan, 5, StartMs);
        player.BrewerActs = false;
        for (var nowMs = StartMs; book.State.Status != RunStatus.Complete && nowMs < StartMs + 86_400_000L; nowMs += 20_000)
        {
            Assert.Null(player.Next(book.State, nowMs));
            var focus = RunFocus.Of(book.State, Forecasts.At(book.State, nowMs), nowMs);
            if (focus.DueMs <= nowMs && KeyFor(focus) is { } command)
                Submit(player, book, command, nowMs);
        }
        Assert.Equal(RunStatus.Complete, book.State.Status);
        Assert.InRange(player.Plant.Fermenter.ColdL, 30, 45);
        Assert.Equal(0, player.Plant.WaterResidualKg, 1e-9);
    }

    [Fact]
    public void TakingBackADoughInDoesNotDoubleTheGrain()
    {
        var plan = Demo.Plan();
        var book = Book(plan);
        var player = RehearsalPlayer.For(plan, 3, StartMs);
        while (book.State.Step("mash.dough-in")!.Status != RunStatus.Running && player.Next(book.State, long.MaxValue) is { } command)
            Submit(player, book, command, player.NowMs);
        Submit(player, book, new RunCommand.Undo(), player.NowMs);
        Assert.Equal(RunStatus.Idle, book.State.Step("mash.dough-in")!.Status);
        Play(player, book, player.NowMs + 3_600_000);
        Assert.Equal(RunStatus.Complete, book.State.Step("mash.dough-in")!.Status);
        var tun = player.Plant.Tun;
        // malt at 4 to 5 % moisture: what is not extract is grain
        Assert.InRange((tun.GrainKg + tun.ExtractKg) / plan.Recipe.MashKg, 0.93, 0.97);
    }

    [Fact]
    public void ADeskThatRefusesEverythingEndsTheDay()
    {
        var plan = Demo.Plan();
        var day = RehearsalRun.Of(HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices), new Deaf(Book(plan).State), StartMs);
        Assert.Equal(RehearsalResult.Aborted, day.Ended);
    }

    private static RunCommand? KeyFor(RunFocus focus) => focus.Act switch
    {
        FocusAct.Start => new RunCommand.Start(focus.StepId),
        FocusAct.Finish => new RunCommand.Finish(focus.StepId),
        FocusAct.Resume => new RunCommand.Resume(focus.StepId),
        _ => null,
    };

    private static void Play(RehearsalPlayer player, PaperBook book, long toMs)
    {
        while (player.Next(book.State, toMs) is { } command)
            Submit(player, book, command, player.NowMs);
    }

    private static void Submit(RehearsalPlayer player, PaperBook book, RunCommand command, long nowMs)
    {
        var decision = book.Submit(command, nowMs);
        player.Answered(command, decision);
        if (decision is Decision.Accepted accepted)
            player.Happened(accepted.Events, book.State);
    }

    private static RehearsalResult Run(HiddenTruth truth, Plan plan) => RehearsalRun.Of(truth, Book(plan), StartMs);

    private static PaperBook Book(Plan plan) => new(new BatchOpened(StartMs, plan, "test", Rehearsed: true));

    private sealed record Deaf(RunState State) : IRunBook
    {
        public Decision Submit(RunCommand command, long nowMs) => new Decision.Refused("deaf");
    }
}
