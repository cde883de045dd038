using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Mash too cold or too warm for its rest.</summary>
internal static class MashRemedies
{
    /// <summary>Nearer than this a mash is left alone; K.</summary>
    private const double NearK = 0.7;

    /// <summary>No more than this is added to a mash for its temperature, litres per kg of grist.</summary>
    private const double MostLPerKg = 0.8;

    public static ImmutableArray<Remedy> For(Weigh weigh)
    {
        var rest = weigh.State.Steps.FirstOrDefault(s => s.Status == RunStatus.Running && s.Spec.Kind == StepKind.Rest);
        var setting = weigh.Live.Setting;
        if (rest?.Spec.TargetC is not { } target || !ReadSince(weigh.State, rest))
            return [];
        var index = setting.IndexOf(rest.Spec.Vessel);
        var tun = weigh.Live.Plant.Vessels[index];
        if (Math.Abs(OffPlan(weigh, rest, tun.TempC, index, target)) < NearK)
            return [];
        return tun.TempC < target ? Cold(weigh, rest, tun, index, target) : Warm(weigh, rest, tun, index, target);
    }

    /// <summary>How far a mash is off, K: one that cools as the plan says it will is not off.</summary>
    private static double OffPlan(Weigh weigh, RunStep rest, double celsius, int index, double target)
    {
        var cooled = weigh.Plan.Steps.FirstOrDefault(s => s.Spec.Id == rest.Spec.Id)?.After.Vessels[index].TempC ?? target;
        return celsius - Math.Clamp(celsius, Math.Min(cooled, target), Math.Max(cooled, target));
    }

    /// <summary>Only what was measured calls for a remedy: the model's own drift does not.</summary>
    private static bool ReadSince(RunState state, RunStep rest) =>
        state.Readings.Any(r => r.Reading.Kind == ReadingKind.Temperature && r.Reading.Vessel == rest.Spec.Vessel
            && r.AtMs >= (rest.StartedMs ?? 0) - 600_000)
        && !state.Remedies.Any(r => r.AtMs >= state.Readings.Last(x => x.Reading.Vessel == rest.Spec.Vessel).AtMs);

    private static ImmutableArray<Remedy> Cold(Weigh weigh, RunStep rest, in VesselState tun, int index, double target)
    {
        var found = ImmutableArray.CreateBuilder<Remedy>();
        if (Heat(weigh, rest, target) is { } heat)
            found.Add(heat);
        if (Water(weigh, rest, tun, index, target, weigh.Live.Setting.BoilingC, RemedyKind.AddHotWater) is { } hot)
            found.Add(hot);
        found.Add(weigh.LeaveIt(rest.Spec.Vessel));
        return found.ToImmutable();
    }

    private static ImmutableArray<Remedy> Warm(Weigh weigh, RunStep rest, in VesselState tun, int index, double target)
    {
        var cold = Water(weigh, rest, tun, index, target, weigh.Live.Setting.SourceWaterC, RemedyKind.AddColdWater);
        return cold is null ? [weigh.LeaveIt(rest.Spec.Vessel)] : [cold, weigh.LeaveIt(rest.Spec.Vessel)];
    }

    /// <summary>Null where the elements are not covered or too weak to get there.</summary>
    private static Remedy? Heat(Weigh weigh, RunStep rest, double target)
    {
        var spec = new StepSpec
        {
            Id = weigh.FreshId("heat"),
            Kind = StepKind.HeatMash,
            Unit = UnitProcedure.Mash,
            Vessel = rest.Spec.Vessel,
            TargetC = target,
            HandsS = 60,
            Cautions = Cautions.Scald | Cautions.DryFire | Cautions.MainsNearWater,
        };
        var outcome = PlantModel.Run(
            weigh.Live.Setting, spec, weigh.Live.Plant, weigh.Live.Plant.Vessels[weigh.Live.Setting.IndexOf(spec.Vessel)].AtS,
            double.PositiveInfinity);
        if (outcome.DurationS >= Planning.Operations.Heating.HopelessS)
            return null;
        return weigh.Told(new(RemedyKind.HeatMash, spec.Vessel, outcome.DurationS / 60, 0, [spec], rest.Spec.Id, [], []));
    }

    /// <summary>Litres that bring the mash to its temperature: the heat balance of what stands in the tun against what is added.</summary>
    private static Remedy? Water(Weigh weigh, RunStep rest, in VesselState tun, int index, double target, double waterC, RemedyKind kind)
    {
        var wall = weigh.Live.Setting.HeatCapacityJPerK(index);
        var missing = Contents.HeatAtJ(tun, wall, target) - Contents.HeatJ(tun, wall);
        var kg = missing / (Physics.Water.EnthalpyJPerKg(waterC) - Physics.Water.EnthalpyJPerKg(target));
        var litres = 1000 * kg / Physics.Water.DensityKgPerM3(20);
        var vessel = weigh.Live.Setting.Brewhouse.Vessels[index];
        if (!(litres > 0) || litres > MostLPerKg * tun.GrainKg || Contents.StandsL(tun) + litres > vessel.WorkingL)
            return null;
        var spec = new StepSpec
        {
            Id = weigh.FreshId("water"),
            Kind = StepKind.AddWater,
            Unit = UnitProcedure.Mash,
            Vessel = rest.Spec.Vessel,
            VolumeL = litres,
            TargetC = waterC,
            HandsS = 120,
            Cautions = waterC > 50 ? Cautions.Scald : Cautions.None,
        };
        return weigh.Told(new(kind, spec.Vessel, litres, 0, [spec], rest.Spec.Id, [], []));
    }
}
