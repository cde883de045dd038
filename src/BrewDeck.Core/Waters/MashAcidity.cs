using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Waters;

/// <summary>
/// The pH of a mash at room temperature: malts as buffers (<see cref="MaltBuffer"/>) against Kolbach's residual alkalinity (1953) of
/// the water. Straight lines throughout: 4.8 to 6.2.
/// </summary>
public static class MashAcidity
{
    /// <summary>A prediction is good for this much either way (common practice): measure before correcting.</summary>
    public const double ErrorBandPh = 0.15;

    /// <param name="grist">Only what goes into the mash counts; more than 0 kg of it.</param>
    /// <param name="mashL">Water in the mash.</param>
    public static double Ph(IEnumerable<GristLine> grist, double mashL, WaterIons water)
    {
        var (distilledPh, mEqPerPh) = Mash(grist);
        return distilledPh + mashL * water.ResidualAlkalinityAsCaCO3 / WaterChemistry.CaCO3MgPerMEq / mEqPerPh;
    }

    /// <summary>Residual alkalinity that gives a pH, mg/L as CaCO3: the inverse of <see cref="Ph"/>.</summary>
    public static double ResidualAlkalinityFor(IEnumerable<GristLine> grist, double mashL, double ph)
    {
        var (distilledPh, mEqPerPh) = Mash(grist);
        return WaterChemistry.CaCO3MgPerMEq * mEqPerPh * (ph - distilledPh) / mashL;
    }

    private static (double DistilledPh, double MEqPerPh) Mash(IEnumerable<GristLine> grist)
    {
        double mEq = 0, mEqPerPh = 0;
        foreach (var line in grist.Where(g => g.Use == GristUse.Mash))
        {
            var malt = MaltBuffer.Of(line);
            mEq += line.MassKg * (malt.MEqPerKgPh * malt.DistilledPh - malt.AcidMEqPerKg);
            mEqPerPh += line.MassKg * malt.MEqPerKgPh;
        }
        return (mEq / mEqPerPh, mEqPerPh);
    }
}
