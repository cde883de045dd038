using static BrewDeck.Core.Physics.Iapws97Tables;

namespace BrewDeck.Core.Physics;

/// <summary>
/// IAPWS-IF97, Revised Release on the Industrial Formulation 1997 (R7-97(2012)): regions 1 (compressed liquid), 2
/// (steam, for the saturation line) and 4 (saturation). SI units, kelvin and pascals. <see cref="Water"/> has the fast
/// forms for hot loops and says how far they differ from this.
/// </summary>
public static class Iapws97
{
    private const double GasConstantJPerKgK = 461.526;
    private const double Region1Pascals = 16.53e6;
    private const double Region1Kelvin = 1386.0;
    private const double Region2Pascals = 1e6;
    private const double Region2Kelvin = 540.0;

    /// <summary>Vapour pressure in Pa, equation 30; 273.15..647.096 K.</summary>
    public static double SaturationPressurePa(double kelvin)
    {
        var theta = kelvin + N9 / (kelvin - N10);
        var a = theta * theta + N1 * theta + N2;
        var b = N3 * theta * theta + N4 * theta + N5;
        var c = N6 * theta * theta + N7 * theta + N8;
        var root = 2.0 * c / (-b + Math.Sqrt(b * b - 4.0 * a * c));
        return 1e6 * root * root * root * root;
    }

    /// <summary>Saturation temperature in K, equation 31; 611.213 Pa to 22.064 MPa.</summary>
    public static double SaturationTempK(double pascals)
    {
        var beta = Math.Sqrt(Math.Sqrt(pascals / 1e6));
        var e = beta * beta + N3 * beta + N6;
        var f = N1 * beta * beta + N4 * beta + N7;
        var g = N2 * beta * beta + N5 * beta + N8;
        var d = 2.0 * g / (-f - Math.Sqrt(f * f - 4.0 * e * g));
        return (N10 + d - Math.Sqrt((N10 + d) * (N10 + d) - 4.0 * (N9 + N10 * d))) / 2.0;
    }

    /// <summary>Specific volume of compressed liquid in m³/kg, region 1; 273.15..623.15 K, to 100 MPa.</summary>
    public static double LiquidVolumeM3PerKg(double kelvin, double pascals)
    {
        var pi = 7.1 - pascals / Region1Pascals;
        var tau = Region1Kelvin / kelvin - 1.222;
        var slope = 0.0;
        foreach (var (i, j, n) in Region1)
            if (i > 0) slope -= n * i * Math.Pow(pi, i - 1) * Math.Pow(tau, j);
        return GasConstantJPerKgK * kelvin / Region1Pascals * slope;
    }

    /// <summary>Specific enthalpy of compressed liquid in J/kg, region 1; 273.15..623.15 K, to 100 MPa.</summary>
    public static double LiquidEnthalpyJPerKg(double kelvin, double pascals)
    {
        var pi = 7.1 - pascals / Region1Pascals;
        var tau = Region1Kelvin / kelvin - 1.222;
        var slope = 0.0;
        foreach (var (i, j, n) in Region1)
            if (j != 0) slope += n * Math.Pow(pi, i) * j * Math.Pow(tau, j - 1);
        return GasConstantJPerKgK * Region1Kelvin * slope;
    }

    /// <summary>
    /// Isobaric specific heat of compressed liquid in J/(kg K), region 1; 273.15..623.15 K, to 100 MPa.
    /// </summary>
    public static double LiquidSpecificHeatJPerKgK(double kelvin, double pascals)
    {
        var pi = 7.1 - pascals / Region1Pascals;
        var ratio = Region1Kelvin / kelvin;
        var tau = ratio - 1.222;
        var curve = 0.0;
        foreach (var (i, j, n) in Region1)
            if (j is not (0 or 1)) curve += n * Math.Pow(pi, i) * j * (j - 1) * Math.Pow(tau, j - 2);
        return -GasConstantJPerKgK * ratio * ratio * curve;
    }

    /// <summary>
    /// Specific enthalpy of steam in J/kg, region 2; here for 273.15..623.15 K at or below saturation.
    /// </summary>
    public static double SteamEnthalpyJPerKg(double kelvin, double pascals)
    {
        var pi = pascals / Region2Pascals;
        var tau = Region2Kelvin / kelvin;
        var slope = 0.0;
        foreach (var (_, j, n) in Region2Ideal)
            if (j != 0) slope += n * j * Math.Pow(tau, j - 1);
        foreach (var (i, j, n) in Region2Residual)
            if (j != 0) slope += n * Math.Pow(pi, i) * j * Math.Pow(tau - 0.5, j - 1);
        return GasConstantJPerKgK * Region2Kelvin * slope;
    }

    /// <summary>Latent heat in J/kg on the saturation line: steam less liquid enthalpy; 273.15..623.15 K.</summary>
    public static double LatentHeatJPerKg(double kelvin)
    {
        var pascals = SaturationPressurePa(kelvin);
        return SteamEnthalpyJPerKg(kelvin, pascals) - LiquidEnthalpyJPerKg(kelvin, pascals);
    }

    // table 34
    private const double N1 = 0.11670521452767e4;
    private const double N2 = -0.72421316703206e6;
    private const double N3 = -0.17073846940092e2;
    private const double N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7;
    private const double N6 = 0.14915108613530e2;
    private const double N7 = -0.48232657361591e4;
    private const double N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849;
    private const double N10 = 0.65017534844798e3;
}
