using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Planning;

/// <summary>Every number of a plan held against what the brewhouse allows.</summary>
internal static class LimitChecks
{
    /// <summary>Less fall than this is no transfer; nearer to its shut-off head a pump hardly moves anything (common practice, no source).</summary>
    private const double LeastFallM = 0.05, MostOfHead = 0.95;

    /// <summary>Nearer than this a mash is where it should be; K.</summary>
    private const double NearK = 1;

    public static ImmutableArray<Limit> Of(PlantSetting setting, Batch batch, ImmutableArray<PlanStep> steps)
    {
        var house = setting.Brewhouse;
        return
        [
            new(LimitName.StrikeLiquorInTank, RunSheet.TankFillL(setting, batch.FirstFillL), house.HotLiquorTank.WorkingL, "L"),
            .. StrikeTemperature(setting, steps),
            .. Sparge(setting, batch),
            .. Standing(setting, steps),
            .. Decoctions(setting, steps),
            .. Heats(setting, steps, PlantModel.Empty(setting)),
            .. Circuits(setting),
            .. FalseBottom(house),
            .. SuctionHeads.Limit(setting, steps),
            .. Reach(setting, steps),
            .. Evaporation(setting, steps),
            .. Pitching(setting, steps),
        ];
    }

    /// <summary>
    /// The same checks on what is left of a day: vessels that some step still works in, targets that are still to be reached, circuits
    /// that still feed something.
    /// </summary>
    public static ImmutableArray<Limit> OfRest(PlantSetting setting, PlantState now, ImmutableArray<PlanStep> rest)
    {
        var house = setting.Brewhouse;
        var used = rest.SelectMany(s => PlantModel.VesselsOf(setting, s.Spec)).ToHashSet();
        bool Uses(string vessel) => used.Contains(setting.IndexOf(vessel));
        var standing = Standing(setting, rest).Where(l => double.IsFinite(l.Value));
        return
        [
            .. Uses(house.HotLiquorTank.Id)
                ? ImmutableArray.Create(new Limit(LimitName.LiquorInTank, Fullest(setting, rest, house.HotLiquorTank.Id), house.HotLiquorTank.WorkingL, "L")) : [],
            .. StrikeTemperature(setting, rest),
            .. standing,
            .. Decoctions(setting, rest),
            .. Heats(setting, rest, now),
            .. Circuits(setting).Where(l => rest.Any(s => Feeds(setting, s.Spec, l))),
            .. rest.Any(s => s.Spec.Unit is UnitProcedure.Mash or UnitProcedure.Lauter && PlantModel.VesselsOf(setting, s.Spec).Contains(setting.IndexOf(house.LauterTun.Id)))
                ? FalseBottom(house) : [],
            .. SuctionHeads.Limit(setting, rest),
        ];
    }

    private static bool Feeds(PlantSetting setting, StepSpec spec, Limit circuit) =>
        PlantModel.HeatedVessel(setting, spec) is >= 0 and var vessel
        && LimitName.LoadOf(circuit.Name)?.Vessel == setting.Brewhouse.Vessels[vessel].Id;

    /// <summary>What is left in the tun must carry the enzymes: no more than half is boiled at once (common practice, no source).</summary>
    private const double MostDecoctedPercent = 50;

    private static IEnumerable<Limit> Decoctions(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var house = setting.Brewhouse;
        int tun = setting.IndexOf(house.MashTun.Id), kettle = setting.IndexOf(house.Kettle.Id);
        var pulls = steps.Where(s => s.Spec.Kind == StepKind.PullDecoction)
            .Select(s => (Pulled: Contents.StandsL(s.After.Vessels[kettle]), Left: Contents.StandsL(s.After.Vessels[tun]))).ToArray();
        if (pulls.Length == 0)
            yield break;
        yield return new(LimitName.DecoctionShare, pulls.Max(p => 100 * p.Pulled / (p.Pulled + p.Left)), MostDecoctedPercent, "%");
        // as it is pulled, when it does not yet stand as high as hot, and when its steam is gone
        var boiled = Emptiest(setting, steps, k => k is StepKind.BoilDecoction);
        yield return new(LimitName.DecoctionCoversElements, Math.Min(boiled, pulls.Min(p => p.Pulled)), house.Kettle.CoverL, "L", AtMost: false);
    }

