namespace BrewDeck.Core.Learning;

/// <summary>
/// Bayesian update with stated priors. An observation is the brewhouse's number, plus an error that all batches share (an instrument's
/// bias), plus the day's own deviation, plus the readings' noise. How far days differ is itself only known within a factor, so it is
/// integrated over; one reading in fifty may be wild, so that a slip of the pen does not move the profile; a bound enters by the
/// probability that the number lies below it. Everything is summed on a grid, nothing is sampled.
/// </summary>
public static class Estimator
{
    private const int Points = 201;

    /// <summary>The grid reaches so many standard deviations of the prior either way.</summary>
    private const double Reach = 5;

    /// <summary>The stated spread of the days is right within this standard deviation of its logarithm.</summary>
    private const double DaySpreadLogSd = 0.5;

    private const double WildShare = 0.02;

    /// <summary>A wild reading spreads this many times wider.</summary>
    private const double WildTimes = 6;

    private static readonly double[] DaySpreadSteps = [-1.8, -1.2, -0.6, 0, 0.6, 1.2, 1.8];

    /// <param name="priorMean">The profile's number before anything was learned.</param>
    /// <param name="daySd">Stated spread of the days.</param>
    public static Estimate Of(double priorMean, double priorSd, double daySd, IReadOnlyList<Evidence> evidence)
    {
        var shared = evidence.Count == 0 ? 0 : evidence.Average(e => e.SharedSd);
        // first the number as these instruments show it, shared error included; then what of that is the brewhouse's own
        var shownSd = Math.Sqrt(priorSd * priorSd + shared * shared);
        var (mean, sd) = Shown(priorMean, shownSd, daySd, evidence);
        var keeps = priorSd * priorSd / (shownSd * shownSd);
        var variance = keeps * keeps * sd * sd + keeps * shared * shared;
        return new(priorMean + keeps * (mean - priorMean), Math.Sqrt(variance), evidence.Count(e => !e.IsUpperLimit));
    }

    private static (double Mean, double Sd) Shown(double priorMean, double priorSd, double daySd, IReadOnlyList<Evidence> evidence)
    {
        var logs = new double[Points * DaySpreadSteps.Length];
        double At(int i) => priorMean + priorSd * Reach * (2.0 * (i % Points) / (Points - 1) - 1);
        for (var i = 0; i < logs.Length; i++)
        {
            var step = DaySpreadSteps[i / Points];
            var day = daySd * Math.Exp(DaySpreadLogSd * step);
            logs[i] = -0.5 * (InstrumentErrors.Squared((At(i) - priorMean) / priorSd) + step * step);
            foreach (var e in evidence)
                logs[i] += Math.Log(Likelihood(e, day, At(i)));
        }
        double top = logs.Max(), sum = 0, mean = 0, square = 0;
        for (var i = 0; i < logs.Length; i++)
        {
            double p = Math.Exp(logs[i] - top), off = At(i) - priorMean;
            (sum, mean, square) = (sum + p, mean + p * off, square + p * off * off);
        }
        mean /= sum;
        return (priorMean + mean, Math.Sqrt(Math.Max(0, square / sum - mean * mean)));
    }

    private static double Likelihood(Evidence e, double day, double value)
    {
        var sd = Math.Sqrt(e.Sd * e.Sd + day * day);
        var z = (e.Value - value) / sd;
        return e.IsUpperLimit
            ? (1 - WildShare) * Below(z) + 0.5 * WildShare
            : ((1 - WildShare) * Math.Exp(-0.5 * z * z) + WildShare / WildTimes * Math.Exp(-0.5 * z * z / (WildTimes * WildTimes)) + 1e-300) / sd;
    }

    /// <summary>Normal distribution function: Abramowitz and Stegun 26.2.17, error below 7.5e-8.</summary>
    private static double Below(double z)
    {
        var t = 1 / (1 + 0.2316419 * Math.Abs(z));
        var tail = Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI)
            * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z >= 0 ? 1 - tail : tail;
    }
}
