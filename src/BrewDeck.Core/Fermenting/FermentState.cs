using System.Collections.Immutable;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Fermenting;

/// <summary>Everything known of a batch after pitching: a pure fold of its events, valid after any prefix of them.</summary>
public sealed record FermentState
{
    /// <summary>As fitted for this batch; null before it is opened.</summary>
    public Recipe? Recipe { get; init; }

    public double PlannedOriginalSg { get; init; }

    /// <summary>Wort in the fermenter as last measured on the brew day and thinned since, SG; null: not measured.</summary>
    public double? MeasuredOriginalSg { get; init; }

    /// <summary>Water that went into the fermenter since its gravity was measured, L.</summary>
    public double ThinnedByL { get; init; }

    /// <summary>Wort in the fermenter as last measured, litres at 20 °C, with the water that went in since; null: not measured.</summary>
    public double? MeasuredL { get; init; }

    public double PlannedL { get; init; }

    /// <summary>Remedies chosen that put water into the fermenter, litres by the id of their step.</summary>
    public ImmutableDictionary<string, double> WaterToCome { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Unix ms; null before.</summary>
    public long? PitchedMs { get; init; }

    public ImmutableArray<TakenFermenterReading> Readings { get; init; } = [];

    public ImmutableArray<MadeAddition> Additions { get; init; } = [];

    /// <summary>Dates that the brewer has set, the last word for each kind and name.</summary>
    public ImmutableArray<DueItem> Dates { get; init; } = [];

    public Packaged? Packaged { get; init; }

    public ImmutableArray<Tasting> Tastings { get; init; } = [];

    public double OriginalSg => MeasuredOriginalSg ?? PlannedOriginalSg;
}

public sealed record TakenFermenterReading(int Seq, long AtMs, FermenterReading Reading);

public sealed record MadeAddition(int Seq, long AtMs, DatedAddition Addition);

public sealed record Packaged(int Seq, long AtMs, Packaging How);

/// <param name="Rating">1 to 5; null: none given.</param>
public sealed record Tasting(int Seq, long AtMs, string Text, int? Rating);

public enum DueKind
{
    GravityCheck,
    Addition,
    Packaging,
}

/// <summary>Something to be done on a date.</summary>
/// <param name="Name">Of an addition; empty for the others.</param>
/// <param name="DueMs">Unix ms.</param>
public sealed record DueItem(DueKind Kind, string Name, long DueMs);
