using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// Everything uncertain about a planned day. Left out is what moves no figure by a tenth of its band: wall capacities and lags, hose
/// and tank losses, pump flow, grain temperature, acidity, speed of conversion. A temperature in a vessel stands for what its own
/// probe shows, so thermometer biases matter for the fermenter only.
/// </summary>
internal static class Sources
{
    public static ImmutableArray<Source> Of(Plan plan) => [.. Stated(plan).Select(s => s with { Sd = UsualSpreads.CutSd * s.Sd, Most = s.Most / UsualSpreads.CutSd })];

    private static ImmutableArray<Source> Stated(Plan plan)
    {
        var kettle = plan.Brewhouse.Kettle.Id;
        return
        [
            .. Heat(plan.Brewhouse), .. Mash(plan.Brewhouse), .. Boil(plan.Brewhouse), .. Hops(plan.Recipe), .. Hands(), .. Cool(plan.Brewhouse), .. FermenterCooling(plan),
            .. Glass(kettle, plan.Brewhouse), .. Glass(Places.Fermenter, plan.Brewhouse), .. Gravity(), .. Work(plan),
        ];
    }

    private static IEnumerable<Source> Heat(Brewhouse house)
    {
        yield return new("mains_power", UsualSpreads.MainsPower.Sd)
        {
            OnPlant = (s, off) => Enumerable.Range(0, house.Vessels.Length).Aggregate(s, (p, i) => Power(p, i, off)),
        };
        for (var i = 0; i < house.Vessels.Length; i++)
        {
            var vessel = i;
            yield return new("net_power/" + house.Vessels[i].Id, UsualSpreads.NetPower.Sd) { OnPlant = (s, off) => Power(s, vessel, off) };
        }
        var kettle = house.Vessels.IndexOf(house.Kettle);
        yield return new("wall_loss/" + house.Kettle.Id, UsualSpreads.WallLoss.Sd)
        {
            OnPlant = (s, off) => Raised(Vessel(s, kettle, v => v with { LossWPerK = v.LossWPerK * (1 + off) }), -off * LossW(s, kettle)),
        };
    }

    /// <summary>More heat, and as the knob of the kettle stands where it always stands, a stronger boil.</summary>
    private static PlantSetting Power(PlantSetting setting, int vessel, double off)
    {
        var heated = setting with { HeatFactor = setting.HeatFactor.SetItem(vessel, setting.HeatFactor[vessel] * (1 + off)) };
        if (setting.Brewhouse.Vessels[vessel] != setting.Brewhouse.Kettle)
            return heated;
        var knobW = setting.Habits.EvaporationKgPerH / 3600 * Water.LatentHeatJPerKg(setting.BoilingC) + LossW(setting, vessel);
        return Raised(heated, off * knobW);
    }

    private static double LossW(PlantSetting setting, int vessel) =>
        setting.LossWPerK(vessel) * (setting.BoilingC - setting.AmbientC);

    private static PlantSetting Raised(PlantSetting setting, double watts) => Habits(
        setting, h => h with { EvaporationKgPerH = Math.Max(0, h.EvaporationKgPerH + 3600 * watts / Water.LatentHeatJPerKg(setting.BoilingC)) });

    private static IEnumerable<Source> Mash(Brewhouse house)
    {
        var yieldSd = house.Spreads?.ConversionYield ?? UsualSpreads.ConversionYield.Sd;
        yield return new("conversion_yield", yieldSd)
        {
            Most = (1 - house.Habits.ConversionYield) / yieldSd,
            OnPlant = (s, off) => Habits(s, h => h with { ConversionYield = Math.Max(0, h.ConversionYield + off) }),
        };
        yield return new("absorption", house.Spreads?.Absorption ?? UsualSpreads.Absorption.Sd)
        {
            OnPlant = (s, off) => Habits(s, h => h with { AbsorptionLPerKg = h.AbsorptionLPerKg * (1 + off) }),
        };
        var known = house.Spreads?.SpargeStages / UsualSpreads.StagesSd ?? 1;
        yield return new("bed_mixing", known * UsualSpreads.BedMixing.Sd) { OnPlant = (s, off) => Stages(s, UsualSpreads.MixingShare * (Math.Exp(off) - 1)) };
        yield return new("bed_exchange", known * UsualSpreads.BedExchange.Sd) { OnPlant = (s, off) => Stages(s, UsualSpreads.ExchangeShare * (Math.Exp(-off) - 1)) };
        yield return new("runoff_flow", house.Spreads?.Runoff ?? UsualSpreads.RunoffFlow.Sd)
        {
            OnPlant = (s, off) => Habits(s, h => h with { RunoffLPerMin = h.RunoffLPerMin * (1 + off) }),
        };
        yield return new("drain_strength", UsualSpreads.DrainStrength.Sd) { OnPlant = (s, off) => s with { DrainStrength = s.DrainStrength * (1 + off) } };
        yield return DeadSpace(house.MashTun);
    }

