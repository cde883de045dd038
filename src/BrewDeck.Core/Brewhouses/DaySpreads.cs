namespace BrewDeck.Core.Brewhouses;

/// <summary>
/// How far one day on this brewhouse lies from its profile, one standard deviation each: what its own batches have shown. Null: nobody
/// knows yet, and the spread of any brewhouse counts (<see cref="Running.Ensemble.UsualSpreads"/>).
/// </summary>
public sealed record DaySpreads
{
    /// <summary>Of the extract that the mash dissolves, as a share of the laboratory's.</summary>
    public double? ConversionYield { get; init; }

    /// <summary>Of the wort that the grain keeps, as a share of it.</summary>
    public double? Absorption { get; init; }

    /// <summary>Of the washing stages, as a share of them.</summary>
    public double? SpargeStages { get; init; }

    /// <summary>Of the run-off's flow, as a share of it.</summary>
    public double? Runoff { get; init; }

    /// <summary>Of the evaporation, as a share of it.</summary>
    public double? Evaporation { get; init; }

    /// <summary>Of the chiller's heat transfer, as a share of it.</summary>
    public double? ChillerTransfer { get; init; }
}
