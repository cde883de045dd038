using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>
/// Wort whose kettle no longer heats as it should is pumped to the liquor tank, once that has given its liquor, and all that was to be done
/// in the kettle is done there.
/// </summary>
internal sealed class BoilElsewhereWay : Way
{
    /// <summary>Nobody drains less; minutes for more of it. Common practice, no source.</summary>
    private const double LeastL = 0.5, DrainMin = 4;

    public override bool Helps(Off off) => off.Kind == OffKind.Power;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var (kettle, tank) = (weigh.Kettle, weigh.Live.Setting.Brewhouse.HotLiquorTank);
        var boils = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Vessel == kettle.Id && Boils(s.Spec));
        return boils is null || !HasOther(weigh) || !weigh.LacksHeat(kettle.Id) || !IsFree(weigh, tank) || Wort(weigh) is not { } wort || !HeatsMore(weigh, tank, wort)
            ? []
            : OneOf(Of(weigh, tank, boils));
    }

    /// <summary>It may do so once all the wort is in the kettle.</summary>
    public static bool MayOpen(Weigh weigh, PlanStep never) =>
        Boils(never.Spec) && never.Spec.Vessel == weigh.Kettle.Id && HasOther(weigh) && weigh.State.Steps.Any(s => s.Open && s.Spec.Kind.FillsKettle());

    private static bool Boils(StepSpec spec) => spec.Kind is StepKind.HeatToBoil or StepKind.HotBreak or StepKind.Boil;

    private static bool HasOther(Weigh weigh) => weigh.Live.Setting.Brewhouse.HotLiquorTank is { IsHeated: true } tank && tank != weigh.Kettle && !weigh.Plan.Brewhouse.Pumps.IsEmpty;

    /// <summary>The wort that stands in the kettle; null: it is not all there yet, or the grain is still in it.</summary>
    private static VesselState? Wort(Weigh weigh) =>
        weigh.Live.Vessel(weigh.Kettle.Id) is { ExtractKg: > 0, GrainKg: <= 0 } v && !weigh.State.Steps.Any(s => s.Open && s.Spec.Kind.FillsKettle()) ? v : null;

    /// <summary>No step is left that wants its liquor.</summary>
    private static bool IsFree(Weigh weigh, Vessel tank) => weigh.Live.Vessel(tank.Id) is { GrainKg: <= 0 }
        && !weigh.State.Steps.Any(s => s.Open && PlantModel.VesselsOf(weigh.Live.Setting, s.Spec).Contains(weigh.Live.Setting.IndexOf(tank.Id)));

    /// <summary>With all its plugs, than the kettle with all of its own.</summary>
    private static bool HeatsMore(Weigh weigh, Vessel tank, in VesselState wort)
    {
        var litres = Contents.StandsL(wort);
        double HeatW(string vessel) => weigh.Live.Setting.FullHeatW(weigh.Live.Setting.IndexOf(vessel), litres);
        return HeatW(tank.Id) > HeatW(weigh.Kettle.Id);
    }

    /// <param name="boils">The first step that heats the kettle.</param>
    private static Remedy? Of(Weigh weigh, Vessel tank, RunStep boils)
    {
        var kettle = weigh.Kettle;
        var left = boils.Status == RunStatus.Idle ? null : weigh.Live.Running.Concat(weigh.Live.Held).FirstOrDefault(s => s.Left.Id == boils.Spec.Id)?.Left;
        var next = weigh.State.Steps.FirstOrDefault(s => s.Status == RunStatus.Idle && (s.Spec.Vessel == kettle.Id || s.Spec.Kind == StepKind.SanitiseChiller));
        if (next is null)
            return null;
        var again = left is null ? null : left with { Id = weigh.FreshId("boil"), Vessel = tank.Id, AfterStepId = "", LeadS = 0, Minutes = left.Minutes is { } m ? Math.Max(0, m) : null };
        var pump = Pump(weigh, kettle, tank);
        StepSpec? heat = boils.Spec.Kind == StepKind.HeatToBoil ? null : Heat(weigh, tank);
        ImmutableArray<StepSpec> insert = [.. Drained(weigh, tank), pump, .. PlugsTo(weigh, tank.Id, UnitProcedure.Boil), .. new[] { heat, again }.OfType<StepSpec>()];
        // hoses hang otherwise from here on
        var sheet = HoseMoves.OnSheet(weigh.Live.Setting.BoilingIn(tank.Id), [.. insert, .. Moved(weigh, tank, boils.Spec.Id, again, heat)]);
        return new(RemedyKind.BoilElsewhere, tank.Id, pump.VolumeL!.Value, 0, [.. sheet.Take(insert.Length)], next.Spec.Id, [.. sheet.Skip(insert.Length).Where(s => s != weigh.State.Step(s.Id)!.Spec)], [])
        {
            BoilsIn = tank.Id,
            Ends = left is null ? [] : [boils.Spec.Id],
            Later = [.. Cleaned(weigh, tank)],
        };
    }

    private static IEnumerable<StepSpec> Drained(Weigh weigh, Vessel tank)
    {
        if (Contents.CoolL(weigh.Live.Vessel(tank.Id)) < tank.DeadSpaceL + LeastL)
            yield break;
        yield return new StepSpec
        {
            Id = weigh.FreshId("drain"),
            Kind = StepKind.Drain,
            Unit = UnitProcedure.Boil,
            Vessel = tank.Id,
            Minutes = DrainMin,
            HandsS = 60 * DrainMin,
            Cautions = Cautions.Scald | Cautions.DryFire,
        };
    }

    private static StepSpec Pump(Weigh weigh, Vessel kettle, Vessel tank) => new()
    {
        Id = weigh.FreshId("over"),
        Kind = StepKind.TransferWort,
        Unit = UnitProcedure.Boil,
        Vessel = kettle.Id,
        To = tank.Id,
        VolumeL = Math.Max(0, Contents.CoolL(weigh.Live.Vessel(kettle.Id)) - kettle.DeadSpaceL),
        HandsS = 300,
        Label = StepLabels.ToBoil,
        Cautions = Cautions.Scald | Cautions.Steam | Cautions.MainsNearWater,
    };

    /// <summary>Wort that has boiled comes to the boil once more, and foams once more.</summary>
    private static StepSpec Heat(Weigh weigh, Vessel tank) => new()
    {
        Id = weigh.FreshId("heat"),
        Kind = StepKind.HeatToBoil,
        Unit = UnitProcedure.Boil,
        Vessel = tank.Id,
        HandsS = 120,
        Cautions = Cautions.Scald | Cautions.Steam | Cautions.MainsNearWater | Cautions.BoilOver | Cautions.DryFire,
    };

    /// <summary>What waits, and in the tank what was to be done in the kettle; cleaning that stays.</summary>
    /// <param name="again">What takes the place of the step that it ends; null: it ends none.</param>
    /// <param name="heat">To the boil once more; null: it has not boiled yet.</param>
    private static IEnumerable<StepSpec> Moved(Weigh weigh, Vessel tank, string boils, StepSpec? again, StepSpec? heat)
    {
        var kettle = weigh.Kettle.Id;
        string There(string vessel) => vessel == kettle ? tank.Id : vessel;
        string After(StepSpec spec) => again is not null && spec.AfterStepId == boils ? again.Id
            // boiling wort cleans the chiller
            : spec.Kind == StepKind.SanitiseChiller && heat is not null && weigh.State.Step(spec.AfterStepId) is not { Open: true } ? heat.Id
            : spec.AfterStepId;
        return from step in weigh.State.Steps
               where step.Status == RunStatus.Idle && step.Spec.Kind != StepKind.Clean
               let spec = step.Spec
               select spec with { Vessel = There(spec.Vessel), To = There(spec.To), AfterStepId = After(spec), Hoses = null, HosePaths = null };
    }

    /// <summary>The kettle held wort, and so did the tank: both are cleaned.</summary>
    private static IEnumerable<LaterStep> Cleaned(Weigh weigh, Vessel tank) =>
        from step in weigh.State.Steps
        where step.Status == RunStatus.Idle && step.Spec.Kind == StepKind.Clean && step.Spec.Vessel == weigh.Kettle.Id
        select new LaterStep(step.Spec.Id, step.Spec with { Id = weigh.FreshId("clean"), Vessel = tank.Id });
}
