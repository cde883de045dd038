using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>What is still to be cast out is made so much colder or warmer that the whole comes to the pitching temperature.</summary>
internal sealed class SetChillerWay : Way
{
    /// <summary>Nearer than this to the cooling water no chiller of a brewhouse comes; K.</summary>
    private const double AboveSourceK = 2;

    public override bool Helps(Off off) => off.Kind == OffKind.Pitch;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        // what comes out of a kettle with a coil comes as it is
        if (weigh.State.Step(off.About)!.Spec is not { Kind: StepKind.CastOut } cast || weigh.Plan.Brewhouse.Chiller.IsCoil)
            return [];
        var there = Contents.CoolL(weigh.Live.Vessel(Places.Fermenter));
        var coming = Contents.CoolL(weigh.Forecast.Rest[^1].After.Vessels[weigh.Live.Setting.FermenterIndex]) - there;
        if (coming <= 1)
            return [];
        var target = Math.Max(weigh.Live.Setting.SourceWaterC + AboveSourceK, weigh.Plan.Recipe.Yeast.PitchC - off.By * there / coming);
        return [Changes(RemedyKind.SetChiller, target, cast with { TargetC = target })];
    }
}
