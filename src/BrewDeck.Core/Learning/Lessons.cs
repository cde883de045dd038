using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Learning;

/// <summary>What the batches teach about one number of the profile.</summary>
/// <param name="Current">The profile's number.</param>
/// <param name="Band">Belief with its 80 % band.</param>
/// <param name="Evidence">What drives it, newest last; with what is left out, and why.</param>
/// <param name="CurrentSpread">How far the profile says that a day is off, as in <see cref="DaySpreads"/>; null: it does not say.</param>
public sealed record Lesson(LessonParameter Parameter, double Current, Estimate Band, ImmutableArray<Evidence> Evidence, double? CurrentSpread = null)
{
    /// <summary>Fewer say too little to move a profile.</summary>
    public const int FewestBatches = 3;

    /// <summary>The belief must have become this much narrower than what is believed of any brewhouse.</summary>
    private const double Narrowed = 0.85;

    /// <summary>How many of the batches that it rests on were rehearsed.</summary>
    public int Rehearsed => Evidence.Count(e => e is { Rehearsed: true, IsUpperLimit: false, LeftOut: null });

    public bool EnoughData => Band.Batches >= FewestBatches && Band.Sd < Narrowed * Parameter.PriorSd;

    /// <summary>The band does not hold the profile's number: there is a reason to change it.</summary>
    public bool Moves => EnoughData && Parameter.With is not null && !Band.Holds(Current);

    /// <summary>The number that would go into the profile, within what a profile may say: its own as long as the band holds it.</summary>
    public double Proposed => Moves ? Math.Clamp(Band.Mean, Parameter.Least, Parameter.Most) : Current;

    /// <summary>How far the next day will be off: what is not known of the brewhouse, and what its days differ by; as in <see cref="DaySpreads"/>.</summary>
    public double? ProposedSpread => Parameter.Spread is null ? null : InstrumentErrors.Root(Band.Sd, Parameter.DaySd) / Parameter.SpreadOf(Proposed);

    /// <summary>It can be accepted: there are enough data, the profile has such a number, and the band does not hold it, or the days spread less than the profile says.</summary>
    public bool CanBeAccepted => EnoughData && Parameter.With is not null && (Moves || Narrows);

    private bool Narrows => ProposedSpread < Narrowed * (CurrentSpread ?? InstrumentErrors.Root(Parameter.PriorSd, Parameter.DaySd) / Parameter.SpreadOf(Current));

    public Brewhouse AppliedTo(Brewhouse house)
    {
        var moved = Moves ? Parameter.With!(house, Proposed) : house;
        return Parameter.Spread is { } place && ProposedSpread is { } spread ? moved with { Spreads = place.With(moved.Spreads ?? new(), spread) } : moved;
    }
}

/// <summary>
/// From the logs, what this brewhouse really does. A batch is reviewed with the profile that it was brewed by; priors stand at the oldest
/// batch's profile, so that what was accepted once is not counted twice.
/// </summary>
public static class Lessons
{
    /// <summary>Older batches say less about the brewhouse of today.</summary>
    public const int MostBatches = 50;

    /// <param name="current">The profile as it is now.</param>
    /// <param name="batches">Finished batches of this brewhouse in any order.</param>
    /// <param name="beforeMs">Only batches opened before this moment are read, Unix ms: a prediction of a batch never sees its own result.</param>
    public static ImmutableArray<Lesson> Of(Brewhouse current, IEnumerable<BatchTrace> batches, long beforeMs = long.MaxValue)
    {
        var read = batches.Where(b => b.OpenedMs < beforeMs).OrderBy(b => b.OpenedMs).TakeLast(MostBatches).ToList();
        var evidence = read.SelectMany(EvidenceOf).ToLookup(e => e.Parameter);
        var first = read.Count > 0 ? read[0].Plan.Brewhouse : current;
        return [.. LessonParameters.For(Same(first, current) ? first : current).Select(p => Learned(p, current, Same(first, current) ? first : current, [.. evidence[p.Id]]))];
    }

    /// <summary>Everything that one batch says.</summary>
    public static IEnumerable<Evidence> EvidenceOf(BatchTrace batch) =>
        new[] { MashEvidence.Of(batch), LauterEvidence.Of(batch), BoilEvidence.Of(batch), HeatEvidence.Of(batch), CastOutEvidence.Of(batch) }
            .SelectMany(e => e).Where(e => double.IsFinite(e.Value) && double.IsFinite(e.Sd) && e.Sd > 0);

    private static Lesson Learned(LessonParameter parameter, Brewhouse current, Brewhouse first, ImmutableArray<Evidence> evidence) =>
        new(
            parameter,
            parameter.Get(current),
            Estimator.Of(parameter.Get(first), parameter.PriorSd, parameter.DaySd, [.. evidence.Where(e => e.LeftOut is null)]),
            evidence,
            current.Spreads is { } own ? parameter.Spread?.Get(own) : null);

    /// <summary>The same vessels: numbers may have moved.</summary>
    private static bool Same(Brewhouse a, Brewhouse b) =>
        a.Vessels.Select(v => v.Id).SequenceEqual(b.Vessels.Select(v => v.Id)) && a.Pumps.Length == b.Pumps.Length
        && a.Vessels.Zip(b.Vessels).All(p => p.First.Elements.Length == p.Second.Elements.Length);
}
