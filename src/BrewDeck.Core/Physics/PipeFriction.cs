namespace BrewDeck.Core.Physics;

/// <summary>
/// Darcy friction factors of round pipes and hoses. Reynolds number and roughness over inside diameter, both plain
/// numbers.
/// </summary>
public static class PipeFriction
{
    /// <summary>Roughness of clean commercial steel pipe in m (Crane TP-410: 0.0018 in).</summary>
    public const double CommercialSteelRoughnessM = 0.0018 * 0.0254;

    /// <summary>Hagen-Poiseuille, 64/Re; Re below about 2,300.</summary>
    public static double Laminar(double reynolds) => 64.0 / reynolds;

    /// <summary>Colebrook 1939 by Newton's method on 1/√f; Re above 4,000, roughness 0..0.05.</summary>
    public static double Colebrook(double reynolds, double relativeRoughness)
    {
        var x = 8.0;
        for (var i = 0; i < 30; i++)
        {
            var inside = relativeRoughness / 3.7 + 2.51 * x / reynolds;
            var slope = 1.0 + 2.0 * 2.51 / reynolds / (inside * Math.Log(10.0));
            var step = (x + 2.0 * Math.Log10(inside)) / slope;
            x -= step;
            if (Math.Abs(step) < 1e-14 * x) break;
        }

        return 1.0 / (x * x);
    }

    /// <summary>
    /// Churchill 1977: one equation for laminar, transitional and turbulent flow; no jump, so good in solvers.
    /// </summary>
    public static double Churchill(double reynolds, double relativeRoughness)
    {
        // the powers overflow long before the flow stops, and here the other terms are below 1e-40 of the laminar one
        if (reynolds < 100.0) return Laminar(reynolds);
        var a = Math.Pow(2.457 * Math.Log(1.0 / (Math.Pow(7.0 / reynolds, 0.9) + 0.27 * relativeRoughness)), 16.0);
        var b = Math.Pow(37530.0 / reynolds, 16.0);
        return 8.0 * Math.Pow(Math.Pow(8.0 / reynolds, 12.0) + Math.Pow(a + b, -1.5), 1.0 / 12.0);
    }

    /// <summary>Limit at high Reynolds number (von Kármán): 0.25/log10(ε/3.7)².</summary>
    public static double FullyRough(double relativeRoughness)
    {
        var log = Math.Log10(relativeRoughness / 3.7);
        return 0.25 / (log * log);
    }
}
