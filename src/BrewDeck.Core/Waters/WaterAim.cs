namespace BrewDeck.Core.Waters;

/// <summary>One thing wanted of a water: nothing is missed within the band, the distance to it counts outside.</summary>
/// <param name="Of">Linear in the ions.</param>
/// <param name="Wanted">Either end may be infinite, not both.</param>
internal sealed record WaterAim(Func<WaterIons, double> Of, Band Wanted, double Weight = 1)
{
    /// <summary>Leaving the safe range counts as much as missing by this much more.</summary>
    private const double SafetyWeight = 3;

    /// <summary>What is not stated should stay as it comes, but gives way to what is.</summary>
    private const double RestWeight = 0.03;

    public double Miss(WaterIons ions)
    {
        var value = Of(ions);
        return Weight * Math.Max(0, Math.Max(Wanted.Least - value, value - Wanted.Most));
    }

    /// <param name="comes">The water before any salt.</param>
    /// <param name="residual">Wanted of the residual alkalinity; null: nothing.</param>
    public static List<WaterAim> Strike(WaterTarget target, WaterIons comes, Band? residual)
    {
        var aims = Common(target, comes);
        // a mash pH may ask for more acid than the water has carbonates: then only their upper end is held to
        var bicarbonate = target.MashPh is null ? target.BicarbonateMgPerL : AtMost(target.BicarbonateMgPerL);
        Add(aims, Bicarbonate, bicarbonate);
        Add(aims, i => i.ResidualAlkalinityAsCaCO3, residual);
        return aims;
    }

    /// <summary>Sparge liquor is never made more alkaline: that leaches tannin.</summary>
    /// <param name="acid">Takes part: without it salts would be driven up against the carbonates.</param>
    public static List<WaterAim> Sparge(WaterTarget target, WaterIons comes, bool acid)
    {
        var aims = Common(target, comes);
        if (!acid)
            return aims;
        Add(aims, Bicarbonate, AtMost(target.BicarbonateMgPerL));
        Add(aims, i => i.ResidualAlkalinityAsCaCO3, AtMost(target.ResidualAlkalinityAsCaCO3));
        return aims;
    }

    private static List<WaterAim> Common(WaterTarget target, WaterIons comes)
    {
        var aims = new List<WaterAim>();
        void Ion(Func<WaterIons, double> of, Band? wanted, double safe)
        {
            aims.Add(wanted is { } band ? new(of, band) : new(of, new Band(of(comes), of(comes)), RestWeight));
            aims.Add(new(of, new Band(double.NegativeInfinity, Math.Max(safe, wanted?.Most ?? 0)), SafetyWeight));
        }
        Ion(i => i.CalciumMgPerL, target.CalciumMgPerL, SafeWater.CalciumMgPerL);
        Ion(i => i.MagnesiumMgPerL, target.MagnesiumMgPerL, SafeWater.MagnesiumMgPerL);
        Ion(i => i.SodiumMgPerL, target.SodiumMgPerL, SafeWater.SodiumMgPerL);
        Ion(i => i.ChlorideMgPerL, target.ChlorideMgPerL, SafeWater.ChlorideMgPerL);
        Ion(i => i.SulphateMgPerL, target.SulphateMgPerL, SafeWater.SulphateMgPerL);
        if (target.SulphateToChloride is { } ratio)
            Add(aims, i => (i.SulphateMgPerL - ratio * i.ChlorideMgPerL) / Math.Sqrt(1 + ratio * ratio), new Band(0, 0));
        return aims;
    }

    private static double Bicarbonate(WaterIons ions) => ions.AlkalinityAsCaCO3 * WaterIons.BicarbonatePerAlkalinity;

    private static Band? AtMost(Band? band) => band is { } b ? new Band(double.NegativeInfinity, b.Most) : null;

    private static void Add(List<WaterAim> aims, Func<WaterIons, double> of, Band? wanted)
    {
        if (wanted is { } band)
            aims.Add(new(of, band));
    }
}
