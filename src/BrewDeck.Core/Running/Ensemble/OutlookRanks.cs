namespace BrewDeck.Core.Running.Ensemble;

/// <summary>A figure of the outlook whose bands are checked against what came out.</summary>
public enum OutlookFigure
{
    OriginalGravity,
    FermenterVolume,
    Bitterness,
    Finish,
}

/// <summary>Where a truth lies among the members: what simulation-based calibration counts (Talts et al. 2018).</summary>
public static class OutlookRanks
{
    /// <summary>Share of the members below a value, 0..1.</summary>
    /// <param name="outlook">As it stood at <paramref name="state"/>.</param>
    /// <param name="truth">In the canonical unit of the figure; finish in Unix ms.</param>
    public static double Of(RunState state, Outlook outlook, OutlookFigure figure, double truth)
    {
        var belief = state.Live!.Belief;
        var begun = Forecasts.LastBegun(state);
        var (row, middle, band) = Parts(belief, outlook, figure, begun);
        var values = new float[Members.Count];
        belief.Away(row, values);
        var offset = truth - (middle.P50 - band.P50) - band.Later;
        return values.Count(v => v < offset) / (double)values.Length;
    }

    private static (Row Row, Figure Middle, Band Band) Parts(Belief belief, Outlook outlook, OutlookFigure figure, string begun)
    {
        var figures = belief.Response.Figures;
        var bands = belief.Bands(begun);
        return figure switch
        {
            OutlookFigure.OriginalGravity => (figures.OriginalGravitySg.Row, outlook.OriginalGravitySg, bands.OriginalGravitySg),
            OutlookFigure.FermenterVolume => (figures.FermenterL.Row, outlook.FermenterL, bands.FermenterL),
            OutlookFigure.Bitterness => (figures.BitternessIbu.Row, outlook.BitternessIbu, bands.BitternessIbu),
            _ => (figures.LeftMs(Math.Max(0, belief.Response.IndexOf(begun))).Row, outlook.FinishMs, bands.FinishMs),
        };
    }
}
