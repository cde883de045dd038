using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Learning;

/// <summary>What went wrong on a day is no property of the brewhouse: it is shown with its reason, and left out of what is believed.</summary>
public sealed class SpoiltEvidenceTests(SpoiltEvidenceTests.Brewed brewed) : IClassFixture<SpoiltEvidenceTests.Brewed>
{
    public sealed class Brewed
    {
        internal IReadOnlyList<RunEvent> Events { get; } = new SimulatedHouse(3, calibrated: false).Events(1);
    }

    [Fact]
    public void A_day_that_went_well_leaves_nothing_out()
    {
        Assert.All(Said(brewed.Events), e => Assert.Null(e.LeftOut));
        Assert.Contains(Said(brewed.Events), e => e.Parameter == LessonParameters.Evaporation);
    }

    /// <summary>Half in bottles, half in a keg: what is left behind is what neither has.</summary>
    [Fact]
    public void What_the_fermenter_keeps_is_what_no_lot_has_and_nothing_while_beer_is_left()
    {
        var wort = RunFold.RecordOf(brewed.Events).Ferment.MeasuredL!.Value;
        var at = brewed.Events[^1].AtMs + 20 * 86_400_000L;
        BeerPackaged Lot(double litres, double? left) => new(at, new(PackageKind.Keg, litres, 2.4, 4)) { LeftL = left };
        RunEvent first = Lot(20, wort - 20), last = Lot(wort - 21.5, 1.5);

        Assert.DoesNotContain(Said([.. brewed.Events, first]), e => e.Parameter == LessonParameters.FermenterLoss);
        Assert.Equal(1.5, Of([.. brewed.Events, first, last], LessonParameters.FermenterLoss).Value, 1e-9);
        // half of it poured away
        Assert.DoesNotContain(Said([.. brewed.Events, first, new PackagingEnded(at)]), e => e.Parameter == LessonParameters.FermenterLoss);
    }

    [Fact]
    public void What_boiled_over_did_not_boil_off()
    {
        var boil = Started(StepKind.HotBreak);
        var events = Then(boil.AtMs + 60_000, new TroubleReported(boil.AtMs + 60_000, new(TroubleKind.BoiledOver, boil.StepId)));

        Assert.Equal(Spoilt.BoiledOver, Of(events, LessonParameters.Evaporation).LeftOut);
        Assert.Equal(0, Lesson(events, LessonParameters.Evaporation).Band.Batches);
        Assert.Null(Of(events, LessonParameters.Runoff).LeftOut);
        Assert.Null(BatchFigures.Of(RunFold.RecordOf(events))[Figure("evaporation_kg_per_h")]);
        Assert.NotNull(BatchFigures.Of(RunFold.RecordOf(brewed.Events))[Figure("evaporation_kg_per_h")]);
    }

    /// <summary>More came after it, whoever read it and however it was taken.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(null)]
    public void A_level_while_wort_still_runs_is_not_the_one_that_boils(bool? stillRuns)
    {
        var lauter = Started(StepKind.Lauter);
        var kettle = RunFold.RecordOf(brewed.Events).Plan!.Brewhouse.Kettle.Id;
        var events = Then(lauter.AtMs + 60_000, new ReadingTaken(lauter.AtMs + 60_000, new Reading(ReadingKind.Volume, kettle, 12, "") { StillRuns = stillRuns }, []));

        Assert.Equal(Of(brewed.Events, LessonParameters.Evaporation).Value, Of(events, LessonParameters.Evaporation).Value, 1e-9);
    }

    [Fact]
    public void A_run_off_that_was_reported_stuck_says_nothing_of_the_bed()
    {
        var lauter = Started(StepKind.Lauter);
        var stuck = new Trouble(TroubleKind.RunoffStuck, lauter.StepId);
        var events = Then(lauter.AtMs + 60_000, new TroubleReported(lauter.AtMs + 60_000, stuck), new TroubleCleared(lauter.AtMs + 61_000, stuck));

        Assert.All(
            [LessonParameters.Runoff, LessonParameters.SpargeStages, LessonParameters.Absorption],
            id => Assert.Equal(Spoilt.RunOffStuck, Of(events, id).LeftOut));
        Assert.Null(Of(events, LessonParameters.ConversionYield).LeftOut);
    }

