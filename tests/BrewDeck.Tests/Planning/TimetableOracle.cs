using BrewDeck.Core.Planning;
using Google.OrTools.Sat;

namespace BrewDeck.Tests.Planning;

/// <summary>
/// The shortest day that the steps of a plan allow, each as long as it was planned: an exact solver is free in what the recipe leaves
/// open, the order in which the hands and the circuits serve the vessels. A plug takes its time between two vessels, but what it costs
/// the hands is counted for the planned moves only, so the bound is no longer than any real day.
/// </summary>
internal sealed class TimetableOracle
{
    private readonly CpModel _model = new();
    private readonly Plan _plan;
    private readonly PlantSetting _setting;
    private readonly IntVar[] _starts;
    private readonly long[] _lengths;
    private readonly long _horizon;

    private TimetableOracle(Plan plan)
    {
        _plan = plan;
        _setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        _horizon = (long)(2 * plan.Totals.DayS);
        // rounded down, so that the bound stays one
        _lengths = [.. plan.Steps.Select(s => (long)Math.Floor(s.DurationS))];
        _starts = [.. plan.Steps.Select((s, i) => _model.NewIntVar(0, _horizon, s.Spec.Id))];
    }

    /// <returns>Seconds; null when the solver did not prove its answer.</returns>
    public static double? ShortestS(Plan plan) => new TimetableOracle(plan).Solve();

    private double? Solve()
    {
        Vessels();
        Rests();
        Gates();
        Hands();
        Circuits();
        var end = _model.NewIntVar(0, _horizon, "end");
        for (var i = 0; i < _starts.Length; i++)
            _model.Add(end >= _starts[i] + _lengths[i]);
        _model.Minimize(end);
        var solver = new CpSolver { StringParameters = "num_workers:1,max_time_in_seconds:20" };
        return solver.Solve(_model) == CpSolverStatus.Optimal ? solver.ObjectiveValue : null;
    }

    /// <summary>What happens in a vessel keeps its order: it is the recipe's.</summary>
    private void Vessels()
    {
        for (var i = 0; i < _starts.Length; i++)
        {
            for (var j = i + 1; j < _starts.Length; j++)
            {
                if (PlantModel.VesselsOf(_setting, _plan.Steps[i].Spec).Intersect(PlantModel.VesselsOf(_setting, _plan.Steps[j].Spec)).Any())
                    _model.Add(_starts[j] >= _starts[i] + _lengths[i]);
            }
        }
    }

    /// <summary>No rest is stretched more than in the plan: a shorter day bought with a longer rest is another beer.</summary>
    private void Rests()
    {
        for (var i = 0; i < _starts.Length; i++)
        {
            if (_plan.Steps[i].Spec.Kind != StepKind.Rest)
                continue;
            var next = _plan.Steps.ToList().FindIndex(i + 1, s => s.Spec.Vessel == _plan.Steps[i].Spec.Vessel);
            var waits = (long)Math.Ceiling(_plan.Steps[next].StartS - _plan.Steps[i].EndS) + 1;
            _model.Add(_starts[next] <= _starts[i] + _lengths[i] + Math.Max(waits, 0));
        }
    }

    private void Gates()
    {
        for (var i = 0; i < _starts.Length; i++)
        {
            var spec = _plan.Steps[i].Spec;
            var before = _plan.Steps.ToList().FindIndex(s => s.Spec.Id == spec.AfterStepId);
            if (before >= 0)
                _model.Add(_starts[i] >= _starts[before] + _lengths[before] - (long)Math.Ceiling(spec.LeadS));
        }
        // the day begins with the look at the fittings and ends with the plant clean: what is cleaned has been used
        for (var i = 1; i < _starts.Length; i++)
            _model.Add(_starts[i] >= _lengths[0]);
        var used = _plan.Steps.ToList().FindIndex(s => s.Spec.Kind == StepKind.Pitch);
        for (var i = used + 1; i < _starts.Length; i++)
            _model.Add(_starts[i] >= _starts[used] + _lengths[used]);
    }

    private void Hands() => _model.AddNoOverlap(_plan.Steps.Select((s, i) => (s, i)).Where(x => x.s.Spec.HandsS > 0)
        .Select(x => _model.NewFixedSizeIntervalVar(_starts[x.i], (long)Math.Floor(x.s.HandsS), $"hands {x.i}")));

    /// <summary>One vessel at a time heats from a shared circuit, and between two vessels lies the move of its plug, whatever the order; with one circuit the water is heated first, as the brewer wants it.</summary>
    private void Circuits()
    {
        foreach (var circuit in _setting.Circuits.Where((_, c) => _setting.Wiring.IsShared(c)))
        {
            var moves = (long)_plan.Steps.Where(s => s.Spec.Kind == StepKind.MovePlug && s.Spec.Label == circuit.Id)
                .Select(s => s.DurationS).DefaultIfEmpty(0).Min();
            var heats = Enumerable.Range(0, _starts.Length)
                .Where(i => _plan.Steps[i].Circuit?.Split(", ").Contains(circuit.Id) == true).ToList();
            foreach (var (i, j) in heats.SelectMany(i => heats.Where(j => j > i), (i, j) => (i, j)))
            {
                var gap = Heated(i) == Heated(j) ? 0 : moves;
                var first = _model.NewBoolVar($"{i} before {j}");
                if (_setting.Circuits.Length == 1 && Heated(i) == 0)
                    _model.Add(first == 1);
                _model.Add(_starts[j] >= _starts[i] + _lengths[i] + gap).OnlyEnforceIf(first);
                _model.Add(_starts[i] >= _starts[j] + _lengths[j] + gap).OnlyEnforceIf(first.Not());
            }
        }
    }

    private int Heated(int step) => PlantModel.HeatedVessel(_setting, _plan.Steps[step].Spec);
}
