namespace BrewDeck.Core.Physics;

/// <summary>
/// The day's water on paper, all volumes in L cold, as a brewing course sums it. Plans use mass balances instead.
/// </summary>
public static class Liquor
{
    /// <summary>Strike water from the grist and the mash thickness in L/kg.</summary>
    public static double StrikeL(double grainKg, double thicknessLPerKg) => grainKg * thicknessLPerKg;

    /// <summary>
    /// All the water: what is packaged, what the grain keeps, boils off and is lost, less what comes in (starter).
    /// </summary>
    public static double TotalL(
        double packagedL,
        double grainKg,
        double absorptionLPerKg,
        double boilOffL,
        double lossesL,
        double addedL = 0.0) =>
        packagedL + grainKg * absorptionLPerKg + boilOffL + lossesL - addedL;

    /// <summary>Sparge water: what the mash does not take.</summary>
    public static double SpargeL(double totalL, double strikeL) => totalL - strikeL;
}
