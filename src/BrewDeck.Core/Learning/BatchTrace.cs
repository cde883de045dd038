using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Learning;

/// <summary>A finished batch folded once, with the model's plant as it stood when each step began.</summary>
public sealed class BatchTrace
{
    private readonly Dictionary<string, LivePlant> _atStart;

    private BatchTrace(int number, RunState final, Dictionary<string, LivePlant> atStart) => (Number, Final, _atStart) = (number, final, atStart);

    public int Number { get; }

    public RunState Final { get; }

    public Plan Plan => Final.Plan!;

    /// <summary>When the batch was opened, Unix ms.</summary>
    public long OpenedMs { get; private init; }

    /// <returns>Null for a batch that was not finished, or that lacks a plan: it teaches nothing.</returns>
    public static BatchTrace? Of(int number, IReadOnlyList<RunEvent> events)
    {
        var undone = RunFold.UndoneIn(events);
        var atStart = new Dictionary<string, LivePlant>(StringComparer.Ordinal);
        var state = new RunState();
        for (var i = 0; i < events.Count; i++)
        {
            if (events[i] is Undone || undone.Contains(i))
                continue;
            state = RunFold.Then(state with { Count = i }, events[i]);
            if (events[i] is StepStarted started && state.Live is { } live)
                atStart[started.StepId] = live with { Belief = null! };
        }
        // what the day believed of itself is large and says nothing here: dropped, so that fifty batches fit in memory
        state = state with { Live = null };
        return state is { Status: RunStatus.Complete, Plan: not null } ? new(number, state, atStart) { OpenedMs = events[0].AtMs } : null;
    }

    public LivePlant? AtStart(RunStep step) => _atStart.GetValueOrDefault(step.Spec.Id);

    /// <summary>The first reading of a kind at a vessel within a step's own time.</summary>
    public TakenReading? Within(RunStep step, ReadingKind kind, string vessel) => Final.Readings.FirstOrDefault(r =>
        r.Reading.Is(kind, vessel) && r.AtMs >= step.StartedMs && r.AtMs <= step.EndedMs);

    public double SecondsOf(RunStep step) => ((step.EndedMs ?? 0) - (step.StartedMs ?? 0)) / 1000.0;

    public Evidence Says(string parameter, double value, double sd, double sharedSd, params ImmutableArray<DrivingReading> readings) =>
        new(parameter, Number, value, sd, sharedSd, readings) { Rehearsed = Final.Rehearsed };
}
