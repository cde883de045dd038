using System.Collections.Concurrent;
using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// What is believed of the uncertain things of a day after the readings so far: an ensemble of possible days. The live plant is its
/// mean member, so there is one truth; the bands of the outlook are how the members differ from it.
/// </summary>
internal sealed class Belief
{
    /// <summary>A reading farther off than so many standard deviations was not foreseen by any stated spread.</summary>
    private const double SurpriseSds = 4;

    /// <summary>From so many on, a time widens the spreads that it tells of.</summary>
    private const double WideningSds = 3;

    private readonly Plan _plan;
    private readonly long _seed;
    private readonly Members? _moved;
    private readonly ConcurrentDictionary<Row, Band> _bands = new(ReferenceEqualityComparer.Instance);
    private bool[]? _endsDry;

    private Belief(Plan plan, long seed, Members? moved) => (_plan, _seed, _moved) = (plan, seed, moved);

    /// <param name="seed">
    /// Of the batch: 4,096 members are a sample, and its chance error would be the same on all days if they all had the same one. Measured on
    /// the bundled recipe: against 400,000 draws of the same model one sample held up to 0.8 points more or less in its 80 % band than it
    /// says, and added 12 to 29 to the chi-squared of 5,000 ranks.
    /// </param>
    public static Belief Of(Plan plan, long seed) => new(plan, seed, null);

    public Response Response
    {
        get
        {
            // the members are drawn on one processor while the day is folded on the other
            if (_moved is null && !Response.IsFolded(_plan))
                _ = Task.Run(() => Members.Prior(Ensemble.Sources.Of(_plan).Length, _seed));
            return Response.Of(_plan);
        }
    }

    public ImmutableArray<Source> Sources => Response.Sources;

    public double[] Mean => Members.Mean;

    private Members Members => _moved ?? Members.Prior(Sources.Length, _seed);

    /// <summary>The belief after a reading, or null: a surprise that no stated spread explains.</summary>
    /// <param name="shown">What a reading shows, as it depends on the sources.</param>
    /// <param name="off">Reading less what the mean member would have shown.</param>
    /// <param name="errorSd">Chance error.</param>
    public Belief? After(Row shown, double off, double errorSd, double surpriseSds = SurpriseSds)
    {
        var values = new float[Members.Count];
        Away(shown, values);
        var (mean, sd) = Members.Spread(values);
        if (Math.Abs(off - mean) > surpriseSds * Math.Sqrt(sd * sd + errorSd * errorSd))
            return null;
        return new(_plan, _seed, Members.After(values, off, errorSd));
    }

    /// <summary>How far the members on average would have shown more than the mean member does: where a quantity bends, they are not the same.</summary>
    public double Beside(Row shown)
    {
        var values = new float[Members.Count];
        Away(shown, values);
        return Members.Spread(values).Mean;
    }

    /// <summary>As <see cref="After"/>, but a surprise widens the stated spreads that it tells of (adaptive inflation, Anderson 2007, Tellus 59A).</summary>
    public Belief AfterWidened(Row shown, double off, double errorSd)
    {
        if (After(shown, off, errorSd, WideningSds) is { } foreseen)
            return foreseen;
        var values = new float[Members.Count];
        Away(shown, values);
        var wide = new Belief(_plan, _seed, Members.Widened(values, off, errorSd));
        wide.Away(shown, values);
        return new(_plan, _seed, wide.Members.After(values, off, errorSd));
    }

    /// <summary>What the mean member of this belief gives more than that of another.</summary>
    public double Moved(Row quantity, Belief from) => At(quantity, Mean) - At(quantity, from.Mean);

    /// <summary>How the figures of the day spread around what the mean member gives, while a step is the last one begun.</summary>
    public Bands Bands(string stepId) => Ensemble.Bands.Of(this, stepId);

    /// <summary>How a figure of the day spreads; found once, whatever step begins meanwhile.</summary>
    public Band Band(Row figure) => _bands.GetOrAdd(figure, row => Ensemble.Band.Of(this, row));

    /// <summary>A quantity for every member, against the mean member.</summary>
    public void Away(Row row, Span<float> into)
    {
        Span<float> dry = stackalloc float[Members.Count];
        Members.Give(row.AtMark, into);
        Members.Give(row.Dry, dry);
        var mean = (float)At(row, Mean);
        var endsDry = EndsDry;
        for (var i = 0; i < into.Length; i++)
            into[i] = (endsDry[i] ? dry[i] : into[i]) - mean;
    }

    /// <summary>Of each member: its tun runs dry before the mark.</summary>
    private bool[] EndsDry => _endsDry ??= Drying();

    private bool[] Drying()
    {
        Span<float> mark = stackalloc float[Members.Count], dry = stackalloc float[Members.Count];
        Members.Give(Response.Kept.AtMark, mark);
        Members.Give(Response.Kept.Dry, dry);
        var ends = new bool[Members.Count];
        for (var i = 0; i < ends.Length; i++)
            ends[i] = dry[i] < mark[i];
        return ends;
    }

    private double At(Row row, double[] z) =>
        Response.Kept.Dry.At(z) < Response.Kept.AtMark.At(z) ? row.Dry.At(z) : row.AtMark.At(z);
}