    [Fact]
    public void A_hold_spoils_what_was_timed_and_not_what_was_measured()
    {
        var lauter = Started(StepKind.Lauter);
        var events = Then(lauter.AtMs + 60_000, new StepHeld(lauter.AtMs + 60_000, lauter.StepId, ""), new StepResumed(lauter.AtMs + 120_000, lauter.StepId));

        Assert.Equal(Spoilt.Held, Of(events, LessonParameters.Runoff).LeftOut);
        Assert.Null(Of(events, LessonParameters.Absorption).LeftOut);
    }

    /// <summary>The tank stands at its temperature for twelve minutes before anybody reads it.</summary>
    [Fact]
    public void A_heat_up_that_was_read_long_after_it_was_there_says_nothing_of_the_power()
    {
        var heat = Started(StepKind.HeatStrike);
        var late = brewed.Events.Select(e => e.AtMs > heat.AtMs + 60_000 ? e with { AtMs = e.AtMs + 12 * 60_000 } : e).ToList();

        Assert.Contains(Said(late), e => e is { Parameter: "net:liquor", LeftOut: Spoilt.Late });
        Assert.Contains("left out, read or struck late", Details(late, "net:liquor"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MishapKind.BoilOver, StepKind.HotBreak, LessonParameters.Evaporation, Spoilt.BoiledOver)]
    [InlineData(MishapKind.StuckBed, StepKind.Lauter, LessonParameters.Runoff, Spoilt.RunOffStuck)]
    [InlineData(MishapKind.WrongWeighIn, StepKind.DoughIn, LessonParameters.ConversionYield, Spoilt.Mishap)]
    [InlineData(MishapKind.SlowChiller, StepKind.CastOut, LessonParameters.Chiller, Spoilt.Mishap)]
    public void What_a_rehearsal_was_dealt_teaches_nothing(MishapKind kind, StepKind step, string parameter, Spoilt why)
    {
        var opened = (BatchOpened)brewed.Events[0];
        RunEvent[] dealt = [opened with { Card = new(1, [new(kind, Severity.Plain, Started(step).StepId)]) }, .. brewed.Events.Skip(1)];

        Assert.Equal(why, Of(dealt, parameter).LeftOut);
    }

    [Fact]
    public void A_circuit_that_had_tripped_spoils_the_heat_up_beside_it()
    {
        var heat = Started(StepKind.HeatStrike);
        var circuit = ((BatchOpened)brewed.Events[0]).Plan.Brewhouse.Circuits[0].Id;
        var tripped = new Trouble(TroubleKind.CircuitTripped, circuit);
        var events = Then(heat.AtMs + 60_000, new TroubleReported(heat.AtMs + 60_000, tripped), new TroubleCleared(heat.AtMs + 90_000, tripped));

        Assert.Contains(Said(events), e => e is { Parameter: "net:liquor", LeftOut: Spoilt.WithoutPower });
    }

    private StepStarted Started(StepKind kind)
    {
        var plan = ((BatchOpened)brewed.Events[0]).Plan;
        return brewed.Events.OfType<StepStarted>().First(e => plan.Steps.Any(s => s.Spec.Id == e.StepId && s.Spec.Kind == kind));
    }

    private List<RunEvent> Then(long atMs, params RunEvent[] more) => [.. brewed.Events.TakeWhile(e => e.AtMs <= atMs), .. more, .. brewed.Events.SkipWhile(e => e.AtMs <= atMs)];

    private static IEnumerable<Evidence> Said(IReadOnlyList<RunEvent> events) => Lessons.EvidenceOf(BatchTrace.Of(1, events)!);

    private static Evidence Of(IReadOnlyList<RunEvent> events, string parameter) => Said(events).Single(e => e.Parameter == parameter);

    private static Lesson Lesson(IReadOnlyList<RunEvent> events, string parameter) => Lessons.Of(SimulatedHouse.Profile, [BatchTrace.Of(1, events)!]).Single(l => l.Parameter.Id == parameter);

    private static string Details(IReadOnlyList<RunEvent> events, string parameter) =>
        string.Join("\n", LessonWords.Details(Lesson(events, parameter), [], Notation.Metric).Select(l => l.ToString()));

    private static int Figure(string name) => BatchFigures.All.ToList().FindIndex(f => f.Name == name);
}
