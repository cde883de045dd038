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

/// <summary>Hops that are still to go in make up for what is missing or too much.</summary>
internal sealed class ReweighWay : Way
{
    private const double Most = 3;

    public override bool Helps(Off off) => off.Kind is OffKind.Wort or OffKind.Missed;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var aims = Aims.Of(weigh, weigh.Forecast);
        if (aims.Bitterness.Near || !weigh.HopsLeft)
            return [];
        var steps = weigh.State.Steps.Where(s => s.Status == RunStatus.Idle && s.Spec.Kind is StepKind.AddToBoil or StepKind.AddToWhirlpool
            && s.Spec.Charges.Any(c => c.AlphaG > 0)).Select(s => s.Spec).ToList();
        Remedy Of(double more) => Changes(
            RemedyKind.Reweigh,
            steps.Sum(s => Scaled.Grams(Scaled.By(s.Charges, 1 + Math.Sign(-aims.Bitterness.By) * more))),
            [.. steps.Select(s => s with { Charges = Scaled.By(s.Charges, 1 + Math.Sign(-aims.Bitterness.By) * more) })]);
        return OneOf(weigh.Meeting(a => a.Bitterness, aims.Bitterness.By > 0 ? 1 : Most - 1, Of));
    }
}
