using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Water that brings a vessel to its temperature: the heat balance of what stands in it against what is added.</summary>
internal abstract class WaterIntoWay : Way
{
    /// <summary>No more than this is added to a mash for its temperature, litres per kg of grist.</summary>
    private const double MostLPerKg = 0.8;

    /// <summary>What a kitchen's stove brings into a pot, W; hotter than this it must be boiled first, °C; hands that pour and stir, s. Common practice, no source.</summary>
    private const double StoveW = 1500, PotC = 90, PourS = 120;

    protected static Remedy? Balanced(Weigh weigh, string vesselId, double targetC, double waterC, double mostL, RemedyKind kind, string before) =>
        Balanced(weigh, weigh.Live.Vessel(vesselId), vesselId, targetC, waterC, mostL, kind, before);

    /// <summary>For a mash at its rest, or as the rest will find it.</summary>
    protected static Remedy? Balanced(Weigh weigh, RunStep rest, double waterC, RemedyKind kind)
    {
        var mash = weigh.Before(rest).Vessels[weigh.Live.Setting.IndexOf(rest.Spec.Vessel)];
        return Balanced(weigh, mash, rest.Spec.Vessel, rest.Spec.TargetC!.Value, waterC, MostLPerKg * mash.GrainKg, kind, (Off.DoughInAhead(weigh.State) ?? rest).Spec.Id);
    }

    /// <summary>Water of one temperature that brings what stands in a vessel to another; below 0: none does.</summary>
    protected static double LitresTo(Weigh weigh, in VesselState v, string vesselId, double targetC, double waterC)
    {
        var wall = weigh.Live.Setting.HeatCapacityJPerK(weigh.Live.Setting.IndexOf(vesselId));
        var missing = Contents.HeatAtJ(v, wall, targetC) - Contents.HeatJ(v, wall);
        var kg = missing / (Physics.Water.EnthalpyJPerKg(waterC) - Physics.Water.EnthalpyJPerKg(targetC));
        return 1000 * kg / Physics.Water.DensityKgPerM3(20);
    }

    private static Remedy? Balanced(
        Weigh weigh, VesselState v, string vesselId, double targetC, double waterC, double mostL, RemedyKind kind, string before)
    {
        var litres = LitresTo(weigh, v, vesselId, targetC, waterC);
        if (!(litres > 0) || litres > mostL || litres > weigh.RoomL(vesselId, v))
            return null;
        return Now(weigh, kind, litres, new StepSpec
        {
            Id = weigh.FreshId("water"),
            Kind = StepKind.AddWater,
            Unit = UnitProcedure.Mash,
            Vessel = vesselId,
            VolumeL = litres,
            TargetC = waterC,
            HandsS = PourS + (waterC > PotC ? BoilingS(weigh, litres, waterC) : 0),
            Label = v.HoldsTemperature ? StepLabels.HeatOff : "",
            Cautions = waterC > 50 ? Cautions.Scald : Cautions.None,
        }, before);
    }

    /// <summary>No vessel of the brewhouse holds boiling water at that moment: it comes from the tap, on a stove.</summary>
    private static double BoilingS(Weigh weigh, double litres, double boilingC) =>
        Contents.WaterKg(litres) * (Physics.Water.EnthalpyJPerKg(boilingC) - Physics.Water.EnthalpyJPerKg(weigh.Live.Setting.SourceWaterC)) / StoveW;
}

internal sealed class HotWaterWay : WaterIntoWay
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: < 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off) =>
        OneOf(Balanced(weigh, weigh.State.Step(off.About)!, weigh.Live.Setting.BoilingC, RemedyKind.AddHotWater));
}

internal sealed class ColdWaterWay : WaterIntoWay
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: > 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off) =>
        OneOf(Balanced(weigh, weigh.State.Step(off.About)!, weigh.Live.Setting.SourceWaterC, RemedyKind.AddColdWater));
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
