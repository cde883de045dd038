namespace BrewDeck.Core.Physics;

/// <summary>
/// Effectiveness of heat exchangers from transfer units NTU = UA/Cmin and capacity ratio Cr = Cmin/Cmax (0..1).
/// Bergman, Lavine, Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table 11.3.
/// </summary>
public static class Exchanger
{
    /// <summary>Counterflow, plates too.</summary>
    public static double CounterflowEffectiveness(double ntu, double capacityRatio)
    {
        // the general form is 0/0 at Cr = 1
        if (Math.Abs(1.0 - capacityRatio) < 1e-9) return ntu / (1.0 + ntu);
        var decay = Math.Exp(-ntu * (1.0 - capacityRatio));
        return (1.0 - decay) / (1.0 - capacityRatio * decay);
    }

    /// <summary>Both streams in one direction.</summary>
    public static double ParallelEffectiveness(double ntu, double capacityRatio) =>
        (1.0 - Math.Exp(-ntu * (1.0 + capacityRatio))) / (1.0 + capacityRatio);

    /// <summary>
    /// Crossflow, both streams unmixed: Mason's exact series (1955), a sum over Poisson tails of both streams. The
    /// textbook's closed approximation is 2e-6 away at NTU 5, Cr 0.7 and more elsewhere. NTU 0..200.
    /// </summary>
    public static double CrossflowUnmixedEffectiveness(double ntu, double capacityRatio)
    {
        var (first, second) = (ntu, capacityRatio * ntu);
        if (second == 0.0) return StirredEffectiveness(ntu);
        var (firstTerm, secondTerm) = (Math.Exp(-first), Math.Exp(-second));
        var (firstTail, secondTail) = (1.0 - firstTerm, 1.0 - secondTerm);
        var sum = 0.0;
        for (var n = 1; n < 1000 && firstTail * secondTail > 1e-16; n++)
        {
            sum += firstTail * secondTail;
            firstTail -= firstTerm *= first / n;
            secondTail -= secondTerm *= second / n;
        }

        return sum / second;
    }

    /// <summary>Crossflow with the larger stream mixed and the smaller unmixed.</summary>
    public static double CrossflowMaxMixedEffectiveness(double ntu, double capacityRatio) =>
        capacityRatio == 0.0
            ? StirredEffectiveness(ntu)
            : (1.0 - Math.Exp(-capacityRatio * StirredEffectiveness(ntu))) / capacityRatio;

    /// <summary>
    /// NTU that gives an effectiveness in crossflow with the larger stream mixed; Cr above 0, NaN if unreachable.
    /// </summary>
    public static double CrossflowMaxMixedNtu(double effectiveness, double capacityRatio) =>
        -Math.Log(1.0 + Math.Log(1.0 - effectiveness * capacityRatio) / capacityRatio);

    /// <summary>One shell pass, two or more tube passes.</summary>
    public static double ShellAndTubeEffectiveness(double ntu, double capacityRatio)
    {
        var root = Math.Sqrt(1.0 + capacityRatio * capacityRatio);
        var decay = Math.Exp(-ntu * root);
        return 2.0 / (1.0 + capacityRatio + root * (1.0 + decay) / (1.0 - decay));
    }

    /// <summary>One side at one temperature (boiler, condenser, stirred vessel): Cr = 0.</summary>
    public static double StirredEffectiveness(double ntu) => 1.0 - Math.Exp(-ntu);

    /// <summary>Log-mean temperature difference in K of the two ends; both must have the same sign, else NaN.</summary>
    public static double LogMeanDifferenceK(double firstEndK, double secondEndK) =>
        Math.Abs(firstEndK - secondEndK) < 1e-9 * Math.Abs(firstEndK)
            ? firstEndK
            : (firstEndK - secondEndK) / Math.Log(firstEndK / secondEndK);

    /// <summary>Outlet in °C of a stream that gives off (or takes, if negative) this heat flow in W.</summary>
    public static double OutletC(double inletC, double watts, double capacityWPerK) => inletC - watts / capacityWPerK;
}
