using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Running.Ways;

/// <summary>The tun's own heat, for the mash or for the liquor that the grist is still to come into; nothing where the elements are not covered or too weak to get there.</summary>
internal sealed class HeatMashWay : Way
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Mash, By: < 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var rest = weigh.State.Step(off.About)!;
        var doughIn = Off.DoughInAhead(weigh.State);
        var plant = weigh.Before(doughIn ?? rest);
        var spec = new StepSpec
        {
            Id = weigh.FreshId("heat"),
            Kind = StepKind.HeatMash,
            Unit = UnitProcedure.Mash,
            Vessel = rest.Spec.Vessel,
            TargetC = doughIn is null ? rest.Spec.TargetC : StrikeC(weigh, plant, doughIn),
            // it takes minutes, and is watched until it is switched off
            HandsS = StepSpec.AllThroughS,
            Label = doughIn is null ? "" : StepLabels.Liquor,
            Cautions = Cautions.Scald | Cautions.DryFire | Cautions.MainsNearWater,
            // it is pumped round as the mash will be: the hoses that the doughing in wants are wanted now
            Hoses = doughIn?.Spec.Hoses,
            HosePaths = doughIn?.Spec.HosePaths,
        };
        var outcome = PlantModel.Run(weigh.Live.Setting, spec, plant, plant.Vessels[weigh.Live.Setting.IndexOf(spec.Vessel)].AtS, double.PositiveInfinity);
        return outcome.DurationS >= Heating.HopelessS ? [] : [Now(weigh, RemedyKind.HeatMash, outcome.DurationS / 60, spec, (doughIn ?? rest).Spec.Id)];
    }

    /// <summary>What the liquor in the tun should have for the grist to come to its rest, °C; null: nobody heated it for one.</summary>
    private static double? StrikeC(Weigh weigh, PlantState plant, RunStep doughIn) =>
        weigh.State.Steps.LastOrDefault(s => s.Spec.Kind == StepKind.HeatStrike && s.Spec.To == doughIn.Spec.Vessel) is { } heated
            ? Strike.TemperatureC(new Workbench(weigh.Live.Setting, plant), heated.Spec with { Vessel = heated.Spec.To })
            : null;
}
