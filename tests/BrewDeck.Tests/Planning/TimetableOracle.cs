using BrewDeck.Core.Planning;
using Google.OrTools.Sat;

namespace BrewDeck.Tests.Planning;

/// <summary>
/// The shortest day that the steps of a plan allow, each as long as it was planned: an exact solver is free in what the recipe leaves
/// open, the order in which the hands and the circuits serve the vessels. Moves of plugs are left to the hands alone, so the bound is
/// no longer than any real day.
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
        Gates();
        Hands();
        Circuits();
        var end = _model.NewIntVar(0, _horizon, "end");
        for (var i = 0; i < _starts.Length; i++)
            _model.Add(end >= _starts[i] + _lengths[i]);
        _model.Minimize(end);
        var solver = new CpSolver { StringParameters = "num_workers:1,max_time_in_seconds:20" };
        var st = solver.Solve(_model);
        if (Environment.GetEnvironmentVariable("DUMP") is not null) foreach (var (s, i) in _plan.Steps.Select((s, i) => (s, i)))
            Console.WriteLine($"{s.Spec.Id,-22} {s.StartS / 60,8:F1} {s.DurationS / 60,6:F1} {s.HandsS/60,6:F1} oracle {solver.Value(_starts[i]) / 60.0,8:F1} {s.Circuit}");
        return st == CpSolverStatus.Optimal ? solver.ObjectiveValue : null;
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

    private void Gates()
    {
        for (var i = 0; i < _starts.Length; i++)
        {
            var spec = _plan.Steps[i].Spec;
            var before = _plan.Steps.ToList().FindIndex(s => s.Spec.Id == spec.AfterStepId);
            if (before >= 0)
                _model.Add(_starts[i] >= _starts[before] + _lengths[before] - (long)Math.Ceiling(spec.LeadS));
        }
        // wort that boils is not left to cool: additions come in their minute, and knock-out after the last of them
        var boil = Enumerable.Range(0, _starts.Length)
            .Where(i => _plan.Steps[i].Spec.Kind is StepKind.Boil or StepKind.AddToBoil or StepKind.KnockOut).ToArray();
        foreach (var (one, next) in boil.Zip(boil.Skip(1)))
            _model.Add(_starts[next] <= _starts[one] + _lengths[one] + (_plan.Steps[next].Spec.Kind == StepKind.KnockOut ? 60 : 1));
        // the day begins with the look at the fittings and ends with the plant clean: what is cleaned has been used
        for (var i = 1; i < _starts.Length; i++)
            _model.Add(_starts[i] >= _lengths[0]);
        var used = _plan.Steps.ToList().FindIndex(s => s.Spec.Kind == StepKind.Pitch);
        for (var i = used + 1; i < _starts.Length; i++)
            _model.Add(_starts[i] >= _starts[used] + _lengths[used]);
    }

    private void Hands() => _model.AddNoOverlap(_plan.Steps.Select((s, i) => (s, i)).Where(x => x.s.Spec.HandsS > 0)
        .Select(x => _model.NewFixedSizeIntervalVar(_starts[x.i], (long)Math.Floor(x.s.HandsS), $"hands {x.i}")));

    private void Circuits()
    {
        for (var c = 0; c < _setting.Circuits.Length; c++)
        {
            if (!_setting.Wiring.IsShared(c))
                continue;
            var loads = _plan.Steps.Select((s, i) => (s, i))
                .Where(x => x.s.Circuit?.Split(", ").Contains(_setting.Circuits[c].Id) == true)
                .Select(x => _model.NewFixedSizeIntervalVar(_starts[x.i], _lengths[x.i], $"circuit {c} {x.i}"));
            _model.AddNoOverlap(loads);
        }
    }
}
