using System.Collections.Immutable;
using BrewDeck.Core.Running.Ways;

namespace BrewDeck.Core.Running;

/// <summary>The ways back to plan that the state of the day calls for.</summary>
public static class Remedies
{
    private static readonly Remembered<RunState, Remedy[]> _known = new();

    /// <summary>
    /// Best first for what the brewer said matters most; leaving it is last, but where the wort alone is off it stands where its outcome puts it.
    /// Empty when nothing is off.
    /// </summary>
    public static ImmutableArray<Remedy> For(RunState state, long nowMs) =>
        !IsOnTheWay(state) || !Off.MayBe(state) ? [] : [.. _known.Of(state, nowMs, () => Weighed(state, nowMs))];

    /// <summary>
    /// For who asks by hand: where each cause has had its answer, the ways that a wort still off its plan has. Nothing is offered twice without
    /// being asked for.
    /// </summary>
    public static ImmutableArray<Remedy> Asked(RunState state, long nowMs)
    {
        var unanswered = For(state, nowMs);
        if (!unanswered.IsEmpty || !IsOnTheWay(state))
            return unanswered;
        var weigh = new Weigh(state, Forecasts.At(state, nowMs), nowMs);
        return Off.StillOff(weigh) is { } off && Offers(weigh, off) is { Length: > 1 } offers ? [.. offers] : [];
    }

    private static bool IsOnTheWay(RunState state) => state.Plan is not null && state.Status == RunStatus.Running;

    /// <summary>What of the beer is off plan, its pitch among it: before is the plan, after what comes of leaving it. A mash is off by what was read in it.</summary>
    public static IEnumerable<Shift> OffPlan(ImmutableArray<Remedy> ranked) =>
        ranked.FirstOrDefault(r => r.Kind == RemedyKind.LeaveIt) is { } leaveIt ? leaveIt.Gives.Where(s => s.Figure is not ("finish_ms" or "mash_c") && Aims.IsNoticed(s)) : [];

    private static Remedy[] Weighed(RunState state, long nowMs)
    {
        var weigh = new Weigh(state, Forecasts.At(state, nowMs), nowMs);
        return Off.In(weigh).FirstOrDefault() is { } off ? Offers(weigh, off) : [];
    }

    private static Remedy[] Offers(Weigh weigh, Off off)
    {
        var offers = Way.All.Where(w => w.Helps(off)).SelectMany(w => w.Offers(weigh, off)).Select(r => Told.Of(weigh, off, r));
        return [.. Ranking.Of(weigh, off, offers, Told.LeaveIt(weigh, off))];
    }
}
