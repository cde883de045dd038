namespace BrewDeck.Core.Running.Ensemble;

/// <summary>A middle and its 80 % band, against what the mean member gives.</summary>
/// <param name="Later">Shift of all members that is in the three.</param>
internal sealed record Band(double P10, double P50, double P90, double Later = 0)
{
    /// <summary>Of all members.</summary>
    public static Band Of(Belief belief, Row row)
    {
        Span<float> values = stackalloc float[Members.Count];
        belief.Away(row, values);
        const int last = Members.Count - 1;
        Span<float> found = stackalloc float[3];
        Ranked.At(values, [last / 10, last / 2, last * 9 / 10], found);
        return new(found[0], found[1], found[2]);
    }

    public Band Shifted(double later) => new(P10 + later, P50 + later, P90 + later, later);

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
        Band Of(DayFigure figure) => belief.Band(figure.Row).Shifted(begun < 0 ? 0 : figure.PacesFrom(begun));
        return new()
        {
            PreBoilL = belief.Band(figures.PreBoilL.Row),
            PreBoilGravitySg = belief.Band(figures.PreBoilGravitySg.Row),
            PostBoilL = Of(figures.PostBoilL),
            FermenterL = Of(figures.FermenterL),
            OriginalGravitySg = Of(figures.OriginalGravitySg),
            BitternessIbu = Of(figures.BitternessIbu),
            ColourEbc = Of(figures.ColourEbc),
            PitchC = Of(figures.PitchC),
            FinishMs = begun < 0 ? new(0, 0, 0) : belief.Band(figures.LeftMs(begun).Row).Shifted(1000 * response.PacedFrom(begun).LateS),
        };
    }
}
