using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

public enum RemedyKind
{
    /// <summary>Go on as it is.</summary>
    LeaveIt,
    HeatMash,
    AddHotWater,
    AddColdWater,
    BoilLonger,
    BoilShorter,
    Dilute,
    AddExtract,
}

/// <summary>A computed way back to plan, with its cost and what it gives.</summary>
/// <param name="Amount">Minutes, litres or kg, by kind.</param>
/// <param name="Minutes">Added to the day; negative when it shortens it.</param>
/// <param name="Insert">Steps put on the run sheet before <paramref name="BeforeStepId"/>.</param>
/// <param name="Replace">Steps that take the place of those with the same id.</param>
/// <param name="Gives">The figures of the outlook that it changes: before is leaving it, after is taking it.</param>
public sealed record Remedy(
    RemedyKind Kind,
    string Vessel,
    double Amount,
    double Minutes,
    ImmutableArray<StepSpec> Insert,
    string BeforeStepId,
    ImmutableArray<StepSpec> Replace,
    ImmutableArray<Shift> Gives);
