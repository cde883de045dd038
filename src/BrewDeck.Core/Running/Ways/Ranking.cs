using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>The order of the offers: by how far the day is left from the plan, what matters most counting most.</summary>
internal static class Ranking
{
    /// <summary>What matters most against the rest.</summary>
    private const double Most = 4;

    /// <summary>Minutes that are noticed as much as a point and a half of gravity; common practice, no source.</summary>
    private const double NoticedMin = 20;

    /// <summary>
    /// What a temperature or a stuck bed costs is not in the wort's figures, and liquor that is heated elsewhere is the same liquor sooner: there, leaving it
    /// is last, and so it is where the day then never ends. A mash or wort that heats slowly costs time: that counts from the quickest of the ways.
    /// </summary>
    public static IEnumerable<Remedy> Of(Weigh weigh, Off off, IEnumerable<Remedy> offers, Remedy leaveIt)
    {
        var feasible = offers.Where(r => r.Closest is null or { Ok: true }).ToList();
        var quickest = off.Kind == OffKind.Power ? feasible.Select(r => r.Minutes).Append(0).Min() : 0;
        var leaves = off.Kind == OffKind.Wort || (leaveIt.Never is null && feasible.Exists(r => r.Kind is RemedyKind.BoilElsewhere or RemedyKind.Infuse or RemedyKind.RestOn));
        double Of(Remedy r) => off.Kind == OffKind.Runoff ? MissesShown(weigh, weigh.With(r), r.Minutes) : Misses(weigh, weigh.With(r), r.Minutes - quickest);
        var ranked = feasible.Select(r => (Remedy: r, Misses: Of(r)))
            .Append((Remedy: leaveIt, Misses: leaves ? Misses(weigh, weigh.Forecast, -quickest) : double.PositiveInfinity));
        return ranked.OrderBy(o => double.IsInfinity(o.Misses) || RestsColder(weigh, o.Remedy)).ThenBy(o => o.Misses).Select(o => o.Remedy);
    }

    /// <summary>How far a wort ferments is not in its figures either: a rest that it was made for goes before one that only takes no time.</summary>
    private static bool RestsColder(Weigh weigh, Remedy remedy) =>
        remedy.Kind == RemedyKind.RestOn && remedy.Replace.Any(s => s.Kind == StepKind.Rest && s.TargetC < weigh.State.Step(s.Id)!.Spec.TargetC);

    /// <summary>
    /// What frees a bed hardly moves the wort: where no figure of it changes as shown, the minutes alone put the ways in their order, as they
    /// read. A figure that is shown moves by 0.001, 0.1 L or 1 IBU.
    /// </summary>
    private static double MissesShown(Weigh weigh, Forecast forecast, double minutes)
    {
        Aims with = Aims.Of(weigh, forecast), without = Aims.Of(weigh, weigh.Otherwise);
        static Aim Shown(Aim with, Aim without, double least) => Math.Abs(with.By - without.By) < least ? without : with;
        return Sum(
            weigh,
            new(Shown(with.Gravity, without.Gravity, 0.001), Shown(with.Volume, without.Volume, 0.1), Shown(with.Bitterness, without.Bitterness, 1)),
            Math.Round(minutes));
    }

    private static double Misses(Weigh weigh, Forecast forecast, double minutes) => Sum(weigh, Aims.Of(weigh, forecast), minutes);

    private static double Sum(Weigh weigh, Aims aims, double minutes)
    {
        var most = weigh.Plan.Choices.MattersMost;
        double Weight(MattersMost what) => what == most ? Most : 1;
        return Weight(MattersMost.Gravity) * aims.Gravity.Misses + Weight(MattersMost.Volume) * aims.Volume.Misses
            + aims.Bitterness.Misses + Weight(MattersMost.Time) * Math.Max(0, minutes) / NoticedMin;
    }
}
