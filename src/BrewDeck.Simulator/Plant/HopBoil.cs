namespace BrewDeck.Simulator.Plant;

/// <summary>
/// Hops in the kettle: alpha acids become iso-alpha acids and those decay, A to B to C, first order, integrated over the temperature
/// that the wort really has. Rates after Malowicki and Shellhammer 2005 (J. Agric. Food Chem. 53).
/// </summary>
internal sealed class HopBoil
{
    private readonly List<HopLot> _lots = [];

    /// <summary>Hops in the kettle as weighed, kg.</summary>
    public double MassKg { get; private set; }

    public void Add(double massKg, double alphaG)
    {
        MassKg += massKg;
        if (alphaG > 0)
            _lots.Add(new HopLot(alphaG));
    }

    public void Pass(double seconds, double celsius, double gravitySg)
    {
        if (_lots.Count == 0)
            return;
        double make = MakePerMin(celsius) * seconds / 60, lose = LosePerMin(celsius) * seconds / 60;
        foreach (var lot in _lots)
            lot.Pass(make, lose, gravitySg);
    }

    /// <summary>A share of the wort leaves the kettle, of which some arrives in the fermenter.</summary>
    public void Leave(double share, double arriving)
    {
        foreach (var lot in _lots)
            lot.Leave(share, arriving);
    }

    /// <summary>Bitterness in the fermenter, mg/L.</summary>
    public double BitternessIbu(double fermenterL)
    {
        var milligrams = 0.0;
        foreach (var lot in _lots)
            milligrams += 1000 * lot.BitterG();
        return fermenterL > 0 ? milligrams / fermenterL : 0;
    }

    /// <summary>Isomerisation of alpha acids, 1/min.</summary>
    public static double MakePerMin(double celsius) => 7.9e11 * Math.Exp(-11_858 / (273.15 + celsius));

    /// <summary>Loss of iso-alpha acids, 1/min.</summary>
    public static double LosePerMin(double celsius) => 4.1e12 * Math.Exp(-12_994 / (273.15 + celsius));
}
