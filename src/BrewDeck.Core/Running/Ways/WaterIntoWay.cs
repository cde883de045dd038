using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Water that brings a vessel to its temperature: the heat balance of what stands in it against what is added.</summary>
internal abstract class WaterIntoWay : Way
{
    protected static Remedy? Balanced(Weigh weigh, string vesselId, double targetC, double waterC, double mostL, RemedyKind kind, string before)
    {
        var index = weigh.Live.Setting.IndexOf(vesselId);
        var (v, wall) = (weigh.Now(vesselId), weigh.Live.Setting.HeatCapacityJPerK(index));
        var missing = Contents.HeatAtJ(v, wall, targetC) - Contents.HeatJ(v, wall);
        var kg = missing / (Physics.Water.EnthalpyJPerKg(waterC) - Physics.Water.EnthalpyJPerKg(targetC));
        var litres = 1000 * kg / Physics.Water.DensityKgPerM3(20);
        if (!(litres > 0) || litres > mostL || litres > weigh.RoomL(vesselId))
            return null;
        return Now(weigh, kind, litres, new StepSpec
        {
            Id = weigh.FreshId("water"),
            Kind = StepKind.AddWater,
            Unit = UnitProcedure.Mash,
            Vessel = vesselId,
            VolumeL = litres,
            TargetC = waterC,
            HandsS = 120,
            Cautions = waterC > 50 ? Cautions.Scald : Cautions.None,
        }, before);
    }
}

internal sealed class HotWaterWay : WaterIntoWay
{
    /// <summary>No more than this is added to a mash for its temperature, litres per kg of grist.</summary>
    internal const double MostLPerKg = 0.8;

    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: < 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var rest = weigh.State.Step(off.About)!.Spec;
        var most = MostLPerKg * weigh.Now(rest.Vessel).GrainKg;
        return OneOf(Balanced(weigh, rest.Vessel, rest.TargetC!.Value, weigh.Live.Setting.BoilingC, most, RemedyKind.AddHotWater, off.About));
    }
}

internal sealed class ColdWaterWay : WaterIntoWay
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: > 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var rest = weigh.State.Step(off.About)!.Spec;
        var most = HotWaterWay.MostLPerKg * weigh.Now(rest.Vessel).GrainKg;
        return OneOf(Balanced(weigh, rest.Vessel, rest.TargetC!.Value, weigh.Live.Setting.SourceWaterC, most, RemedyKind.AddColdWater, off.About));
    }
}

/// <summary>Strike liquor too hot: cold water into the tank; what is drawn stays as much as planned.</summary>
internal sealed class CoolLiquorWay : WaterIntoWay
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Liquor, By: > 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var heats = weigh.State.Step(off.About)!.Spec;
        // in a vessel that is mashed in, it would thin the mash
        return heats.Vessel == weigh.Plan.Brewhouse.MashTun.Id
            ? []
            : OneOf(Balanced(weigh, heats.Vessel, weigh.StrikeC(heats), weigh.Live.Setting.SourceWaterC, double.PositiveInfinity, RemedyKind.AddColdWater, ""));
    }
}
