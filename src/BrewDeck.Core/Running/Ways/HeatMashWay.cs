using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>The mash's own heat; nothing where the elements are not covered or too weak to get there.</summary>
internal sealed class HeatMashWay : Way
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: < 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var rest = weigh.State.Step(off.About)!;
        var spec = new StepSpec
        {
            Id = weigh.FreshId("heat"),
            Kind = StepKind.HeatMash,
            Unit = UnitProcedure.Mash,
            Vessel = rest.Spec.Vessel,
            TargetC = rest.Spec.TargetC,
            HandsS = 60,
            Cautions = Cautions.Scald | Cautions.DryFire | Cautions.MainsNearWater,
        };
        var plant = weigh.Before(rest);
        var outcome = PlantModel.Run(weigh.Live.Setting, spec, plant, plant.Vessels[weigh.Live.Setting.IndexOf(spec.Vessel)].AtS, double.PositiveInfinity);
        return outcome.DurationS >= Planning.Operations.Heating.HopelessS ? [] : [Now(weigh, RemedyKind.HeatMash, outcome.DurationS / 60, spec, off.About)];
    }
}
