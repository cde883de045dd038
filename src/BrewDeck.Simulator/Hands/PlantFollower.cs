using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Hands;

/// <summary>
/// The hands: does on the plant what the journal says was started and finished, whoever decided it. Acts that cannot be undone are
/// done once, however often a step is started again.
/// </summary>
public sealed class PlantFollower(VirtualPlant plant, Instruments instruments, HumanPace pace, LiveMishaps mishaps)
{
    /// <summary>A probe this close to its target counts as there: thermostats throttle just below it; K.</summary>
    private const double CloseK = 0.15;

    private readonly Dictionary<string, Job> _jobs = [];

    private double _offKS, _restS;

    private bool _allOff;

    private readonly HandActs _acts = new(plant, instruments, pace);

    public VirtualPlant Plant => plant;

    public LiveMishaps LiveMishaps => mishaps;

    /// <summary>How far the mash has been off its rests, mean over their time, K; 0 before the first.</summary>
    public double MashOffK => _restS > 0 ? _offKS / _restS : 0;

    /// <summary>The farthest that it was off, K.</summary>
    public double MashWorstK { get; private set; }

    /// <summary>When that was, seconds of the plant; null: it never was.</summary>
    public double? MashWorstAtS { get; private set; }

    public void Started(Order order)
    {
        mishaps.Starting(order);
        var again = _jobs.TryGetValue(order.Id, out var before);
        var job = new Job(order, plant.NowS, pace.WorkFactor()) { SpargeLeftL = before?.SpargeLeftL ?? double.NaN };
        _jobs[order.Id] = job;
        _acts.Begin(job, again);
    }

    /// <summary>A remedy, or taking one back, may have changed the minutes of a step that runs by the clock.</summary>
    public void Asked(StepSpec spec)
    {
        if (!_jobs.TryGetValue(spec.Id, out var job) || job.Ended)
            return;
        var was = job.Order.Spec;
        if (spec.Minutes != was.Minutes)
            job.Extend(spec);
        if (spec.VolumeL != was.VolumeL || spec.SpargeL != was.SpargeL || spec.TargetC != was.TargetC)
            Turned(job, was, spec);
    }

    /// <summary>Other marks for what is going on: the valve is closed and set anew.</summary>
    private void Turned(Job job, StepSpec was, StepSpec spec)
    {
        if (job.Active)
            _acts.Pause(job);
        job.Turn(spec);
        if (!double.IsNaN(job.SpargeLeftL))
            job.SpargeLeftL = Math.Max(0, job.SpargeLeftL + (spec.SpargeL ?? 0) - (was.SpargeL ?? 0));
        if (job.Active)
            _acts.Begin(job, again: true);
    }

