namespace BrewDeck.Simulator.Nature;

/// <summary>Heat capacities of the rehearsal's plant: constant, so that its heat ledger closes without iteration.</summary>
public static class Heats
{
    /// <summary>Water, J/(kg·K): mean of 10 to 100 °C, within 0.6 % in that range.</summary>
    public const double Water = 4_190;

    /// <summary>Dissolved extract, J/(kg·K): what the usual wort figures (3.9 kJ/(kg·K) at 12 %) leave for it.</summary>
    public const double Extract = 1_900;

    /// <summary>Dry grain, J/(kg·K): 0.38 of water's, the handbook figure for dry malt.</summary>
    public const double Grain = 1_590;

    /// <summary>
    /// Heat of wetting grain, J per kg as weighed: exponential through the handbook temperature rises (3 K dry, 1.5 K at 4 %,
    /// 1 K at 8 % moisture in a mash of 2.5 kg/kg).
    /// </summary>
    public static double SlakingJPerKg(double moistureFraction) => 36_000 * Math.Exp(-moistureFraction / 0.07);
}
