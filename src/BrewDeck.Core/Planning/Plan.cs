using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

/// <summary>The run sheet of a day with what each step is expected to give.</summary>
public sealed record Plan
{
    public required Brewhouse Brewhouse { get; init; }

    /// <summary>As fitted to the brewhouse: masses for this batch.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>As written, its amounts not fitted; null in records from before it was kept.</summary>
    public Recipe? Written { get; init; }

    public required DayChoices Choices { get; init; }

    /// <summary>Plant before the first step.</summary>
    public required PlantState Start { get; init; }

    public required ImmutableArray<PlanStep> Steps { get; init; }

    public required Totals Totals { get; init; }

    public required ImmutableArray<Limit> Limits { get; init; }

    /// <summary>Null without an analysis of the water.</summary>
    public WaterTreatment? Water { get; init; }

    public PlanStep? Step(string id) => Steps.FirstOrDefault(s => s.Spec.Id == id);
}

/// <summary>A step with its place in the day. Times are seconds since the start of the day.</summary>
/// <param name="TargetC">Temperature to aim at, after what the plant's state makes of it, °C.</param>
/// <param name="VolumeL">Volume moved or reached, litres at 20 °C.</param>
/// <param name="PowerW">Electrical power while it runs, W.</param>
/// <param name="Circuit">Circuit that carries it; several with a comma between.</param>
public sealed record PlanStep(
    StepSpec Spec,
    double StartS,
    double DurationS,
    double? TargetC,
    double? VolumeL,
    double? PowerW,
    string? Circuit,
    ImmutableArray<ExpectedReading> Expected,
    PlantState After)
{
    public double EndS => StartS + DurationS;

    /// <summary>What is there of heat or cold never brings it to its temperature.</summary>
    public bool NeverGetsThere => Spec.Kind.EndsBy() == EndsBy.Temperature && DurationS >= Operations.Heating.HopelessS;

    /// <summary>Seconds for which the hands are busy.</summary>
    public double HandsS => Spec.Kind.EndsBy() == EndsBy.Act ? Spec.HandsS : Math.Min(Spec.HandsS, DurationS);
}

/// <summary>What a reading at the end of a step should show, in the canonical unit of its kind.</summary>
public sealed record ExpectedReading(Running.ReadingKind Kind, string Vessel, double Value);

/// <summary>Figures of the whole day. Volumes are litres at 20 °C.</summary>
public sealed record Totals(
    double StrikeWaterL,
    double SpargeWaterL,
    double PreBoilL,
    double PreBoilGravitySg,
    double PostBoilL,
    double FermenterL,
    double OriginalGravitySg,
    double BitternessIbu,
    double ColourSrm,
    double ColourEbc,
    double PitchC,
    double DayS,
    double HandsS);

/// <summary>A number held against what the brewhouse allows.</summary>
/// <param name="Name">Stable name, snake_case.</param>
/// <param name="Unit">Unit of both numbers as written for people.</param>
/// <param name="AtMost">True: the value may not exceed the limit. False: it may not fall below.</param>
public sealed record Limit(string Name, double Value, double Bound, string Unit, bool AtMost = true)
{
    public double Margin => AtMost ? Bound - Value : Value - Bound;

    /// <summary>Shown as a danger but no reason to refuse the plan.</summary>
    public bool Warns => Name is LimitName.FalseBottomLoad or LimitName.SuctionHead;

    public bool Ok => Margin >= -1e-9;
}

/// <summary>What a day would give, whether it can be brewed or not.</summary>
/// <param name="Recipe">Its masses fitted to the day.</param>
public sealed record DayFigures(Recipe Recipe, Totals Totals, ImmutableArray<Limit> Limits)
{
    /// <summary>What keeps it from being brewed; empty: nothing does.</summary>
    public IEnumerable<Limit> Failed => Limits.Where(l => !l.Ok && !l.Warns);
}

/// <summary>Why a plan cannot be brewed: the number that failed, and codes for what would mend it.</summary>
/// <param name="Code">The name of its limit (<see cref="LimitName"/>), or one of <see cref="RefusalCode"/>.</param>
/// <param name="Mends">What would mend it.</param>
public sealed record Refusal(string Code, double Value, double Bound, string Unit, ImmutableArray<Mend> Mends);

/// <param name="Code">One of <see cref="MendCode"/>.</param>
/// <param name="Value">How much of it, in <paramref name="Unit"/>.</param>
public sealed record Mend(string Code, double Value, string Unit);

/// <summary>A plan, or why there is none.</summary>
public abstract record PlanResult
{
    private PlanResult()
    {
    }

    public sealed record Drawn(Plan Plan) : PlanResult;

    public sealed record Refused(ImmutableArray<Refusal> Refusals) : PlanResult;
}
