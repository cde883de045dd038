using System.Collections.Immutable;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

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

    /// <summary>In the order in which they were packaged: bottles and kegs of one batch are lots of it.</summary>
    public ImmutableArray<Packaged> Lots { get; init; } = [];

    /// <summary>When the brewer has said that what is left is lees; null: not said.</summary>
    public EndOfPackaging? RestIsLees { get; init; }

    public ImmutableArray<Tasting> Tastings { get; init; } = [];

    public double OriginalSg => MeasuredOriginalSg ?? PlannedOriginalSg;

    /// <summary>What went into the fermenter, L.</summary>
    public double PitchedL => MeasuredL ?? PlannedL;

    public double PackagedL => Lots.Sum(l => l.How.VolumeL);

    /// <summary>What is not packaged, beer and lees, L.</summary>
    public double LeftL => Math.Max(0, PitchedL - PackagedL);

    /// <summary>So much of a batch stays behind as lees, or lies within what two marks on two vessels differ by: common practice, no source.</summary>
    public const double LeesFraction = 0.1;

    /// <summary>As good as everything is packaged, or the brewer says that the rest is lees. A lot from before there were several was all of it.</summary>
    public bool IsPackaged => RestIsLees is not null || Lots is [.., { LeftL: null }] || (!Lots.IsEmpty && LeftL <= LeesFraction * PitchedL);
}

public sealed record TakenFermenterReading(int Seq, long AtMs, FermenterReading Reading);

public sealed record MadeAddition(int Seq, long AtMs, DatedAddition Addition);

public sealed record EndOfPackaging(int Seq, long AtMs);

/// <param name="LeftL">See <see cref="BeerPackaged.LeftL"/>.</param>
public sealed record Packaged(int Seq, long AtMs, Packaging How, double? LeftL);

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
