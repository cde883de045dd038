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

    /// <summary>The rest of a fill that was ended too soon.</summary>
    FillUp,

    /// <summary>Strike liquor that was left in its tank.</summary>
    RunOver,

    /// <summary>Heat the liquor on before it is drawn.</summary>
    HeatLiquor,

    /// <summary>Acid into the mash.</summary>
    AddAcid,

    /// <summary>Baking soda into the mash.</summary>
    AddSoda,

    /// <summary>A stuck bed is left alone, then run off more slowly.</summary>
    RestBed,

    /// <summary>Hot liquor from under the bed lifts it.</summary>
    Underlet,

    /// <summary>The bed is cut and has to run clear again.</summary>
    RakeBed,

    /// <summary>What a dead circuit fed is plugged into another one.</summary>
    OtherCircuit,

    /// <summary>More into the kettle: more sparge liquor.</summary>
    RunOffMore,

    /// <summary>Less into the kettle.</summary>
    RunOffLess,

    /// <summary>What was forgotten goes in now, as it was weighed.</summary>
    AddNow,

    /// <summary>Hops that are still to go in are weighed anew.</summary>
    Reweigh,

    /// <summary>What is still to be chilled is chilled further, or less.</summary>
    SetChiller,

    /// <summary>What is in the fermenter is pumped through the chiller once more, or gets a coil.</summary>
    ChillFermenter,

    /// <summary>The yeast waits until the room has brought the wort to its temperature.</summary>
    WaitForRoom,

    /// <summary>The yeast waits until the fermenter's own cooling has brought the wort to its temperature.</summary>
    OwnCooling,

    /// <summary>Liquor is pumped to a vessel whose heat works, and heated there.</summary>
    HeatElsewhere,

    /// <summary>Wort is pumped to a vessel whose heat works, and all that was to be done in the kettle is done there.</summary>
    BoilElsewhere,

    /// <summary>Hot liquor raises the mash that the tun's own heat no longer raises.</summary>
    Infuse,

    /// <summary>The mash is not heated any further: it rests on at what it has.</summary>
    RestOn,
}

/// <summary>A computed way back to plan, with its cost and what it gives.</summary>
/// <param name="Amount">Minutes, litres, kg, g, mL, °C or a factor, by kind.</param>
/// <param name="Minutes">Added to the day; negative when it shortens it.</param>
/// <param name="Insert">Steps put on the run sheet before <paramref name="BeforeStepId"/>.</param>
/// <param name="Replace">Steps that take the place of those with the same id.</param>
/// <param name="Gives">
/// The figures of the outlook that it changes: before is leaving it (or the day with all its heat, where leaving it never ends), after is taking it. For
/// leaving it, before is the plan.
/// </param>
public sealed record Remedy(
    RemedyKind Kind,
    string Vessel,
    double Amount,
    double Minutes,
    ImmutableArray<StepSpec> Insert,
    string BeforeStepId,
    ImmutableArray<StepSpec> Replace,
    ImmutableArray<Shift> Gives)
{
    /// <summary>Circuit that takes over what dead ones fed; null: the wiring stays.</summary>
    public string? CircuitId { get; init; }

    /// <summary>Vessel that takes the kettle's place from now on; null: the kettle keeps it.</summary>
    public string? BoilsIn { get; init; }

    /// <summary>More steps, each put before a step of its own; null: none.</summary>
    public ImmutableArray<LaterStep>? Later { get; init; }

    /// <summary>All that it puts on the run sheet.</summary>
    public IEnumerable<StepSpec> Added => Insert.Concat((Later ?? []).Select(l => l.Spec));

    /// <summary>Steps that it ends where they are, or that fall away.</summary>
    public ImmutableArray<string> Ends { get; init; } = [];

    /// <summary>Water and liquor that it takes, litres at 20 °C; null: none.</summary>
    public double? WaterL { get; init; }

    /// <summary>Weighed goods beyond what was planned, g; negative for less; null: none.</summary>
    public double? MassG { get; init; }

    /// <summary>Electrical power that it draws, W; null: no more than the day does anyway.</summary>
    public double? PowerW { get; init; }

    /// <summary>It raises the mash to its rests and leaves the mash-out out.</summary>
    public bool NoMashOut { get; init; }

    /// <summary>Of leaving it: what kind of step never comes to its end, or boils nothing; null: the day goes on.</summary>
    public StepKind? Never { get; init; }

    /// <summary>Of <see cref="Never"/>: that is still ahead, and a way may open before it.</summary>
    public bool Ahead { get; init; }

    /// <summary>It comes nearer to the plan and does not reach it: more is not done at once.</summary>
    public bool Partly { get; init; }

    /// <summary>The limit that it comes closest to; null: it comes near none. An offer never breaks one.</summary>
    public Limit? Closest { get; init; }
}

/// <summary>A step that a remedy puts farther down on the run sheet.</summary>
public sealed record LaterStep(string BeforeStepId, StepSpec Spec);
