namespace BrewDeck.Simulator.Plant;

/// <summary>
/// What of the grain in the tun can still dissolve, and the enzymes that do it. Two fractions: sugars and fines wash out within minutes;
/// starch has to gelatinise and be cut by enzymes that die with heat.
/// </summary>
internal sealed class Grist
{
    /// <summary>Share of the extract that is soluble as it comes: about a quarter of malt, common practice, no source.</summary>
    private const double SolubleShare = 0.25;

    private const double GasJPerMolK = 8.314;

    private double _solubleKg;

    private double _starchKg;

    /// <summary>Active enzymes against fresh malt, 0..1.</summary>
    public double Activity { get; private set; } = 1;

    /// <summary>As weighed, moisture included, kg.</summary>
    public double WeighedKg { get; private set; }

    public double UndissolvedKg => _solubleKg + _starchKg;

    public void Add(double weighedKg, double dissolvableKg)
    {
        WeighedKg += weighedKg;
        _solubleKg += SolubleShare * dissolvableKg;
        _starchKg += (1 - SolubleShare) * dissolvableKg;
    }

    /// <summary>A share of it goes to be boiled, its enzymes with it.</summary>
    public Grist Take(double share)
    {
        var taken = new Grist { _solubleKg = share * _solubleKg, _starchKg = share * _starchKg, WeighedKg = share * WeighedKg, Activity = Activity };
        (_solubleKg, _starchKg, WeighedKg) = (_solubleKg - taken._solubleKg, _starchKg - taken._starchKg, WeighedKg - taken.WeighedKg);
        return taken;
    }

    /// <summary>What was taken comes back; its enzymes are dead or alive in the mean.</summary>
    public void Rejoin(Grist taken)
    {
        Activity = (Activity * WeighedKg + taken.Activity * taken.WeighedKg) / Math.Max(1e-9, WeighedKg + taken.WeighedKg);
        (_solubleKg, _starchKg, WeighedKg) = (_solubleKg + taken._solubleKg, _starchKg + taken._starchKg, WeighedKg + taken.WeighedKg);
    }

    /// <summary>The grain is out of the wort.</summary>
    public void Leave() => (_solubleKg, _starchKg, WeighedKg) = (0, 0, 0);

    /// <summary>Time passes at a temperature; returns kg that dissolve.</summary>
    public double Pass(double seconds, double celsius, double speed)
    {
        var minutes = seconds / 60;
        var before = UndissolvedKg;
        _solubleKg *= Math.Exp(-0.25 * speed * minutes);
        _starchKg *= Math.Exp(-StarchPerMin(celsius) * Activity * speed * minutes);
        Activity *= Math.Exp(-DecayPerMin(celsius) * minutes);
        return before - UndissolvedKg;
    }

    /// <summary>
    /// Share of the starch that fresh enzymes convert in a minute: 1/7 at 66 °C with 70 kJ/mol, only where it has gelatinised (around
    /// 57 °C, 2 K wide). Magnitudes that finish a mash at 66 °C in 30 to 60 minutes: common practice, no source.
    /// </summary>
    private static double StarchPerMin(double celsius) =>
        Arrhenius(celsius, 66, 70_000) / 7 / (1 + Math.Exp((57 - celsius) / 2));

    /// <summary>Half lives of roughly an hour at 66 °C and five minutes at 78 °C (about 220 kJ/mol): common practice, no source.</summary>
    private static double DecayPerMin(double celsius) => 0.012 * Arrhenius(celsius, 66, 220_000);

    private static double Arrhenius(double celsius, double referenceC, double joulesPerMol) =>
        Math.Exp(joulesPerMol / GasJPerMolK * (1 / (273.15 + referenceC) - 1 / (273.15 + celsius)));
}
