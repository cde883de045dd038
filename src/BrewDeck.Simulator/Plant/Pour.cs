namespace BrewDeck.Simulator.Plant;

/// <summary>Liquid on its way into a tank.</summary>
/// <param name="from">Index of the tank that gives; -1: the tap or a jug.</param>
/// <param name="to">Index of the tank that takes.</param>
/// <param name="kgPerS">Flow.</param>
/// <param name="tempC">Of tap or jug, °C.</param>
internal sealed class Pour(int from, int to, double kgPerS, double leftKg, double tempC)
{
    public int From { get; } = from;

    public int To { get; } = to;

    public double KgPerS { get; } = kgPerS;

    public double TempC { get; } = tempC;

    public double LeftKg { get; set; } = leftKg;
}
