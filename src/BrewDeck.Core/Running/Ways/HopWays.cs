using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>What was forgotten goes in now: as it was weighed, and as much as gives the planned bitterness after all.</summary>
internal sealed class AddNowWay : Way
{
    /// <summary>Nobody has more of a hop at hand than this; times what was weighed.</summary>
    private const double Most = 3;

    public override bool Helps(Off off) => off.Kind == OffKind.Missed;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var missed = weigh.State.Step(off.About)!.Spec;
        Remedy Of(double factor)
        {
            var step = missed with { Id = weigh.FreshId("addition"), CutsIn = true, AfterStepId = "", Charges = Scaled.By(missed.Charges, factor) };
            return Now(weigh, factor == 1 ? RemedyKind.AddNow : RemedyKind.Reweigh, Scaled.Grams(step.Charges), step);
        }

        yield return Of(1);
        if (off.By < 0 && weigh.Meeting(a => a.Bitterness, Most, Of) is { } reweighed)
            yield return reweighed;
    }
}

/// <summary>
/// Hops that are still to go in make up for what is missing or too much: those of another alpha acid than planned alone where that is enough, so
/// that the others go on giving the aroma that they were meant to.
/// </summary>
internal sealed class ReweighWay : Way
{
    private const double Most = 3;

    /// <summary>A label that differs by less is the same crop; share of the planned alpha acid.</summary>
    private const double SameAlpha = 0.005;

    public override bool Helps(Off off) => off.Kind is OffKind.Wort or OffKind.Missed;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var aims = Aims.Of(weigh, weigh.Forecast);
        if (aims.Bitterness.Near || !weigh.HopsLeft)
            return [];
        var more = aims.Bitterness.By < 0;
        var most = more ? Most - 1 : 1;
        var steps = weigh.State.Steps.Where(s => s.Status == RunStatus.Idle && s.Spec.Kind is StepKind.AddToBoil or StepKind.AddToWhirlpool
            && s.Spec.Charges.Any(c => c.AlphaG > 0)).Select(s => s.Spec).ToList();
        // a bag whose grams are known has no more in it
        var hops = steps.SelectMany(s => s.Charges).Where(c => c.AlphaG > 0 && !(more && weigh.State.AmountsTold.Contains(c.Name))).Select(c => c.Name).ToHashSet();
        Remedy? Of(HashSet<string> these) => these.Count == 0 ? null : weigh.Meeting(a => a.Bitterness, most, by => Scaling(weigh, steps, more ? 1 + by : 1 - by, these));
        return OneOf(Of([.. OfOtherAlpha(weigh, steps).Intersect(hops)]) ?? Of(hops));
    }

    private static Remedy Scaling(Weigh weigh, List<StepSpec> steps, double factor, HashSet<string> hops)
    {
        var changed = steps.Where(s => s.Charges.Any(c => hops.Contains(c.Name))).Select(s => s with { Charges = Scaled.By(s.Charges, factor, hops) }).ToList();
        // who is still at the scale weighs these
        var list = weigh.State.Steps.Where(s => s.Open && s.Spec.Kind == StepKind.WeighIn).Select(s => s.Spec with { Charges = Scaled.By(s.Spec.Charges, factor, hops) });
        return Changes(RemedyKind.Reweigh, changed.Sum(s => Scaled.Grams(s.Charges)), [.. changed, .. list]);
    }

    private static HashSet<string> OfOtherAlpha(Weigh weigh, List<StepSpec> steps)
    {
        double? Planned(string hop) => weigh.Plan.Steps.SelectMany(s => s.Spec.Charges).FirstOrDefault(c => c.Name == hop && c.AlphaG > 0) is { } c ? c.AlphaG / c.Amount : null;
        return [.. steps.SelectMany(s => s.Charges).Where(c => c.AlphaG > 0 && Planned(c.Name) is { } was && Math.Abs(c.AlphaG / c.Amount / was - 1) > SameAlpha).Select(c => c.Name)];
    }
}
