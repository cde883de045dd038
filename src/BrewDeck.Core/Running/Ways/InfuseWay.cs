using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>
/// A mash that the tun's own heat no longer raises as it should is raised by hot liquor from the tank. Every litre of it is one less to sparge
/// with: where it is still to come to a rest, no more is spent on a mash-out.
/// </summary>
internal sealed class InfuseWay : WaterIntoWay
{
    /// <summary>Liquor this near to what it should have is not heated for it; K.</summary>
    private const double NearK = 1;

    /// <summary>In a tank that is to be tried on, more than any mash takes, kg.</summary>
    private const double PlentyKg = 10_000;

    public override bool Helps(Off off) => off.Kind == OffKind.Power;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var house = weigh.Live.Setting.Brewhouse;
        var (tun, tank) = (house.MashTun, house.HotLiquorTank);
        var ramps = RestOnWay.Ramps(weigh);
        var toRests = ramps.RemoveAll(r => r.Spec.TargetC >= RestReadings.MashOutC);
        return ramps.IsEmpty || house.Habits.MashHeating != MashHeating.Direct || tank == tun || !tank.IsHeated || !weigh.LacksHeat(tun.Id) || IsBusy(weigh, tank, ramps[0]) ? []
            : toRests.IsEmpty ? OneOf(Of(weigh, tank, ramps, []))
            : OneOf(Of(weigh, tank, toRests, [.. ramps.RemoveRange(toRests), .. RestOnWay.MashOuts(weigh)]));
    }

    /// <summary>Wort or mash stands in it, or comes into it before the mash is raised.</summary>
    private static bool IsBusy(Weigh weigh, Vessel tank, RunStep ramp) =>
        weigh.Before(ramp).Vessels[weigh.Live.Setting.IndexOf(tank.Id)] is not { ExtractKg: <= 0, GrainKg: <= 0 };

    /// <param name="leftOut">Ramp and rest of a mash-out that is not made.</param>
    private static Remedy? Of(Weigh weigh, Vessel tank, ImmutableArray<RunStep> ramps, ImmutableArray<RunStep> leftOut)
    {
        var (setting, tun) = (weigh.Live.Setting, ramps[0].Spec.Vessel);
        var running = ramps[0].Status == RunStatus.Idle ? null : ramps[0];
        var next = running is null ? ramps[0] : weigh.State.Steps.FirstOrDefault(s => s.Status == RunStatus.Idle && s.Spec.Vessel == tun);
        if (next is null)
            return null;
        ImmutableArray<StepSpec> infusions = [.. ramps.Select(r => Infusion(tank, r.Spec) with { Id = r == running ? weigh.FreshId("infuse") : r.Spec.Id })];
        var liquor = weigh.Before(ramps[0]).Vessels[setting.IndexOf(tank.Id)];
        var needL = NeedL(weigh, ramps[0], infusions);
        var missingL = Math.Max(InfusionNeed.WithSpare(needL) + tank.DeadSpaceL, tank.CoverL + 1) - Contents.CoolL(liquor);
        ImmutableArray<StepSpec> insert =
        [
            .. missingL > 0 ? [Filled(weigh, tank, missingL)] : ImmutableArray<StepSpec>.Empty,
            .. PlugsTo(weigh, tank.Id, UnitProcedure.Mash),
            .. missingL > 0 || liquor.TempC < InfusionNeed.LiquorC(setting) - NearK ? [Heated(weigh, tank)] : ImmutableArray<StepSpec>.Empty,
            .. running is null ? ImmutableArray<StepSpec>.Empty : [infusions[0]],
        ];
        var ends = leftOut.Concat(IdlePlugsTo(weigh, tun)).Select(s => s.Spec.Id);
        var remedy = new Remedy(RemedyKind.Infuse, tun, needL, 0, insert, next.Spec.Id, [.. infusions.RemoveAll(i => insert.Contains(i)), .. leftOut.IsEmpty ? [] : Vorlauf(weigh, infusions[^1])], [])
        {
            Ends = running is null ? [.. ends] : [running.Spec.Id, .. ends],
            NoMashOut = !leftOut.IsEmpty,
        };
        var after = weigh.With(remedy).Rest;
        var infused = after.Where(s => infusions.Any(i => i.Id == s.Spec.Id)).Sum(s => s.VolumeL ?? 0);
        return remedy with { Amount = infused, Later = [.. Cooled(weigh, tank, after, infusions[^1].Id)] };
    }

    /// <summary>As hot as the last rest is.</summary>
    private static IEnumerable<StepSpec> Vorlauf(Weigh weigh, StepSpec last) =>
        weigh.State.Steps.Where(s => s is { Status: RunStatus.Idle, Spec.Kind: StepKind.Vorlauf }).Select(s => s.Spec with { TargetC = last.TargetC });

    private static StepSpec Infusion(Vessel tank, StepSpec ramp) => new()
    {
        Id = ramp.Id,
        Kind = StepKind.Infuse,
        Unit = UnitProcedure.Mash,
        Vessel = tank.Id,
        To = ramp.Vessel,
        TargetC = ramp.TargetC,
        Label = ramp.Label,
        HandsS = 600,
        Cautions = Cautions.Scald,
    };

    /// <summary>What all of them take, by the day with a tank that has plenty.</summary>
    private static double NeedL(Weigh weigh, RunStep ramp, ImmutableArray<StepSpec> infusions)
    {
        var setting = weigh.Live.Setting;
        var (before, tank) = (weigh.Before(ramp), setting.IndexOf(infusions[0].Vessel));
        var plenty = before.Vessels[tank] with { WaterKg = PlentyKg, TempC = InfusionNeed.LiquorC(setting), HoldC = double.NaN };
        var mash = weigh.State.Steps.SkipWhile(s => s != ramp).Skip(1).Where(s => s.Open && s.Spec.Kind == StepKind.Rest).Select(s => s.Spec);
        var day = infusions.Zip(mash.Append(null)).SelectMany(p => p.Second is null ? [p.First] : new[] { p.First, p.Second });
        return DayFold.Over(setting, day, before with { Vessels = before.Vessels.SetItem(tank, plenty) }).Where(s => s.Spec.Kind == StepKind.Infuse).Sum(s => s.VolumeL ?? 0);
    }

    private static StepSpec Filled(Weigh weigh, Vessel tank, double litres) => new()
    {
        Id = weigh.FreshId("fill"),
        Kind = StepKind.Fill,
        Unit = UnitProcedure.HotLiquor,
        Vessel = tank.Id,
        VolumeL = litres,
        HandsS = StepSpec.AllThroughS,
        Cautions = Cautions.Scald | Cautions.MainsNearWater,
    };

    private static StepSpec Heated(Weigh weigh, Vessel tank) => new()
    {
        Id = weigh.FreshId("liquor"),
        Kind = StepKind.HeatSparge,
        Unit = UnitProcedure.HotLiquor,
        Vessel = tank.Id,
        TargetC = InfusionNeed.LiquorC(weigh.Live.Setting),
        Label = "infusion",
        HandsS = 60,
        Background = true,
        Cautions = Cautions.Scald | Cautions.Steam | Cautions.MainsNearWater | Cautions.DryFire,
    };

    /// <summary>What is left is too hot to sparge with: cold water and its thermostat bring it down, where nothing else is still to be filled in.</summary>
    private static IEnumerable<LaterStep> Cooled(Weigh weigh, Vessel tank, ImmutableArray<PlanStep> rest, string last)
    {
        var setting = weigh.Live.Setting;
        var after = rest.SkipWhile(s => s.Spec.Id != last).ToList();
        if (after.Count < 2 || !after.Exists(s => s.Spec.SpargeL > 0) || after.Exists(s => s.Spec.Kind == StepKind.Fill && s.Spec.Vessel == tank.Id))
            yield break;
        var liquor = after[0].After.Vessels[setting.IndexOf(tank.Id)];
        var litres = Math.Min(LitresTo(weigh, liquor, tank.Id, setting.Habits.SpargeC, setting.SourceWaterC), weigh.RoomL(tank.Id, liquor));
        if (!(litres > 0))
            yield break;
        yield return new(after[1].Spec.Id, Cold(weigh, tank, litres));
        yield return new(after[1].Spec.Id, Heated(weigh, tank) with { Id = weigh.FreshId("sparge"), TargetC = setting.Habits.SpargeC, Label = "" });
    }

    private static StepSpec Cold(Weigh weigh, Vessel tank, double litres) => new()
    {
        Id = weigh.FreshId("water"),
        Kind = StepKind.AddWater,
        Unit = UnitProcedure.HotLiquor,
        Vessel = tank.Id,
        VolumeL = litres,
        TargetC = weigh.Live.Setting.SourceWaterC,
        HandsS = 120,
        Label = StepLabels.HeatOff,
        Cautions = Cautions.Scald | Cautions.Steam,
    };
}
