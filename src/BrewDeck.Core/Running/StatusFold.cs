using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// Only where a run stands, without its plant: what a list of batches needs. Measured: folding the whole state for it at every act
/// took 38 % of a headless day.
/// </summary>
public sealed class StatusFold
{
    private readonly Dictionary<string, RunStatus> _steps = [];
    private RunStatus _status = RunStatus.Idle;

    private StatusFold()
    {
    }

    /// <summary>The same as the status of <see cref="RunFold.Of"/>.</summary>
    public static RunStatus Of(IReadOnlyList<RunEvent> events)
    {
        var fold = new StatusFold();
        var undone = RunFold.UndoneIn(events);
        for (var i = 0; i < events.Count; i++)
        {
            if (!undone.Contains(i) && fold._status is not (RunStatus.Complete or RunStatus.Aborted))
                fold.Happened(events[i]);
        }
        return fold._status;
    }

    private void Happened(RunEvent happened)
    {
        switch (happened)
        {
            case BatchOpened opened when _steps.Count == 0:
                Open(opened.Plan.Steps.Select(s => s.Spec));
                break;
            case RemedyChosen chosen:
                Open(chosen.Remedy.Added);
                foreach (var ended in chosen.Remedy.Ends)
                    Close(ended);
                break;
            case StepStarted e when Is(e.StepId, RunStatus.Idle):
                (_steps[e.StepId], _status) = (RunStatus.Running, RunStatus.Running);
                break;
            case StepHeld e when Is(e.StepId, RunStatus.Running):
                _steps[e.StepId] = RunStatus.Held;
                break;
            case StepResumed e when Is(e.StepId, RunStatus.Held):
                _steps[e.StepId] = RunStatus.Running;
                break;
            case StepFinished e when Is(e.StepId, RunStatus.Running):
                Close(e.StepId);
                break;
            case StepSkipped e when _steps.ContainsKey(e.StepId):
                Close(e.StepId);
                break;
            case RunAborted when _steps.Count > 0:
                _status = RunStatus.Aborted;
                break;
        }
    }

    private void Open(IEnumerable<StepSpec> specs)
    {
        foreach (var spec in specs)
            _steps.TryAdd(spec.Id, RunStatus.Idle);
    }

    private void Close(string stepId)
    {
        _steps.Remove(stepId);
        if (_steps.Count == 0)
            _status = RunStatus.Complete;
    }

    private bool Is(string stepId, RunStatus status) => _steps.TryGetValue(stepId, out var now) && now == status;
}
