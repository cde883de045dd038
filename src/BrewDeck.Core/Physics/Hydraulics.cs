namespace BrewDeck.Core.Physics;

/// <summary>
/// Heads, hoses, pumps and drains. SI; flow in m³/s, density in kg/m³, head in m of the liquid pumped.
/// </summary>
public static class Hydraulics
{
    /// <summary>Standard gravity in m/s².</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Pressure in Pa under a depth of liquid.</summary>
    public static double HydrostaticPa(double depthM, double kgPerM3) => kgPerM3 * GravityMPerS2 * depthM;

    /// <summary>
    /// Load in N on a round false bottom when the bed above is blocked and the whole head pulls below it: it can buckle
    /// a plate and set a mash for good.
    /// </summary>
    public static double FalseBottomLoadN(double headM, double kgPerM3, double diameterM) =>
        HydrostaticPa(headM, kgPerM3) * Cylinder.AreaM2(diameterM);

    /// <summary>Mean speed in m/s in a hose.</summary>
    public static double VelocityMPerS(double flowM3PerS, double insideDiameterM) =>
        flowM3PerS / Cylinder.AreaM2(insideDiameterM);

    /// <summary>Reynolds number in a hose; viscosity in Pa·s.</summary>
    public static double Reynolds(double kgPerM3, double metresPerS, double insideDiameterM, double viscosityPaS) =>
        kgPerM3 * metresPerS * insideDiameterM / viscosityPaS;

    /// <summary>
    /// Head in m lost in a hose and its fittings: Darcy-Weisbach with <see cref="PipeFriction.Churchill"/> and the sum
    /// of loss coefficients. 0 without flow.
    /// </summary>
    public static double HoseLossM(
        double flowM3PerS,
        double insideDiameterM,
        double lengthM,
        double roughnessM,
        double lossCoefficients,
        double kgPerM3,
        double viscosityPaS)
    {
        if (flowM3PerS == 0.0) return 0.0;
        var velocity = VelocityMPerS(flowM3PerS, insideDiameterM);
        var friction = PipeFriction.Churchill(
            Reynolds(kgPerM3, velocity, insideDiameterM, viscosityPaS), roughnessM / insideDiameterM);
        return (friction * lengthM / insideDiameterM + lossCoefficients) * velocity * velocity / (2.0 * GravityMPerS2);
    }

    /// <summary>Hydraulic power in W of a flow lifted through a head.</summary>
    public static double PumpWatts(double flowM3PerS, double headM, double kgPerM3) =>
        HydrostaticPa(headM, kgPerM3) * flowM3PerS;

    /// <summary>Speed in m/s of a jet under a depth (Torricelli).</summary>
    public static double JetMPerS(double depthM) => Math.Sqrt(2.0 * GravityMPerS2 * depthM);

    /// <summary>Seconds to empty an upright tank through an orifice in its floor (Torricelli).</summary>
    public static double DrainTimeS(
        double tankDiameterM, double orificeDiameterM, double depthM, double dischargeCoefficient) =>
        Cylinder.AreaM2(tankDiameterM) / (dischargeCoefficient * Cylinder.AreaM2(orificeDiameterM))
        * Math.Sqrt(2.0 * depthM / GravityMPerS2);

    /// <summary>
    /// Net positive suction head available in m: pressure on the surface less vapour pressure as head of water, plus
    /// the level above the pump, less suction losses. Near zero the pump cavitates: near-boiling liquor will not be
    /// sucked up.
    /// </summary>
    public static double SuctionHeadM(double surfacePascals, double celsius, double levelAboveM, double lossesM) =>
        (surfacePascals - Water.SaturationPressurePa(celsius)) / HydrostaticPa(1.0, Water.DensityKgPerM3(celsius))
        + levelAboveM - lossesM;
}
