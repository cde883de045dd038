using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Waters;

/// <summary>What is dissolved in a water, mg/L; the carbonates as alkalinity, which salts and acids change by their equivalents.</summary>
/// <param name="AlkalinityAsCaCO3">mg/L as CaCO3; below 0 where more acid went in than the water could bind.</param>
public readonly record struct WaterIons(
    double CalciumMgPerL,
    double MagnesiumMgPerL,
    double SodiumMgPerL,
    double ChlorideMgPerL,
    double SulphateMgPerL,
    double AlkalinityAsCaCO3)
{
    /// <summary>mg/L of bicarbonate in one mg/L of alkalinity as CaCO3; pH below 8.5.</summary>
    public static readonly double BicarbonatePerAlkalinity =
        Ions.EquivalentMass(Ion.Bicarbonate) / WaterChemistry.CaCO3MgPerMEq;

    /// <summary>mg/L; never below 0.</summary>
    public double BicarbonateMgPerL => Math.Max(0, AlkalinityAsCaCO3 * BicarbonatePerAlkalinity);

    /// <summary>Kolbach's residual alkalinity, mg/L as CaCO3.</summary>
    public double ResidualAlkalinityAsCaCO3 =>
        WaterChemistry.ResidualAlkalinityFromIons(AlkalinityAsCaCO3, CalciumMgPerL, MagnesiumMgPerL);

    /// <summary>By mass; null without chloride.</summary>
    public double? SulphateToChloride => ChlorideMgPerL > 0 ? SulphateMgPerL / ChlorideMgPerL : null;

    public double CationsMEqPerL =>
        WaterChemistry.MEqPerL(Ion.Calcium, CalciumMgPerL) + WaterChemistry.MEqPerL(Ion.Magnesium, MagnesiumMgPerL)
        + WaterChemistry.MEqPerL(Ion.Sodium, SodiumMgPerL);

    public double AnionsMEqPerL =>
        WaterChemistry.MEqPerL(Ion.Chloride, ChlorideMgPerL) + WaterChemistry.MEqPerL(Ion.Sulphate, SulphateMgPerL)
        + AlkalinityAsCaCO3 / WaterChemistry.CaCO3MgPerMEq;

    /// <summary>What a salt brings. Carbonate and hydroxide count as the alkalinity of their equivalents.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A salt of potassium, which is not kept account of.</exception>
    public static WaterIons Of(BrewingSalt salt, double gramsPerL)
    {
        if (salt == BrewingSalt.PotassiumChloride)
            throw new ArgumentOutOfRangeException(nameof(salt), salt, "potassium is not kept account of");
        double Rise(Ion ion) => BrewingSalts.IonMgPerL(salt, ion, gramsPerL, 1);
        double Alkaline(Ion ion) => WaterChemistry.CaCO3MgPerMEq * WaterChemistry.MEqPerL(ion, Rise(ion));
        return new(
            Rise(Ion.Calcium), Rise(Ion.Magnesium), Rise(Ion.Sodium), Rise(Ion.Chloride), Rise(Ion.Sulphate),
            Alkaline(Ion.Bicarbonate) + Alkaline(Ion.Carbonate) + Alkaline(Ion.Hydroxide));
    }

    /// <summary>What acid takes away.</summary>
    public static WaterIons OfAcid(double mEqPerL) => new(0, 0, 0, 0, 0, -mEqPerL * WaterChemistry.CaCO3MgPerMEq);

    public static WaterIons operator +(WaterIons a, WaterIons b) => new(
        a.CalciumMgPerL + b.CalciumMgPerL, a.MagnesiumMgPerL + b.MagnesiumMgPerL, a.SodiumMgPerL + b.SodiumMgPerL,
        a.ChlorideMgPerL + b.ChlorideMgPerL, a.SulphateMgPerL + b.SulphateMgPerL, a.AlkalinityAsCaCO3 + b.AlkalinityAsCaCO3);

    public static WaterIons operator *(double factor, WaterIons a) => new(
        factor * a.CalciumMgPerL, factor * a.MagnesiumMgPerL, factor * a.SodiumMgPerL,
        factor * a.ChlorideMgPerL, factor * a.SulphateMgPerL, factor * a.AlkalinityAsCaCO3);
}
