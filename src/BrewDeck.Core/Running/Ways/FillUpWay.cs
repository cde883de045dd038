using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>What a fill was short of is run in before anything is drawn.</summary>
internal sealed class FillUpWay : Way
{
    public override bool Helps(Off off) => off.Kind == OffKind.Fill;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var fill = weigh.State.Step(off.About)!.Spec;
        return -off.By > weigh.RoomL(fill.Vessel) ? [] : OneOf(Now(weigh, RemedyKind.FillUp, -off.By, new StepSpec
        {
            Id = weigh.FreshId("water"),
            Kind = StepKind.AddWater,
            Unit = fill.Unit,
            Vessel = fill.Vessel,
            VolumeL = -off.By,
            TargetC = weigh.Live.Setting.SourceWaterC,
            HandsS = Math.Max(60, 60 * -off.By / weigh.Live.Setting.Habits.FillLPerMin),
            Cautions = fill.Cautions,
        }));
    }
}