    private static PlantSetting Stages(PlantSetting setting, double wider) =>
        Habits(setting, h => h with { SpargeStages = Math.Max(1, h.SpargeStages / (1 + wider)) });

    private static Source DeadSpace(Vessel of) => new("dead_space/" + of.Id, UsualSpreads.DeadSpace.Sd)
    {
        OnPlant = (s, off) => Vessel(s, s.IndexOf(of.Id), v => v with { DeadSpaceL = v.DeadSpaceL * (1 + off) }),
    };

    private static IEnumerable<Source> Boil(Brewhouse house)
    {
        yield return new("evaporation", house.Spreads?.Evaporation ?? UsualSpreads.Evaporation.Sd)
        {
            OnPlant = (s, off) => Raised(s, off * s.Habits.EvaporationKgPerH / 3600 * Water.LatentHeatJPerKg(s.BoilingC)),
        };
        // hops give less bitterness where wort boils colder
        yield return new("weather", UsualSpreads.Weather.Sd) { OnPlant = (s, off) => s with { BoilingC = Water.SaturationTempC(Water.SaturationPressurePa(s.BoilingC) + off) } };
        yield return new("utilisation", UsualSpreads.Utilisation.Sd) { OnStep = (s, off) => Alpha(s, _ => true, off) };
    }

    private static IEnumerable<Source> Hops(Recipes.Recipe recipe) => recipe.Hops.Select(h => h.Name).Distinct().Select(name =>
        new Source("alpha_acid/" + name, UsualSpreads.AlphaAcid.Sd) { OnStep = (s, off) => Alpha(s, c => c.Name == name, off) });

    private static StepSpec Alpha(StepSpec spec, Func<Charge, bool> which, double off) =>
        spec.Charges.All(c => c.AlphaG == 0) ? spec : spec with { Charges = [.. spec.Charges.Select(c => which(c) ? c with { AlphaG = c.AlphaG * (1 + off) } : c)] };

    private static IEnumerable<Source> Hands()
    {
        yield return new("pace", UsualSpreads.Pace.Sd) { OnPlant = (s, off) => s with { Pace = s.Pace * (1 + off) } };
    }

    private static IEnumerable<Source> Cool(Brewhouse house)
    {
        yield return Chiller("chiller_transfer", house.Spreads?.ChillerTransfer ?? UsualSpreads.ChillerTransfer.Sd, (c, off) => c with { UaWPerK = c.UaWPerK * (1 + off) });
        yield return Chiller("chiller_water", UsualSpreads.ChillerWater.Sd, (c, off) => c with { WaterLPerMin = c.WaterLPerMin * (1 + off) });
        yield return new("source_water", UsualSpreads.SourceWater.Sd) { OnPlant = (s, off) => s with { SourceWaterC = Math.Max(1, s.SourceWaterC + off) } };
        yield return new("ambient", UsualSpreads.Ambient.Sd) { OnPlant = (s, off) => s with { AmbientC = s.AmbientC + off } };
        if (house.Kettle != house.MashTun)
            yield return DeadSpace(house.Kettle);
        // a sparge stops at the tank's outlet
        if (house.CanSparge)
            yield return DeadSpace(house.HotLiquorTank);
        yield return new("open_kettle", UsualSpreads.OpenKettle.Sd) { From = UnitProcedure.Cool, OnPlant = (s, off) => s with { OpenShare = s.OpenShare * (1 + off) } };
        yield return new("trub", UsualSpreads.Trub.Sd) { From = UnitProcedure.Cool, OnPlant = (s, off) => Habits(s, h => h with { TrubL = h.TrubL * (1 + off) }) };
        yield return new("hop_absorption", UsualSpreads.HopAbsorption.Sd)
        {
            From = UnitProcedure.Cool,
            OnPlant = (s, off) => Habits(s, h => h with { HopAbsorptionLPerKg = h.HopAbsorptionLPerKg * (1 + off) }),
        };
        yield return new("line_loss", UsualSpreads.LineLoss.Sd) { From = UnitProcedure.Cool, OnPlant = (s, off) => Habits(s, h => h with { LineLossL = h.LineLossL * (1 + off) }) };
        yield return new("valve", UsualPace.ValveK) { OnStep = Pitched };
        yield return new("thermometer_bias/fermenter", UsualSpreads.ThermometerBias.Sd)
        {
            OnStep = (s, off) => Pitched(s, -off),
            OnReading = (kind, vessel, _) => kind == ReadingKind.Temperature && vessel == Places.Fermenter ? 1 : 0,
        };
    }

