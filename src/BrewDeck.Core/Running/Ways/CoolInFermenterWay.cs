using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Wort in the fermenter that is not fit for the yeast: a step before the yeast brings it there, as long as the model says.</summary>
internal abstract class CoolInFermenterWay(RemedyKind kind, string label) : Way
{
    public override bool Helps(Off off) => off.Kind == OffKind.Pitch;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        // even before an aeration that is going on: oxygen in warm wort does harm
        var next = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Vessel == Places.Fermenter);
        if (next is null || !Can(weigh, off))
            return [];
        var step = new StepSpec
        {
            Id = weigh.FreshId("cool"),
            Kind = StepKind.CoolInFermenter,
            Unit = UnitProcedure.Cool,
            Vessel = Places.Fermenter,
            TargetC = weigh.Plan.Recipe.Yeast.PitchC,
            HandsS = HandsS,
            Label = label,
        };
        var outcome = PlantModel.Run(weigh.Live.Setting, step, weigh.Live.Plant, weigh.Live.Vessel(step.Vessel).AtS, double.PositiveInfinity);
        return outcome.DurationS is 0 or >= Heating.HopelessS
            ? []
            : [Now(weigh, kind, step.TargetC.Value, step, next.Spec.Id) with { Replace = [.. After(weigh, step)] }];
    }

    protected abstract double HandsS { get; }

    protected abstract bool Can(Weigh weigh, Off off);

    /// <summary>Steps that must wait for it.</summary>
    protected virtual IEnumerable<StepSpec> After(Weigh weigh, StepSpec step) => [];
}

/// <summary>Once more through the chiller and back by pump, or a coil hung into the fermenter.</summary>
internal sealed class ChillFermenterWay() : CoolInFermenterWay(RemedyKind.ChillFermenter, "")
{
    /// <summary>Nearer than this to the cooling water nobody waits for a chiller; K.</summary>
    private const double AboveSourceK = 1;

    /// <summary>Hoses are moved and sanitised.</summary>
    protected override double HandsS => 600;

    /// <summary>A chiller that is being cleaned, or is clean already, no longer takes wort.</summary>
    protected override bool Can(Weigh weigh, Off off)
    {
        var house = weigh.Plan.Brewhouse;
        return off.By > 0 && weigh.Plan.Recipe.Yeast.PitchC >= weigh.Live.Setting.SourceWaterC + AboveSourceK
            && (house.Chiller.IsCoil || !house.Pumps.IsEmpty)
            && Cleans(weigh).All(s => s.Status == RunStatus.Idle);
    }

    protected override IEnumerable<StepSpec> After(Weigh weigh, StepSpec step) =>
        Cleans(weigh).Select(s => s.Spec with { AfterStepId = step.Id });

    private static IEnumerable<RunStep> Cleans(Weigh weigh) => weigh.State.Steps.Where(s => s.Spec is { Kind: StepKind.Clean, Label: StepLabels.Chiller or StepLabels.Down });
}

/// <summary>The room brings it there by itself; nobody waits for it by hand.</summary>
internal sealed class WaitForRoomWay() : CoolInFermenterWay(RemedyKind.WaitForRoom, StepLabels.Room)
{
    protected override double HandsS => 60;

    protected override bool Can(Weigh weigh, Off off) => weigh.State.Step(off.About)!.Spec.Kind == StepKind.Pitch;
}

/// <summary>The fermenter's own cooling brings it there; the yeast waits.</summary>
internal sealed class OwnCoolingWay() : CoolInFermenterWay(RemedyKind.OwnCooling, StepLabels.OwnCooling)
{
    protected override double HandsS => 60;

    protected override bool Can(Weigh weigh, Off off) =>
        off.By > 0 && weigh.Plan.Brewhouse.Fermenter.CoolingW > 0 && weigh.State.Step(off.About)!.Spec.Kind == StepKind.Pitch;
}
