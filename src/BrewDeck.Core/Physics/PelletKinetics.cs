namespace BrewDeck.Core.Physics;

/// <summary>
/// The same kinetics refitted to pellets in wort, with losses: Novotny 2018, Hops: Revisiting the IBU, Zymurgy
/// March/April 2018. Rates are faster than in buffer; trub takes 2.8 % per °P and yeast and the rest 23 %.
/// </summary>
public static class PelletKinetics
{
    /// <summary>Share of the iso-alpha acids that trub takes for each °P.</summary>
    public const double TrubLossPerPlato = 0.028;

    /// <summary>Share that yeast and the rest take.</summary>
    public const double OtherLossFraction = 0.23;

    /// <summary>What cones give relative to pellets.</summary>
    public const double ConeFactor = 0.909;

    private const double K1At100PerMin = 0.02085;
    private const double K2At100PerMin = 0.00952;

    /// <summary>Rate of isomerisation, 1/min; activation as in <see cref="Isomerisation"/>.</summary>
    public static double K1PerMin(double celsius) => K1At100PerMin * Arrhenius(11858.0, celsius);

    /// <summary>Rate of degradation, 1/min; activation as in <see cref="Isomerisation"/>.</summary>
    public static double K2PerMin(double celsius) => K2At100PerMin * Arrhenius(12994.0, celsius);

    /// <summary>Share of the kettle's iso-alpha acids that reaches the beer; °P 0..30.</summary>
    public static double SurvivingFraction(double plato) =>
        (1.0 - OtherLossFraction) * Math.Max(0.0, 1.0 - TrubLossPerPlato * plato);

    /// <summary>IBU of pellets kept at one temperature: g, alpha fraction, minutes, °C, L of cold wort, °P.</summary>
    public static double Ibu(
        double massG, double alphaFraction, double minutes, double celsius, double coldWortL, double plato)
    {
        var alphaMgPerL = massG * alphaFraction * 1000.0 / coldWortL;
        var (_, iso) = Isomerisation.After(alphaMgPerL, 0.0, K1PerMin(celsius), K2PerMin(celsius), minutes);
        return iso * SurvivingFraction(plato);
    }

    private static double Arrhenius(double kelvin, double celsius) =>
        Math.Exp(-kelvin * (1.0 / Temperature.Kelvin(celsius) - 1.0 / Temperature.Kelvin(100.0)));
}
