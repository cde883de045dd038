using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Strike liquor that was left in its tank is run over after all.</summary>
internal sealed class RunOverWay : Way
{
    /// <summary>What the tank's outlet keeps back of the rest is not missed; common practice, no source.</summary>
    private const double Enough = 0.95;

    public override bool Helps(Off off) => off.Kind == OffKind.Strike;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var transfer = weigh.State.Step(off.About)!.Spec;
        var there = Contents.CoolL(weigh.Live.Vessel(transfer.Vessel)) - weigh.Live.Setting.Brewhouse[transfer.Vessel].DeadSpaceL;
        var litres = Math.Min(-off.By, Math.Min(there, weigh.RoomL(transfer.To)));
        return litres <= 0 ? [] : OneOf(Now(weigh, RemedyKind.RunOver, litres, transfer with
        {
            Id = weigh.FreshId("strike"),
            VolumeL = litres,
            AfterStepId = "",
            LeadS = 0,
            CutsIn = true,
        }, weigh.Before(transfer.To)) with
        { Vessel = transfer.To, Partly = litres < Enough * -off.By });
    }
}
