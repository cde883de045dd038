using BrewDeck.Core.Running;

namespace BrewDeck.Rehearsals;

/// <summary>One figure at one moment of the day, over all days.</summary>
internal sealed class CalibrationCell
{
    public const int Bins = 20;

    /// <summary>Chi-squared that 19 degrees of freedom exceed once in a hundred.</summary>
    public const double ChiSquaredBound = 36.191;

    private readonly List<double> _widths = [];
    private readonly List<double> _off = [];
    private readonly int[] _ranks = new int[Bins];
    private int _inside;

    /// <summary>Share of the days whose truth lay in the band.</summary>
    public double Inside => _inside / (double)_off.Count;

    /// <summary>Median width of the 80 % band.</summary>
    public double Width => Median(_widths);

    /// <summary>Median of truth less middle.</summary>
    public double Off => Median(_off);

    /// <summary>Days for each twentieth of the members that lay below the truth.</summary>
    public IReadOnlyList<int> Ranks => _ranks;

    /// <summary>Against ranks that are all as likely.</summary>
    public double ChiSquared => _ranks.Sum(n => Math.Pow(n - _off.Count / (double)Bins, 2)) * Bins / _off.Count;

    public void Add(double truth, Figure shown, double shareBelow)
    {
        if (shown is not { P10: { } low, P90: { } high })
            throw new InvalidOperationException("the outlook has no band");
        _inside += truth >= low && truth <= high ? 1 : 0;
        _widths.Add(high - low);
        _off.Add(truth - shown.P50);
        _ranks[Math.Min(Bins - 1, (int)(shareBelow * Bins))]++;
    }

    private static double Median(List<double> of) => of.Order().ElementAt(of.Count / 2);
}
