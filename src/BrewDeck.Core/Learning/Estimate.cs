namespace BrewDeck.Core.Learning;

/// <summary>What is believed of a parameter: mean, standard deviation and the 80 % band of a normal distribution.</summary>
/// <param name="Sd">Standard deviation of the belief.</param>
/// <param name="Batches">Number of batches that measured it; those that only bound it are not counted.</param>
public sealed record Estimate(double Mean, double Sd, int Batches)
{
    private const double Band80 = 1.2815515655446004;

    public double P10 => Mean - Band80 * Sd;

    public double P90 => Mean + Band80 * Sd;

    /// <summary>Within the 80 % band.</summary>
    public bool Holds(double value) => value >= P10 && value <= P90;
}
