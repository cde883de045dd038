namespace BrewDeck.Core.Running.Ways;

/// <summary>Strike liquor too cold: heated on before it is drawn.</summary>
internal sealed class HeatLiquorWay : Way
{
    public override bool Helps(Off off) => off is { Kind: OffKind.Liquor, By: < 0 };

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var heats = weigh.State.Step(off.About)!.Spec;
        var spec = heats with { Id = weigh.FreshId("strike"), AfterStepId = "", LeadS = 0 };
        return [Now(weigh, RemedyKind.HeatLiquor, weigh.StrikeC(heats), spec)];
    }
}