    /// <summary>What stands in the vessels. A vessel that no step is left for has no number: NaN or infinite, which a whole day never has.</summary>
    private static IEnumerable<Limit> Standing(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var house = setting.Brewhouse;
        yield return new(LimitName.MashInTun, Fullest(setting, steps, house.MashTun.Id), house.MashTun.WorkingL, "L");
        yield return new(LimitName.MashCoversElements, Emptiest(setting, steps, k => k == StepKind.Rest), house.MashTun.CoverL, "L", AtMost: false);
        if (house.LauterTun != house.MashTun)
            yield return new(LimitName.MashInLauterTun, Fullest(setting, steps, house.LauterTun.Id), house.LauterTun.WorkingL, "L");
        if (house.Whirlpool != house.Kettle)
            yield return new(LimitName.WortInWhirlpool, Fullest(setting, steps, house.Whirlpool.Id), house.Whirlpool.WorkingL, "L");
        yield return new(LimitName.WortInKettle, Fullest(setting, steps, house.Kettle.Id), house.Kettle.WorkingL, "L");
        yield return new(LimitName.WortCoversElements, Emptiest(setting, steps, k => k is StepKind.HotBreak or StepKind.Boil), house.Kettle.CoverL, "L", AtMost: false);
        yield return new(LimitName.WortInFermenter, Fullest(setting, steps, Places.Fermenter), house.Fermenter.WorkingL, "L");
    }

    private static IEnumerable<Limit> Sparge(PlantSetting setting, Batch batch)
    {
        if (batch.SpargeL > 0)
            yield return new(LimitName.SpargeLiquorInTank, RunSheet.TankFillL(setting, batch.SpargeL), setting.Brewhouse.HotLiquorTank.WorkingL, "L");
        if (setting.Brewhouse.CanSparge)
            yield return new(LimitName.SpargeVolume, batch.SpargeL, 0, "L", AtMost: false);
    }

    /// <summary>Most that stands in a vessel at the end of any step that works in it, litres at its temperature; NaN without one.</summary>
    private static double Fullest(PlantSetting setting, ImmutableArray<PlanStep> steps, string vessel)
    {
        var index = setting.IndexOf(vessel);
        return steps.Where(s => PlantModel.VesselsOf(setting, s.Spec).Contains(index))
            .Select(s => Contents.StandsL(s.After.Vessels[index])).DefaultIfEmpty(double.NaN).Max();
    }

    /// <summary>Least that stands in the vessel of any step of such a kind, litres at its temperature; infinite without one.</summary>
    private static double Emptiest(PlantSetting setting, ImmutableArray<PlanStep> steps, Func<StepKind, bool> wanted) =>
        steps.Where(s => wanted(s.Spec.Kind)).Select(s => Contents.StandsL(s.After.Vessels[setting.IndexOf(s.Spec.Vessel)]))
            .DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>A thick mash in a cold tun may ask for liquor hotter than water gets.</summary>
    private static IEnumerable<Limit> StrikeTemperature(PlantSetting setting, ImmutableArray<PlanStep> steps) =>
        from step in steps
        where step.Spec.Kind == StepKind.HeatStrike
        select new Limit(LimitName.StrikeTemperature, step.TargetC ?? 0, setting.BoilingC, "°C");

    private static IEnumerable<Limit> Heats(PlantSetting setting, ImmutableArray<PlanStep> steps, PlantState from) =>
        Heats(setting, steps, from, Decoctions(setting, steps).All(l => l.Ok));

    private static IEnumerable<Limit> Heats(PlantSetting setting, ImmutableArray<PlanStep> steps, PlantState from, bool covered)
    {
        var before = from;
        foreach (var step in steps)
        {
            var chills = step.Spec.Kind is StepKind.ChillInKettle or StepKind.CoolInFermenter;
            // one that is not covered has its own limit
            if (step.Spec.Vessel.Length > 0 && IsMissed(setting, step) && (covered || step.Spec.Kind is not (StepKind.HeatDecoction or StepKind.ReturnDecoction)))
                yield return new(chills ? LimitName.Chills(step.Spec.Id) : LimitName.Heats(step.Spec.Id), ReachedC(setting, step, before, chills), step.TargetC ?? 0, "°C", AtMost: chills);
            before = step.After;
        }
    }

