using BrewDeck.Commands;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>
/// Batches as the program writes them: rehearsed days of several seeds, each one of some eighty events, then a fermenter that is read
/// every quarter of an hour until the batch has the wanted number. Every batch has a date of its own.
/// </summary>
internal static class RehearsedDays
{
    private const int Seeds = 12;
    private const long StartMs = 1_500_000_000_000, DayMs = 86_400_000, ReadEveryMs = 900_000;

    private static readonly string[] Recipes = ["Quayside Amber", "Harbour Lager", "Lock Gate Porter", "Towpath Wheat", "Ropewalk Bitter"];

    public static IEnumerable<IReadOnlyList<TapeLine>> Make(int batches, int events)
    {
        var days = Enumerable.Range(1, Seeds).Select(Day).ToList();
        for (var i = 0; i < batches; i++)
            yield return Lines(Shifted(days[i % Seeds], i * DayMs, Recipes[i % Recipes.Length]).Concat(Fermenting(days[i % Seeds][^1].AtMs + i * DayMs)).Take(events));
    }

    /// <summary>One brew day's events on the day of its seed, as the stand-in brewer did them.</summary>
    public static IReadOnlyList<RunEvent> Day(int seed)
    {
        var profiles = ProfileFolder.BesideProgram("");
        var plan = Planner.Draw(
            profiles.Brewhouse(profiles.FindBrewhouse("quayside-65")), profiles.Recipe(profiles.FindRecipe("quayside-amber")), new DayChoices()) is PlanResult.Drawn drawn
            ? drawn.Plan
            : throw new InvalidOperationException("no plan");
        var book = new PaperBook(new BatchOpened(StartMs, plan, Workplace.Version, Rehearsed: true));
        RehearsalRun.Of(HiddenTruth.Draw(plan.Brewhouse, plan.Choices, seed), book, StartMs);
        return book.Events;
    }

    private static IEnumerable<RunEvent> Shifted(IReadOnlyList<RunEvent> day, long byMs, string recipe) => day.Select(e => e switch
    {
        BatchOpened o => o with { AtMs = o.AtMs + byMs, Plan = o.Plan with { Recipe = o.Plan.Recipe with { Name = recipe } } },
        _ => e with { AtMs = e.AtMs + byMs },
    });

    private static IEnumerable<RunEvent> Fermenting(long fromMs)
    {
        for (var i = 1; ; i++)
        {
            var gravity = Math.Round(1.012 + 0.036 * Math.Exp(-i / 300.0), 4);
            yield return new FermenterRead(
                fromMs + i * ReadEveryMs,
                i % 2 == 0
                    ? new FermenterReading(FermenterFigure.Gravity, gravity, FormattableString.Invariant($"{gravity}"))
                    : new FermenterReading(FermenterFigure.Temperature, 19 + i % 7 * 0.1, FormattableString.Invariant($"{19 + i % 7 * 0.1:0.0}")));
        }
    }

    private static List<TapeLine> Lines(IEnumerable<RunEvent> events)
    {
        TapeLine? last = null;
        return [.. events.Select(e => last = TapeLine.After(last, EventCodec.Encode(e)))];
    }
}