    private static StepSpec Pitched(StepSpec spec, double off) =>
        spec.Kind == StepKind.CastOut && spec.TargetC is { } target ? spec with { TargetC = target + off } : spec;

    private static IEnumerable<Source> FermenterCooling(Plan plan) => plan.Steps.Any(s => s.Spec.Label == StepLabels.OwnCooling)
        ? [new("fermenter_cooling", UsualSpreads.FermenterCooling.Sd) { From = UnitProcedure.Cool, OnPlant = OwnCooling }]
        : [];

    private static PlantSetting OwnCooling(PlantSetting setting, double off)
    {
        var fermenter = setting.Brewhouse.Fermenter;
        return setting with { Brewhouse = setting.Brewhouse with { Fermenter = fermenter with { CoolingW = fermenter.CoolingW * (1 + off) } } };
    }

    private static Source Chiller(string name, double sd, Func<Brewhouses.Chiller, double, Brewhouses.Chiller> with) => new(name, sd)
    {
        From = UnitProcedure.Cool,
        OnPlant = (s, off) => s with { Brewhouse = s.Brewhouse with { Chiller = with(s.Brewhouse.Chiller, off) } },
    };

    /// <summary>The glass of a vessel shows too much; a run-off that is stopped by it then ends early.</summary>
    private static IEnumerable<Source> Glass(string vessel, Brewhouse house)
    {
        StepSpec Stopped(StepSpec spec, double litres) =>
            spec.To == vessel && spec.Kind.RunsOff() && spec.VolumeL is { } until ? spec with { VolumeL = until - litres } : spec;
        yield return new($"sight_scale/{vessel}", UsualSpreads.SightScale.Sd)
        {
            OnStep = (s, off) => Stopped(s, off * (s.VolumeL ?? 0)),
            OnReading = (kind, of, litres) => kind == ReadingKind.Volume && of == vessel ? litres : 0,
        };
        yield return new($"sight_offset/{vessel}", UsualSpreads.SightOffset.Sd)
        {
            OnStep = Stopped,
            OnReading = (kind, of, _) => kind == ReadingKind.Volume && of == vessel ? 1 : 0,
        };
    }

    /// <summary>Cold wort goes into the hydrometer's jar, hot wort as drops on the refractometer.</summary>
    private static IEnumerable<Source> Gravity()
    {
        yield return new("hydrometer_bias", UsualSpreads.HydrometerBias.Sd)
        {
            OnReading = (kind, vessel, _) => kind == ReadingKind.Gravity && vessel == Places.Fermenter ? 1 : 0,
        };
        yield return new("refractometer_bias", UsualSpreads.RefractometerBias.Sd)
        {
            OnReading = (kind, vessel, sg) => kind == ReadingKind.Gravity && vessel != Places.Fermenter ? ReadingErrors.SgPerPercent(sg) : 0,
        };
    }

    private static IEnumerable<Source> Work(Plan plan) => plan.Steps
        .Where(s => s.Spec.Kind.EndsBy() == EndsBy.Hands && s.Spec.Minutes > 0)
        .Select(s => new Source("work/" + s.Spec.Id, UsualPace.WorkLogSd) { OnStep = (spec, off) => spec.Id == s.Spec.Id ? Longer(spec, Math.Exp(off)) : spec });

    private static StepSpec Longer(StepSpec spec, double factor) => spec with { Minutes = spec.Minutes * factor, HandsS = spec.HandsS * factor };

    private static PlantSetting Habits(PlantSetting setting, Func<Habits, Habits> with) => setting with { Habits = with(setting.Habits) };

    private static PlantSetting Vessel(PlantSetting setting, int index, Func<Vessel, Vessel> with) => setting with
    {
        Brewhouse = setting.Brewhouse with { Vessels = setting.Brewhouse.Vessels.SetItem(index, with(setting.Brewhouse.Vessels[index])) },
    };
}
