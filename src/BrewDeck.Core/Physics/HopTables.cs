namespace BrewDeck.Core.Physics;

/// <summary>
/// The printed utilisation tables, by boil time. Steps, as printed: for planning prefer
/// <see cref="Bitterness.TinsethUtilisation"/>, which has no jumps.
/// </summary>
public static class HopTables
{
    private readonly record struct Step(double UpToMin, double Utilisation);

    // Rager 1990, Zymurgy Special 1990, pp. 53-54
    private static readonly Step[] RagerSteps =
    [
        new(5, 0.05), new(10, 0.06), new(15, 0.08), new(20, 0.101), new(25, 0.121), new(30, 0.153), new(35, 0.188),
        new(40, 0.228), new(45, 0.269), new(50, 0.281), new(double.PositiveInfinity, 0.30),
    ];

    // Garetz 1994, Using Hops, as tabulated in later reviews
    private static readonly Step[] GaretzSteps =
    [
        new(10, 0.0), new(15, 0.02), new(20, 0.05), new(25, 0.08), new(30, 0.11), new(35, 0.14), new(40, 0.16),
        new(45, 0.18), new(50, 0.19), new(60, 0.20), new(70, 0.21), new(80, 0.22), new(double.PositiveInfinity, 0.23),
    ];

    // Daniels 1996, Designing Great Beers; classes 0-9, 10-19, ... : a class ends just short of the next
    private static readonly double[] DanielsStartsMin = [0, 10, 20, 30, 45, 60, 75];
    private static readonly double[] DanielsWhole = [0.05, 0.12, 0.15, 0.19, 0.22, 0.24, 0.27];
    private static readonly double[] DanielsPellets = [0.06, 0.15, 0.19, 0.24, 0.27, 0.30, 0.34];

    /// <summary>Rager's printed steps, a fraction; boiled minutes.</summary>
    public static double RagerUtilisation(double minutes) => Lookup(RagerSteps, minutes);

    /// <summary>Garetz' printed steps, a fraction; boiled minutes.</summary>
    public static double GaretzUtilisation(double minutes) => Lookup(GaretzSteps, minutes);

    /// <summary>Daniels' printed classes, a fraction; boiled minutes, pellets or whole cones.</summary>
    public static double DanielsUtilisation(double minutes, bool pellets)
    {
        var row = Array.FindLastIndex(DanielsStartsMin, start => minutes >= start);
        return (pellets ? DanielsPellets : DanielsWhole)[Math.Max(0, row)];
    }

    private static double Lookup(Step[] steps, double minutes)
    {
        foreach (var step in steps)
            if (minutes <= step.UpToMin) return step.Utilisation;
        return steps[^1].Utilisation;
    }
}