    private static int Aimed(PlantSetting setting, StepSpec spec) => setting.IndexOf(spec.Kind is StepKind.Infuse or StepKind.ReturnDecoction ? spec.To : spec.Vessel);

    private static bool IsMissed(PlantSetting setting, PlanStep step) => step.NeverGetsThere
        || (step.Spec.Kind is StepKind.Infuse or StepKind.ReturnDecoction && step.After.Vessels[Aimed(setting, step.Spec)].TempC < step.TargetC - NearK);

    /// <summary>What has no heat is at its warmest when it begins.</summary>
    private static double ReachedC(PlantSetting setting, PlanStep step, PlantState before, bool chills)
    {
        var vessel = Aimed(setting, step.Spec);
        var reached = step.After.Vessels[vessel].TempC;
        return step.NeverGetsThere && !chills ? Math.Max(before.Vessels[vessel].TempC, reached) : reached;
    }

    private static IEnumerable<Limit> Circuits(PlantSetting setting) =>
        from leads in setting.Wiring.Leads
        from circuit in leads.Select(l => l.Circuit).Distinct()
        let vessel = setting.Brewhouse.Vessels[leads[0].Vessel].Id
        let carries = setting.Circuits[circuit]
        select new Limit(
            LimitName.Load(carries.Id, vessel), setting.Wiring.LoadW(leads[0].Vessel, circuit) / 1000, carries.ContinuousW / 1000, "kW");

    /// <summary>The highest way up that a pump must lift, or the least fall that must do without one, where heights are told.</summary>
    private static IEnumerable<Limit> Reach(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var house = setting.Brewhouse;
        var lifts = steps.Where(s => s.Spec.Kind is StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort)
            .Select(s => (From: setting.IndexOf(s.Spec.Vessel), To: setting.IndexOf(s.Spec.To), s.After))
            .Select(s => Plumbing.LiftM(house, s.From, s.To, Contents.StandsL(s.After.Vessels[s.From]))).OfType<double>().ToArray();
        if (lifts.Length == 0)
            yield break;
        if (house.Pumps.IsEmpty)
            yield return new(LimitName.FallByGravity, -lifts.Max(), LeastFallM, "m", AtMost: false);
        else if (house.Pumps[0].FreeFlowLPerMin is not null)
            yield return new(LimitName.LiftOfPump, lifts.Max(), MostOfHead * house.Pumps[0].ShutOffHeadM, "m");
    }

    /// <summary>A stuck bed lets the pump pull its whole head on the plate.</summary>
    private static IEnumerable<Limit> FalseBottom(Brewhouse house)
    {
        if (house.LauterTun.FalseBottom is not { } plate || house.Pumps.IsEmpty)
            yield break;
        var pascals = Water.DensityKgPerM3(66) * Hydraulics.GravityMPerS2 * house.Pumps.Max(p => p.ShutOffHeadM);
        var load = pascals * Math.PI / 4 * plate.DiameterM * plate.DiameterM / Hydraulics.GravityMPerS2;
        yield return new(LimitName.FalseBottomLoad, load, plate.RatedLoadKg, "kg");
    }

    private static IEnumerable<Limit> Evaporation(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var boil = steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Boil);
        if (boil is null)
            yield break;
        var kettle = setting.IndexOf(boil.Spec.Vessel);
        var v = boil.After.Vessels[kettle];
        var boiling = Boiling.BoilingC(setting, v);
        var net = setting.FullHeatW(kettle, Contents.LiquidL(v)) - setting.LossWPerK(kettle) * (boiling - setting.AmbientC);
        yield return new(LimitName.Evaporation, setting.Habits.EvaporationKgPerH, 3600 * Boil.EvaporationKgPerS(Math.Max(0, net), boiling), "kg/h");
    }

    private static IEnumerable<Limit> Pitching(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var castOut = steps.FirstOrDefault(s => s.Spec.Kind == StepKind.CastOut);
        if (castOut is null)
            yield break;
        yield return Pitch(castOut.After.Vessels[setting.FermenterIndex].TempC, castOut.Spec.TargetC!.Value);
    }

    /// <summary>Half a degree: nobody holds a chiller closer.</summary>
    public static Limit Pitch(double celsius, double wantedC) => new(LimitName.PitchTemperature, celsius, wantedC + 0.5, "°C");
}
