using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>
/// A rehearsed day that is played piece by piece: time passes on the plant, the stand-in brewer asks for commands, and the plant follows
/// every event whoever caused it. The caller decides and journals:
/// <code>
/// while (player.Next(state, toMs) is { } command)
/// {
///     var decision = RunDesk.Decide(state, command, player.NowMs);   // append to the journal, fold
///     player.Answered(command, decision);
///     player.Happened(events, state);
/// }
/// </code>
/// To take up a day again after a break, <see cref="Replay"/> the journal.
/// </summary>
public sealed class RehearsalPlayer
{
    private const long StepMs = (long)(1000 * VirtualPlant.StepS);

    private readonly PlantFollower _hands;

    private readonly StandInBrewer _brewer;

    private RunState? _state;

    private int _thoughtCount = -1;

    private int _thoughtDone = -1;

    private int _thoughtAsked;

    /// <param name="startMs">Unix ms from which the plant's time counts.</param>
    /// <param name="mishaps">Each with the step that it begins in, see <see cref="MishapPlaces.Placed"/>.</param>
    /// <param name="manner">How the stand-in brewer meets what goes wrong; null: as practised brewers do.</param>
    public RehearsalPlayer(
        HiddenTruth truth, long startMs, double steadiness = 1, ImmutableArray<Mishap> mishaps = default, Manner? manner = null)
    {
        StartMs = NowMs = startMs;
        Plant = new VirtualPlant(truth);
        Instruments = new Instruments(Plant);
        var pace = new HumanPace(truth.Seed, steadiness, truth.Pace);
        LiveMishaps = new LiveMishaps(mishaps.IsDefault ? [] : mishaps, Plant);
        _hands = new PlantFollower(Plant, Instruments, pace, LiveMishaps);
        _brewer = new StandInBrewer(_hands, Instruments, pace, manner ?? Manner.Practised);
    }

    public static RehearsalPlayer For(Plan plan, int seed, long startMs, ImmutableArray<Mishap> mishaps = default, Manner? manner = null) => new(
        HiddenTruth.Draw(plan.Brewhouse, plan.Choices, seed), startMs, 1, mishaps.IsDefault ? [] : MishapPlaces.Placed(plan, mishaps), manner);

    public long StartMs { get; }

    /// <summary>Virtual clock, Unix ms.</summary>
    public long NowMs { get; private set; }

    public VirtualPlant Plant { get; }

    public Instruments Instruments { get; }

    public LiveMishaps LiveMishaps { get; }

    /// <summary>How far the mash has been off its rests, mean over their time, K.</summary>
    public double MashOffK => _hands.MashOffK;

    /// <summary>The farthest that it was off, K.</summary>
    public double MashWorstK => _hands.MashWorstK;

    public double? MashWorstAtS => _hands.MashWorstAtS;

    /// <summary>The vessel has been cleaned: its dials say nothing any more.</summary>
    public bool IsClean(string vessel) => _hands.IsClean(vessel);

    /// <summary>A moment of the plant's day, Unix ms.</summary>
    public long MsAt(double plantS) => StartMs + (long)(1000 * plantS);

    /// <summary>False: a human acts, the plant only follows.</summary>
    public bool BrewerActs { get; set; } = true;

    /// <summary>Lets time pass until the brewer wants something (returned, at <see cref="NowMs"/>) or until a moment (null).</summary>
    public RunCommand? Next(RunState state, long toMs)
    {
        _state = state;
        while (true)
        {
            var acts = BrewerActs && !LiveMishaps.LaptopOff;
            if (acts && Think(state) is { } command)
                return command;
            if (NowMs >= toMs)
                return null;
            var untilMs = Math.Min(NowMs + StepMs, toMs);
            Pass(acts ? Math.Max(NowMs + 1, Math.Min(Math.Min(untilMs, _brewer.WakeMs), NextEndMs())) : untilMs);
        }
    }

    /// <summary>What became of the command that <see cref="Next"/> returned.</summary>
    public void Answered(RunCommand command, Decision decision)
    {
        _brewer.Answered(command, decision, NowMs);
        _thoughtCount = -1;
    }

    /// <summary>The plant does what was started and finished.</summary>
    /// <param name="after">State after all these events.</param>
    public void Happened(IReadOnlyList<RunEvent> events, RunState after)
    {
        foreach (var happened in events)
        {
            if (happened.AtMs > NowMs)
                Pass(happened.AtMs);
            Follow(happened, after);
        }
        if (events.Any(e => e is Undone))
            _hands.TakenBack(after.Steps);
        foreach (var step in after.Steps)
        {
            if (step.Status is RunStatus.Running or RunStatus.Held)
                _hands.Asked(step.Spec);
        }
        _state = after;
    }

    /// <summary>Plays a record from its beginning, act by act as it happened; the brewer does nothing.</summary>
    /// <param name="events">All so far; the first opened the batch.</param>
    /// <returns>The state after them.</returns>
    public RunState Replay(IReadOnlyList<RunEvent> events)
    {
        var state = RunFold.Of([]);
        for (var i = 0; i < events.Count;)
        {
            var from = i;
            do
            {
                state = events[i] is Undone ? RunFold.Of([.. events.Take(i + 1)]) : RunFold.Then(state, events[i]);
                i++;
            }
            while (i < events.Count && events[i].Part > 0);
            Happened([.. events.Skip(from).Take(i - from)], state);
        }
        return state;
    }

    private RunCommand? Think(RunState state)
    {
        var done = _hands.DoneCount();
        if (state.Count == _thoughtCount && done == _thoughtDone && LiveMishaps.Asked == _thoughtAsked && NowMs < _brewer.WakeMs)
            return null;
        (_thoughtCount, _thoughtDone, _thoughtAsked) = (state.Count, done, LiveMishaps.Asked);
        var forecast = Forecasts.At(state, NowMs);
        return _brewer.Decide(state, forecast, RunFocus.Of(state, forecast, NowMs), NowMs);
    }

    /// <summary>Work that is over between two steps of the plant is seen when it is over, not up to a step later.</summary>
    private long NextEndMs() => _hands.NextEndS() is var end && double.IsFinite(end) ? StartMs + (long)Math.Ceiling(1000 * end) : long.MaxValue;

    private void Pass(long untilMs)
    {
        _hands.Advance((untilMs - NowMs) / 1000.0);
        NowMs = untilMs;
    }

    private void Follow(RunEvent happened, RunState after)
    {
        LiveMishaps.Happened(happened);
        switch (happened)
        {
            case StepStarted started:
                var shown = _state is { Plan: not null } before ? Forecasts.At(before, started.AtMs) : null;
                _hands.Started(Order.Of(after, shown, started.StepId));
                break;
            case StepFinished finished:
                _hands.Finished(finished.StepId);
                break;
            case StepSkipped skipped:
                _hands.Skipped(skipped.StepId);
                break;
            case StepHeld held:
                _hands.Held(held.StepId);
                break;
            case StepResumed resumed:
                _hands.Resumed(resumed.StepId);
                break;
            case RunAborted:
                _hands.Aborted();
                break;
        }
    }
}
