using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>
/// Liquor whose tank no longer heats as it should goes to the kettle while that is empty: strike liquor is drawn from there, sparge liquor
/// comes back hot.
/// </summary>
internal sealed class HeatElsewhereWay : Way
{
    public override bool Helps(Off off) => off.Kind == OffKind.Power;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var tank = weigh.Plan.Brewhouse.HotLiquorTank;
        var heats = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Kind is StepKind.HeatStrike or StepKind.HeatSparge && s.Spec.Vessel == tank.Id);
        if (heats is null || tank == weigh.Kettle || tank == weigh.Plan.Brewhouse.MashTun || weigh.Plan.Brewhouse.Pumps.IsEmpty || !weigh.LacksHeat(tank.Id) || !IsFree(weigh))
            return [];
        return OneOf(heats.Spec.Kind == StepKind.HeatStrike ? Strike(weigh, heats.Spec) : Sparge(weigh, heats.Spec));
    }

    /// <summary>No more stands in the kettle than liquor left behind there, and no step works in it.</summary>
    private static bool IsFree(Weigh weigh) => weigh.Live.Vessel(weigh.Kettle.Id) is { ExtractKg: <= 0 } v && Contents.CoolL(v) <= weigh.Kettle.DeadSpaceL + 0.01
        && !weigh.State.Steps.Any(s => s.Status is RunStatus.Running or RunStatus.Held && (s.Spec.Vessel == weigh.Kettle.Id || s.Spec.To == weigh.Kettle.Id));

    /// <summary>What stays behind in the kettle goes in beside it, cold.</summary>
    private static Remedy? Strike(Weigh weigh, StepSpec heats)
    {
        var (tank, kettle) = (heats.Vessel, weigh.Kettle);
        var drawn = weigh.State.Steps.Where(s => s.Open && s.Spec.Vessel == tank && s.Spec.Kind is StepKind.PrimePump or StepKind.TransferStrike).ToList();
        if (heats.VolumeL is not { } litres || !drawn.Exists(s => s.Spec.Kind == StepKind.TransferStrike) || !Holds(weigh, litres + kettle.DeadSpaceL))
            return null;
        var extra = new StepSpec
        {
            Id = weigh.FreshId("water"),
            Kind = StepKind.AddWater,
            Unit = UnitProcedure.HotLiquor,
            Vessel = kettle.Id,
            VolumeL = kettle.DeadSpaceL,
            TargetC = weigh.Live.Setting.SourceWaterC,
            HandsS = 60,
        };
        var there = heats with { Id = weigh.FreshId("strike"), Vessel = kettle.Id, AfterStepId = "", LeadS = 0, Hoses = null };
        return Of(weigh, heats, [Pump(weigh, "over", tank, kettle.Id, litres), extra, there], [.. drawn.Select(s => s.Spec with { Vessel = kettle.Id, Hoses = null })]);
    }

    private static Remedy? Sparge(Weigh weigh, StepSpec heats)
    {
        var (house, kettle) = (weigh.Plan.Brewhouse, weigh.Kettle);
        var v = weigh.Live.Vessel(heats.Vessel);
        var litres = Contents.CoolL(v) - house.HotLiquorTank.DeadSpaceL;
        if (!(litres > 0) || !Holds(weigh, litres))
            return null;
        var there = heats with { Id = weigh.FreshId("liquor"), Vessel = kettle.Id, TargetC = HotterC(weigh, heats, v, litres), AfterStepId = "", LeadS = 0, Hoses = null };
        var back = Pump(weigh, "back", kettle.Id, heats.Vessel, litres - kettle.DeadSpaceL);
        return Of(weigh, heats, [Pump(weigh, "over", heats.Vessel, kettle.Id, litres), there, back], []);
    }

    /// <summary>The tank and what stays in it are cold: the liquor that comes back warms them.</summary>
    private static double HotterC(Weigh weigh, StepSpec heats, in VesselState v, double litres)
    {
        var wanted = heats.TargetC!.Value;
        var all = Contents.CapacityJPerK(v, weigh.Live.Setting.HeatCapacityJPerK(weigh.Live.Setting.IndexOf(heats.Vessel)), v.TempC);
        var moves = Contents.WaterKg(litres) * Physics.Water.SpecificHeatJPerKgK(v.TempC);
        return Math.Min(weigh.Live.Setting.BoilingC, wanted + (all - moves) * Math.Max(0, wanted - v.TempC) / moves);
    }

    private static bool Holds(Weigh weigh, double litres) => litres <= weigh.RoomL(weigh.Kettle.Id) && litres >= weigh.Kettle.CoverL;

    private static StepSpec Pump(Weigh weigh, string stem, string from, string to, double litres) => new()
    {
        Id = weigh.FreshId(stem),
        Kind = StepKind.TransferStrike,
        Unit = UnitProcedure.HotLiquor,
        Vessel = from,
        To = to,
        VolumeL = litres,
        HandsS = 300,
        Label = StepLabels.Liquor,
        Cautions = Cautions.Scald,
    };

    private static Remedy Of(Weigh weigh, StepSpec heats, ImmutableArray<StepSpec> insert, ImmutableArray<StepSpec> replace) =>
        new(RemedyKind.HeatElsewhere, weigh.Kettle.Id, insert[0].VolumeL!.Value, 0, insert, heats.Id, replace, []) { Ends = [heats.Id] };
}
