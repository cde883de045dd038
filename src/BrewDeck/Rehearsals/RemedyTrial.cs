using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Rehearsals;

/// <summary>
/// Off-plan days, each rehearsed twice on the same plant: once the best remedy for the wort is taken, once it is left. Counted are those
/// whose aim was off by more than twice the error of the reading that shows it.
/// </summary>
internal sealed class RemedyTrial(Plan plan, long startMs)
{
    /// <summary>Mash yield of an off-plan day beyond what is drawn: from this to this, percent points.</summary>
    private const double LowestPoints = -8, HighestPoints = 4;

    /// <summary>Each day has a date of its own, from which the members of its outlook are drawn.</summary>
    private const long DayMs = 86_400_000;

    private readonly SortedDictionary<RemedyKind, (int Counted, int Nearer, int Promises, int Kept)> _kinds = [];

    /// <summary>Days rehearsed.</summary>
    public int Days { get; private set; }

    public int Aborted { get; private set; }

    /// <summary>Of the days that count: how many ended nearer, and of the promised gravities how many came out within their band.</summary>
    public IEnumerable<(RemedyKind Kind, int Counted, int Nearer, int Promises, int Kept)> Kinds =>
        _kinds.Select(k => (k.Key, k.Value.Counted, k.Value.Nearer, k.Value.Promises, k.Value.Kept));

    /// <summary>Offers that broke a limit, taken or not.</summary>
    public int BrokeLimits { get; private set; }

    /// <summary>The day both ways; touches nothing that is counted.</summary>
    public Pair Play(HiddenTruth drawn, int number)
    {
        var truth = drawn with { ConversionYield = Math.Clamp(drawn.ConversionYield + Points(number) / 100, 0, 1) };
        var opened = new BatchOpened(startMs + drawn.Seed * DayMs, plan, "", Rehearsed: true);
        var (takes, leaves) = (new OneWayBook(opened, takes: true), new OneWayBook(opened, takes: false));
        return new(takes, RehearsalRun.Of(truth, takes, opened.AtMs), RehearsalRun.Of(truth, leaves, opened.AtMs));
    }

    public void Add(Pair day)
    {
        Days++;
        if (day.Taken.Ended != RehearsalResult.Pitched || day.Left.Ended != RehearsalResult.Pitched)
            Aborted++;
        else if (day.Takes.Offered is { } offered)
            Count(offered, day.Takes.Left!, day.Taken.Truth, day.Left.Truth);
    }

    private void Count(Remedy offered, Remedy leaveIt, RehearsalTruth taken, RehearsalTruth left)
    {
        BrokeLimits += offered.Closest is { Ok: false } ? 1 : 0;
        var cell = _kinds.GetValueOrDefault(offered.Kind);
        if (Off(leaveIt) > 2 * ErrorOfReading())
            cell = cell with { Counted = cell.Counted + 1, Nearer = cell.Nearer + (Misses(taken) < Misses(left) ? 1 : 0) };
        if (offered.Gives.FirstOrDefault(s => s.Figure == "original_gravity_sg") is { Low: { } low, High: { } high })
        {
            var kept = taken.OriginalGravitySg >= low && taken.OriginalGravitySg <= high;
            cell = cell with { Promises = cell.Promises + 1, Kept = cell.Kept + (kept ? 1 : 0) };
        }
        _kinds[offered.Kind] = cell;
    }

    private bool ByVolume => plan.Choices.MattersMost == MattersMost.Volume;

    private double Off(Remedy leaveIt) =>
        leaveIt.Gives.FirstOrDefault(s => s.Figure == (ByVolume ? "fermenter_l" : "original_gravity_sg")) is { } shift ? Math.Abs(shift.After - shift.Before) : 0;

    private double Misses(RehearsalTruth truth) => ByVolume
        ? Math.Abs(truth.FermenterL - plan.Totals.FermenterL)
        : Math.Abs(truth.OriginalGravitySg - plan.Totals.OriginalGravitySg);

    /// <summary>Of the glass or the refractometer at the kettle: chance and bias, one standard deviation.</summary>
    private double ErrorOfReading()
    {
        double Both(UsualSpread a, UsualSpread b) => Math.Sqrt(a.Sd * a.Sd + b.Sd * b.Sd);
        var percent = Both(UsualSpreads.RefractometerBias, UsualSpreads.RefractometerNoise);
        return ByVolume
            ? Math.Sqrt(Math.Pow(Both(UsualSpreads.SightOffset, UsualSpreads.SightNoise), 2) + Math.Pow(UsualSpreads.SightScale.Sd * plan.Totals.PreBoilL, 2))
            : percent * ReadingErrors.SgPerPercent(plan.Totals.OriginalGravitySg);
    }

    /// <param name="Takes">The book of the day that took what was offered.</param>
    internal sealed record Pair(OneWayBook Takes, RehearsalResult Taken, RehearsalResult Left);

    /// <summary>Evenly over the range, whatever the number of days (golden section).</summary>
    private static double Points(int number) => LowestPoints + (HighestPoints - LowestPoints) * (number * 0.6180339887498949 % 1);
}
