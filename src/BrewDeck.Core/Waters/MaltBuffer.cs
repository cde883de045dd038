using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Waters;

/// <summary>How a malt pulls on the pH of the mash.</summary>
/// <param name="DistilledPh">Of a mash of this malt alone in distilled water, at room temperature.</param>
/// <param name="MEqPerKgPh">Acid or base that moves a kilogram by one pH.</param>
/// <param name="AcidMEqPerKg">Acid that it carries besides.</param>
/// <remarks>
/// Pilsner malt is sourced (a brewing-guild course: 5.7 to 5.8). Everything else is common practice from memory, no source: the fall
/// with colour, wheat and raw grain, crystal and roasted malts, and acidulated malt (the rule that 1 % of the grist lowers the mash by
/// 0.1). That is most of the error band.
/// </remarks>
public readonly record struct MaltBuffer(double DistilledPh, double MEqPerKgPh, double AcidMEqPerKg = 0)
{
    /// <summary>
    /// Kolbach's slope read at 3 L/kg: 3 / 0.084 = 36 mEq to a kilogram and pH; titrations of base malts are told as 30 to 50 (memory).
    /// </summary>
    private const double UsualLPerKg = 3;

    private const double PilsnerEbc = 3.5;

    private const double CrystalFromEbc = 40;

    private const double RoastedFromEbc = 500;

    private static readonly double BaseMEqPerKgPh = UsualLPerKg / WaterChemistry.WortPhChange(WaterChemistry.CaCO3MgPerMEq);

    private const double DarkMEqPerKgPh = 45;

    public static MaltBuffer Of(GristLine line) => (line.Kind ?? ByColour(line.ColourEbc)) switch
    {
        MaltKind.Wheat => new(5.95, BaseMEqPerKgPh),
        MaltKind.Crystal => new(Math.Max(4.4, 5.3 - 0.003 * line.ColourEbc), DarkMEqPerKgPh),
        MaltKind.Roasted => new(4.7, DarkMEqPerKgPh),
        MaltKind.Acidulated => new(WaterChemistry.PilsnerMaltDistilledPh, BaseMEqPerKgPh, 10 * BaseMEqPerKgPh),
        _ => new(Base(line.ColourEbc), BaseMEqPerKgPh),
    };

    private static MaltKind ByColour(double ebc) => ebc switch
    {
        >= RoastedFromEbc => MaltKind.Roasted,
        >= CrystalFromEbc => MaltKind.Crystal,
        _ => MaltKind.Base,
    };

    /// <summary>Darker kilning brings acid: 0.02 for each EBC, down to 5.3.</summary>
    private static double Base(double ebc) => Math.Clamp(
        WaterChemistry.PilsnerMaltDistilledPh - 0.02 * (ebc - PilsnerEbc), 5.3, WaterChemistry.PilsnerMaltDistilledPh);
}
