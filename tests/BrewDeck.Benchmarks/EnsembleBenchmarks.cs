using BenchmarkDotNet.Attributes;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Profiles;

namespace BrewDeck.Benchmarks;

/// <summary>A reading moves the 4,096 members, and the outlook with its bands is drawn again. To be under 16 ms at the median.</summary>
[MemoryDiagnoser]
[MedianColumn]
[InProcess]
public class EnsembleBenchmarks
{
    private const long StartMs = 1_780_000_000_000;

    private const long LautersMs = StartMs + 2 * 3_600_000;

    private RunState _state = new();

    private ReadingTaken _reading = null!;

    /// <summary>In the vorlauf: most of the day is still to come.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var profiles = ProfileFolder.BesideProgram("");
        var plan = Planner.Draw(
            profiles.Brewhouse(profiles.FindBrewhouse("quayside-65")), profiles.Recipe(profiles.FindRecipe("quayside-amber")), new DayChoices()) is PlanResult.Drawn drawn
            ? drawn.Plan
            : throw new InvalidOperationException("no plan");
        var events = new List<RunEvent> { new BatchOpened(StartMs, plan, "", Rehearsed: true) };
        foreach (var step in plan.Steps.TakeWhile(s => s.Spec.Kind != StepKind.Lauter))
        {
            events.Add(new StepStarted(StartMs + (long)(1000 * step.StartS), step.Spec.Id));
            if (step.Spec.Kind != StepKind.Vorlauf)
                events.Add(new StepFinished(StartMs + (long)(1000 * step.EndS), step.Spec.Id));
        }
        _state = RunFold.Of([.. events.OrderBy(e => e.AtMs)]);
        _reading = new(LautersMs, new Reading(ReadingKind.Gravity, plan.Brewhouse.MashTun.Id, 1.079, "1.079"), []);
    }

    [Benchmark]
    public Outlook ReadingAndOutlook() => Forecasts.At(RunFold.Then(Copy(), _reading), LautersMs).Outlook;

    /// <summary>What the deck asks for at every tick.</summary>
    [Benchmark]
    public Outlook Tick() => Forecasts.At(Copy(), LautersMs).Outlook;

    /// <summary>Of what was asked already the answer is remembered: each time another state and plant are asked of.</summary>
    private RunState Copy() => _state with { Live = _state.Live! with { } };
}
