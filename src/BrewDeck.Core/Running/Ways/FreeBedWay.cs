using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;

namespace BrewDeck.Core.Running.Ways;

/// <summary>
/// A bed that runs too slowly or not at all. What each way gives back of the usual flow is common practice, no source: a bed that was
/// only left alone goes on at half, one that was lifted at four fifths, one that was cut at nine tenths.
/// </summary>
internal abstract class FreeBedWay(RemedyKind kind, string label, double minutes, double flowShare) : Way
{
    public override bool Helps(Off off) => off.Kind == OffKind.Runoff;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var run = weigh.State.Step(off.About)!.Spec;
        var flow = flowShare * weigh.Plan.Brewhouse.Habits.RunoffLPerMin;
        if (flow <= weigh.Live.Setting.Habits.RunoffLPerMin * (1 + off.By) || LiquorL(weigh, run) is not { } litres)
            return [];
        var frees = new StepSpec
        {
            Id = weigh.FreshId("bed"),
            Kind = StepKind.FreeBed,
            Unit = UnitProcedure.Lauter,
            Vessel = run.Vessel,
            VolumeL = litres > 0 ? litres : null,
            Minutes = minutes,
            HandsS = 60 * minutes,
            Label = label,
            Cautions = Cautions.Scald,
        };
        var left = run with { FlowLPerMin = flow };
        // what comes from below need not come from above
        left = litres > 0 ? left with { SpargeL = Math.Max(0, (run.SpargeL ?? 0) - litres) } : left;
        return [Now(weigh, kind, litres > 0 ? litres : minutes, frees, off.About) with { Replace = [left] }];
    }

    /// <summary>Hot liquor that it takes; null: there is none.</summary>
    protected virtual double? LiquorL(Weigh weigh, StepSpec run) => 0;
}

/// <summary>The bed loosens a little by itself; then with the valve half open.</summary>
internal sealed class RestBedWay() : FreeBedWay(RemedyKind.RestBed, StepLabels.RestBed, 10, 0.5);

/// <summary>Liquor pressed in from under the false bottom lifts the bed.</summary>
internal sealed class UnderletWay() : FreeBedWay(RemedyKind.Underlet, StepLabels.Underlet, 8, 0.8)
{
    /// <summary>As a share of the bed's own litres: common practice, no source.</summary>
    private const double Share = 0.1;

    /// <summary>Less lifts no bed; common practice, no source.</summary>
    private const double LeastL = 2;

    protected override double? LiquorL(Weigh weigh, StepSpec run)
    {
        var house = weigh.Live.Setting.Brewhouse;
        if (house.HotLiquorTank.Id == run.Vessel || run.SpargeL is not > 0)
            return null;
        var tankGives = Contents.CoolL(weigh.Live.Vessel(house.HotLiquorTank.Id)) - house.HotLiquorTank.DeadSpaceL;
        var litres = Math.Min(Math.Min(Share * Contents.CoolL(weigh.Live.Vessel(run.Vessel)), run.SpargeL.Value), tankGives);
        return litres >= LeastL && litres <= weigh.RoomL(run.Vessel) ? litres : null;
    }
}

/// <summary>The bed is cut; the first wort after it is cloudy and goes back on top.</summary>
internal sealed class RakeBedWay() : FreeBedWay(RemedyKind.RakeBed, StepLabels.Rake, HandWork.RakeMin, 0.9);