    public void Finished(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job) || job.Ended)
            return;
        job.Ended = true;
        _acts.End(job);
        mishaps.Finished(stepId);
    }

    /// <summary>Hands off: flows stop, elements that were driving this step go out.</summary>
    public void Held(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job) || !job.Active)
            return;
        job.HeldS = plant.NowS;
        _acts.Pause(job);
        mishaps.Held(stepId);
    }

    public void Resumed(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job) || double.IsNaN(job.HeldS))
            return;
        job.StartS += plant.NowS - job.HeldS;
        job.HeldS = double.NaN;
        _acts.Begin(job, again: true);
    }

    /// <summary>Left out, or given up half-way: what is on its way stops.</summary>
    public void Skipped(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job) || job.Ended)
            return;
        job.Ended = true;
        _acts.Pause(job);
    }

    public void Aborted()
    {
        plant.AllOff();
        _allOff = true;
    }

    /// <summary>
    /// An act was taken back: the hands go back to where the record has each step now. What they have brought stays in; valves and heat
    /// can be set again.
    /// </summary>
    public void TakenBack(IReadOnlyList<RunStep> steps)
    {
        // what was begun by the same key is left first: it may have turned off what goes on again
        foreach (var step in steps.Where(s => s.Status == RunStatus.Idle))
            NotBegun(step.Spec.Id);
        foreach (var step in steps)
        {
            if (step.Status == RunStatus.Held)
                Held(step.Spec.Id);
            else if (step.Status == RunStatus.Running)
                GoOn(step.Spec.Id);
        }
        _allOff &= !steps.Any(s => s.Status is RunStatus.Running or RunStatus.Held);
    }

    private void NotBegun(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job) || job.Ended)
            return;
        job.Ended = true;
        _acts.Leave(job);
    }

    private void GoOn(string stepId)
    {
        if (!_jobs.TryGetValue(stepId, out var job))
            return;
        if (!double.IsNaN(job.HeldS) && !job.Ended)
        {
            Resumed(stepId);
            return;
        }
        if (!job.Ended && !_allOff)
            return;
        (job.Ended, job.HeldS) = (false, double.NaN);
        mishaps.GoesOn(stepId);
        _acts.Begin(job, again: true);
    }

    /// <summary>Lets time pass, the hands on their valves.</summary>
    public void Advance(double seconds)
    {
        for (var left = seconds; left > 0; left -= VirtualPlant.StepS)
        {
            var piece = Math.Min(VirtualPlant.StepS, left);
            plant.Advance(piece);
            mishaps.Watch(piece);
            foreach (var job in _jobs.Values)
            {
                if (!job.Active)
                    continue;
                _acts.Watch(job);
                // heated back to its rest, the mash is off it as well
                if (job.Order is { Kind: StepKind.Rest or StepKind.HeatMash, TargetC: { } wanted })
                    Off(Math.Abs(plant.Tun.TempC - wanted), piece);
            }
        }
    }

    private void Off(double kelvin, double seconds)
    {
        (_offKS, _restS) = (_offKS + seconds * kelvin, _restS + seconds);
        if (kelvin > MashWorstK)
            (MashWorstK, MashWorstAtS) = (kelvin, plant.NowS);
    }

    /// <summary>Dug out or washed: what the vessel last held is gone.</summary>
    public bool IsClean(string vessel) =>
        _jobs.Values.Any(j => j.Ended && j.Order.Kind == StepKind.Clean && j.Order.Spec.Vessel == vessel)
        && !_jobs.Values.Any(j => j.Active && (j.Order.Spec.Vessel == vessel || j.Order.Spec.To == vessel));

    /// <summary>The plant has really reached what the step asks for, its time is over, or waiting longer would be hopeless.</summary>
    public bool IsDone(string stepId) =>
        _jobs.TryGetValue(stepId, out var job) && (job.Ended || (job.Active && (Reached(job) || job.Hopeless(plant.NowS))));

    /// <summary>Done, or a step by the clock in its last minute: time to take the readings at its end.</summary>
    public bool IsNear(string stepId) =>
        IsDone(stepId) || (_jobs.TryGetValue(stepId, out var job) && job.Active && job.RunsByClock && job.WorkDone(plant.NowS + 60));

    /// <summary>Number of steps in hand that are done, and of those that nearly are: a change of it is worth a look.</summary>
    public int DoneCount()
    {
        var count = 0;
        foreach (var job in _jobs.Values)
        {
            if (!job.Ended)
                count += (IsDone(job.Order.Id) ? 1000 : 0) + (IsNear(job.Order.Id) ? 1 : 0);
        }
        return count;
    }

    /// <summary>When the next piece of work by clock or hand is over, seconds since the start of the day; infinite: none is going on.</summary>
    public double NextEndS()
    {
        var next = double.PositiveInfinity;
        foreach (var job in _jobs.Values)
        {
            if (job.Active && job.StartS + job.WorkS > plant.NowS)
                next = Math.Min(next, job.StartS + job.WorkS);
        }
        return next;
    }

    private bool Reached(Job job) => job.Order.Kind switch
    {
        StepKind.HeatStrike or StepKind.HeatSparge or StepKind.Ramp or StepKind.HeatMash =>
            instruments.ShownC(job.Order.Spec.Vessel) >= job.Order.TargetC - CloseK,
        StepKind.HeatToBoil or StepKind.HeatDecoction => plant.Kettle.TempC >= plant.BoilingC(plant.Kettle) - 0.05,
        StepKind.ChillInKettle => instruments.ShownC(job.Order.Spec.Vessel) <= job.Order.TargetC + CloseK,
        StepKind.CoolInFermenter when job.Order.Spec.Label == StepLabels.Room && plant.Truth.AmbientC > job.Order.TargetC =>
            instruments.ShownC(job.Order.Spec.Vessel) >= job.Order.TargetC - CloseK,
        StepKind.CoolInFermenter => instruments.ShownC(job.Order.Spec.Vessel) <= job.Order.TargetC + CloseK,
        StepKind.Fill or StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort
            or StepKind.PullDecoction or StepKind.ReturnDecoction => !plant.Pouring,
        StepKind.Lauter or StepKind.RunOff => !plant.RunsOff,
        StepKind.CastOut => !plant.CastsOut,
        StepKind.BatchSparge or StepKind.AddWater => job.WorkDone(plant.NowS) && !plant.Pouring,
        _ => job.WorkDone(plant.NowS),
    };
}
