using System.Text;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Trends;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;
using BrewDeck.SystemTests.Reports;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>What trends and the opening screen ask of all batches is kept when a day ends, and is right however the file came about.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class FigureCacheTests(RehearsedLogbook logbook)
{
    private static readonly string[] Names = [.. BatchFigures.All.Select(f => f.Name)];

    private readonly CuttableDisk _disk = new();

    [Fact]
    public void Figures_are_kept_when_the_day_ends_and_no_tape_is_read_for_them()
    {
        var events = logbook.Events();
        Brew(events);
        var reads = _disk.ReadsOfAll;
        using var journal = Journal.Open(_disk, StatusFold.Of);
        var figures = journal.FiguresOf(journal.List());
        var dues = journal.NextDuesOf(journal.List());

        Assert.Equal(reads + 1, _disk.ReadsOfAll);
        Assert.Equal(BatchFigures.Of(RunFold.Of(events)), Assert.Single(figures));
        Assert.Equal(DueDates.Of(FermentFold.Of(events)).Min(d => d.DueMs), Assert.Single(dues));
        Assert.True(Assert.Single(figures).Count(f => f is not null) >= 10);
    }

    [Fact]
    public void What_comes_after_the_day_is_looked_at_again()
    {
        var events = logbook.Events();
        Brew(events);
        var at = events[^1].AtMs + 1_000_000_000;
        using (var journal = Journal.Open(_disk, StatusFold.Of))
        {
            journal.Append(1, new FermenterRead(at, new FermenterReading(FermenterFigure.Gravity, 1.012, "1.012")));
            Assert.NotNull(Attenuation(journal));
        }

        using var again = Journal.Open(_disk, StatusFold.Of);
        var reads = _disk.ReadsOfAll;
        Assert.NotNull(Attenuation(again));
        Assert.Equal(reads + 1, _disk.ReadsOfAll);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{\"names\":[\"efficiency_percent\"")]
    [InlineData("null")]
    [InlineData("{\"sums\":SUMS,\"names\":[\"another\"],\"batches\":[{\"batch\":1,\"opened_ms\":OPENED,\"events\":EVENTS,\"values\":[1],\"next_due_ms\":null}]}")]
    [InlineData("{\"sums\":SUMS,\"names\":NAMES,\"batches\":[{\"batch\":1,\"opened_ms\":OPENED,\"events\":EVENTS,\"values\":[1],\"next_due_ms\":null}]}")]
    [InlineData("{\"sums\":SUMS,\"names\":NAMES,\"batches\":[{\"batch\":1,\"opened_ms\":7,\"events\":EVENTS,\"values\":[NONE],\"next_due_ms\":null}]}")]
    [InlineData("{\"sums\":SUMS,\"names\":NAMES,\"batches\":null}")]
    [InlineData("{\"names\":NAMES,\"batches\":[{\"batch\":1,\"opened_ms\":OPENED,\"events\":EVENTS,\"values\":[NONE],\"next_due_ms\":null}]}")]
    [InlineData("{\"sums\":1,\"names\":NAMES,\"batches\":[{\"batch\":1,\"opened_ms\":OPENED,\"events\":EVENTS,\"values\":[NONE],\"next_due_ms\":null}]}")]
    public void A_file_of_another_version_or_of_another_logbook_is_made_again(string text)
    {
        var events = logbook.Events();
        Brew(events);
        _disk.Put(FigureCache.Name, Encoding.UTF8.GetBytes(text
            .Replace("NAMES", $"[{string.Join(',', Names.Select(n => $"\"{n}\""))}]", StringComparison.Ordinal)
            .Replace("SUMS", FormattableString.Invariant($"{FigureCache.Sums}"), StringComparison.Ordinal)
            .Replace("NONE", string.Join(',', Names.Select(_ => "null")), StringComparison.Ordinal)
            .Replace("OPENED", FormattableString.Invariant($"{events[0].AtMs}"), StringComparison.Ordinal)
            .Replace("EVENTS", FormattableString.Invariant($"{events.Count}"), StringComparison.Ordinal)));
        using var journal = Journal.Open(_disk, StatusFold.Of);
        Assert.Equal(BatchFigures.Of(RunFold.Of(events)), Assert.Single(journal.FiguresOf(journal.List())));
    }

    /// <summary>By the events' own times, not by the fold.</summary>
    [Fact]
    public void Minutes_lost_in_the_lauter_are_those_of_its_steps()
    {
        var events = logbook.Events();
        var plan = ((BatchOpened)events[0]).Plan;
        var lauter = plan.Steps.Where(s => s.Spec.Unit == UnitProcedure.Lauter).ToList();
        var took = lauter.Sum(s => events.OfType<StepFinished>().Single(e => e.StepId == s.Spec.Id).AtMs - events.OfType<StepStarted>().Single(e => e.StepId == s.Spec.Id).AtMs);
        Assert.Equal(took / 60_000.0 - lauter.Sum(s => s.DurationS) / 60, Figure(events, "lauter_lost_min")!.Value, 6);
    }

    /// <summary>Trends and lessons tell of one boil with one figure, and it is what steam this kettle gives, not the noise of two near levels.</summary>
    [Fact]
    public void What_evaporated_is_the_same_in_trends_and_lessons()
    {
        var events = logbook.Events();
        var lesson = Lessons.EvidenceOf(BatchTrace.Of(1, events)!).Single(e => e.Parameter == LessonParameters.Evaporation);
        Assert.Equal(lesson.Value, Figure(events, "evaporation_kg_per_h")!.Value, 9);
        var profile = ((BatchOpened)events[0]).Plan.Brewhouse.Habits.EvaporationKgPerH;
        Assert.InRange(lesson.Value, 0.75 * profile, 1.25 * profile);
    }

    /// <summary>Not all of the element's power reaches the water, but most of it.</summary>
    [Fact]
    public void The_heat_up_is_somewhat_less_than_the_element_gives()
    {
        var plan = ((BatchOpened)logbook.Events()[0]).Plan;
        var vessel = plan.Brewhouse[plan.Steps.First(s => s.Spec.Kind == StepKind.HeatStrike).Spec.Vessel]!;
        Assert.InRange(1000 * Figure(logbook.Events(), "heat_up_kw")!.Value / vessel.RatedW, 0.75, 1);
    }

    private static double? Figure(IReadOnlyList<RunEvent> events, string name) => BatchFigures.Of(RunFold.RecordOf(events))[Array.IndexOf(Names, name)];

    private static double? Attenuation(Journal journal) => journal.FiguresOf(journal.List())[0][Array.IndexOf(Names, "attenuation_percent")];

    private void Brew(IReadOnlyList<RunEvent> events)
    {
        using var journal = Journal.Open(_disk, StatusFold.Of);
        var batch = journal.Open((BatchOpened)events[0]);
        foreach (var happened in events.Skip(1))
            journal.Append(batch, happened);
    }
}
