namespace BrewDeck.Core.Running.Ensemble;

/// <summary>A middle and its 80 % band, against what the mean member gives.</summary>
/// <param name="Later">Shift of all members that is in the three.</param>
internal readonly record struct Band(double P10, double P50, double P90, double Later = 0)
{
    public Figure Around(double mean) => new(mean + P50, mean + P10, mean + P90);
}

/// <summary>The bands of the outlook.</summary>
internal sealed record Bands
{
    public required Band PreBoilL { get; init; }

    public required Band PreBoilGravitySg { get; init; }

    public required Band PostBoilL { get; init; }

    public required Band FermenterL { get; init; }

    public required Band OriginalGravitySg { get; init; }

    public required Band BitternessIbu { get; init; }

    public required Band ColourEbc { get; init; }

    public required Band PitchC { get; init; }

    public required Band FinishMs { get; init; }

    /// <param name="stepId">The step last begun; empty: the day is over.</param>
    public static Bands Of(Belief belief, string stepId)
    {
        var (figures, response) = (belief.Response.Figures, belief.Response);
        var begun = response.IndexOf(stepId);
        Band Of(DayFigure figure) => Quantiles(belief, figure.Row, begun < 0 ? 0 : figure.PacesFrom(begun));
        return new()
        {
            PreBoilL = Quantiles(belief, figures.PreBoilL.Row, 0),
            PreBoilGravitySg = Quantiles(belief, figures.PreBoilGravitySg.Row, 0),
            PostBoilL = Of(figures.PostBoilL),
            FermenterL = Of(figures.FermenterL),
            OriginalGravitySg = Of(figures.OriginalGravitySg),
            BitternessIbu = Of(figures.BitternessIbu),
            ColourEbc = Of(figures.ColourEbc),
            PitchC = Of(figures.PitchC),
            FinishMs = begun < 0 ? default : Quantiles(belief, figures.LeftMs(begun).Row, 1000 * response.PacedFrom(begun).LateS),
        };
    }

    private static Band Quantiles(Belief belief, Row row, double later)
    {
        Span<float> values = stackalloc float[Members.Count];
        belief.Away(row, values);
        const int last = Members.Count - 1;
        Span<float> found = stackalloc float[3];
        Ranked.At(values, [last / 10, last / 2, last * 9 / 10], found);
        double p10 = found[0], p50 = found[1], p90 = found[2];
        return new(p10 + later, p50 + later, p90 + later, later);
    }
}
