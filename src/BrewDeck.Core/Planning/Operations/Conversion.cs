namespace BrewDeck.Core.Planning.Operations;

/// <summary>Extract that the mash dissolves with time.</summary>
internal static class Conversion
{
    /// <summary>
    /// Share of what is left that dissolves in a minute. Greatest around 66 °C, where a mash is done in 30 to 60 minutes; slow at
    /// protein rests, and ending as the enzymes die above 76 °C (common practice, no source).
    /// </summary>
    private static double RatePerMin(double celsius)
    {
        var away = (celsius - 66) / (celsius < 66 ? 11 : 9);
        return 0.1 * Math.Exp(-away * away);
    }

    /// <summary>
    /// Extract goes into solution at the temperature of the mash: the heat of doing so is in the heat of wetting. Dry grist dissolves
    /// nothing.
    /// </summary>
    public static VesselState After(in VesselState v, double seconds, double celsius)
    {
        if (v.WaterKg <= v.UndissolvedKg)
            return v;
        var left = v.UndissolvedKg * Math.Exp(-RatePerMin(celsius) * seconds / 60);
        var dissolved = v.UndissolvedKg - left;
        return v with
        {
            UndissolvedKg = left,
            ExtractKg = v.ExtractKg + dissolved,
            GrainDryKg = v.GrainDryKg - dissolved,
        };
    }
}
