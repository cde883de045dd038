using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>How far into its planned day each vessel is, so that the planned day's answers can be used for the real one.</summary>
internal sealed class DayPlace
{
    private readonly Response _response;
    private readonly (int Step, double Share)[] _vessels;
    private readonly int _kettle;
    private readonly int _boilsIn;

    /// <param name="live">Cut at <paramref name="nowS"/>.</param>
    public DayPlace(RunState state, LivePlant live, double nowS)
    {
        _response = live.Belief.Response;
        _kettle = _response.Setting.IndexOf(_response.Setting.Brewhouse.Kettle.Id);
        _boilsIn = live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id);
        _vessels = new (int, double)[live.Plant.Vessels.Length];
        Array.Fill(_vessels, (-1, 0));
        for (var i = 0; i < _response.Plan.Steps.Length; i++)
        {
            var spec = _response.Plan.Steps[i].Spec;
            if (state.Step(spec.Id) is not { Status: not RunStatus.Idle } step)
                continue;
            var share = Share(state, live, step, nowS);
            foreach (var vessel in PlantModel.VesselsOf(_response.Setting, spec))
                _vessels[vessel] = (i, share);
        }
    }

    /// <summary>A number of a vessel as it stands now.</summary>
    public Row Of(int vessel, Func<VesselState, double> of)
    {
        var planned = Planned(vessel);
        var (step, share) = _vessels[planned];
        return step < 0 ? _response.Row(_ => 0) : _response.Row(day => Mixed(day, step, share, planned, of));
    }

    /// <summary>Where another vessel has taken the kettle's place, the planned kettle tells of it, and nothing planned tells more of what the kettle keeps.</summary>
    private int Planned(int vessel) => vessel == _boilsIn ? _kettle : vessel == _kettle ? _boilsIn : vessel;

    private double Mixed(ImmutableArray<PlanStep> day, int step, double share, int vessel, Func<VesselState, double> of)
    {
        var after = of(day[step].After.Vessels[vessel]);
        if (share >= 1)
            return after;
        var before = (step > 0 ? day[step - 1].After : _response.Plan.Start).Vessels[vessel];
        return before.LiquidKg > 0 ? (1 - share) * of(before) + share * after : after;
    }

    private static double Share(RunState state, LivePlant live, RunStep step, double nowS)
    {
        if (step.Status is not (RunStatus.Running or RunStatus.Held) || step.StartedMs is not { } started)
            return 1;
        var left = LeftS(live, step.Spec.Id, nowS);
        var gone = Math.Max(0, nowS - state.SecondsAt(started));
        return gone + left > 0 ? gone / (gone + left) : 1;
    }

    private static double LeftS(LivePlant live, string id, double nowS)
    {
        var left = live.Running.Concat(live.Held).FirstOrDefault(s => s.Left.Id == id)?.Left;
        if (left is null)
            return 0;
        return left.Kind.EndsBy() is EndsBy.Clock or EndsBy.Hands
            ? 60 * (left.Minutes ?? 0)
            : PlantModel.Run(live.Setting, left, live.Plant, nowS, double.PositiveInfinity).DurationS;
    }
}
