using System.Collections.Immutable;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Unit procedures of a batch in the sense of ISA-88, in the order of a day.</summary>
public enum UnitProcedure
{
    SetUp,
    HotLiquor,
    Mash,
    Lauter,
    Boil,
    Cool,
    Pitch,
    CleanDown,
}

/// <summary>What is done in a step. Each kind has its effect in <see cref="PlantModel"/> and its words in the deck.</summary>
public enum StepKind
{
    CheckFittings,
    WeighIn,
    TreatWater,
    Fill,
    HeatStrike,
    PrimePump,
    TransferStrike,
    HeatSparge,
    DoughIn,
    Rest,
    Ramp,
    Vorlauf,
    Lauter,
    RunOff,
    BatchSparge,
    AddFirstWortHops,
    HeatToBoil,
    HotBreak,
    Boil,
    AddToBoil,
    SanitiseChiller,
    KnockOut,
    Whirlpool,
    AddToWhirlpool,
    Stand,
    ChillInKettle,
    CastOut,
    Aerate,
    Pitch,
    Clean,
    /// <summary>Put on the run sheet by a remedy: heat the mash.</summary>
    HeatMash,
    /// <summary>Put on the run sheet by a remedy: water into the mash or the kettle.</summary>
    AddWater,
    /// <summary>Put on the run sheet by a remedy: dried malt extract into the kettle.</summary>
    AddExtract,
    /// <summary>A circuit is unplugged from one vessel and plugged into the next, or switched over.</summary>
    MovePlug,
    /// <summary>Hot water into the mash, as much as brings it to its temperature.</summary>
    Infuse,
    /// <summary>Mash with its grain from the mash mixer into the lauter tun.</summary>
    TransferMash,
    /// <summary>The basket with the grain is lifted out and drains.</summary>
    LiftBasket,
    /// <summary>Hot wort from the kettle into the whirlpool.</summary>
    TransferWort,
    /// <summary>Put on the run sheet by a remedy: a bed that does not run is rested, lifted with liquor or cut.</summary>
    FreeBed,
    /// <summary>Put on the run sheet by a remedy: acid or soda into the mash.</summary>
    TreatMash,
    /// <summary>As much mash with its grain into the kettle as raises the rest of it when it comes back boiling.</summary>
    PullDecoction,
    /// <summary>The pulled mash to the boil, stirred all the way.</summary>
    HeatDecoction,
    BoilDecoction,
    ReturnDecoction,
    /// <summary>Put on the run sheet by a remedy: wort that is not at its pitching temperature waits for it, or is pumped through the chiller once more.</summary>
    CoolInFermenter,
    /// <summary>Put on the run sheet by a remedy: what is left in a vessel runs away, down to its outlet.</summary>
    Drain,
}

/// <summary>The usual dangers of brewing work; each is shown with the step that has it.</summary>
[Flags]
public enum Cautions
{
    None = 0,
    Scald = 1,
    BoilOver = 2,
    MainsNearWater = 4,
    DryFire = 8,
    Caustic = 16,
    Lifting = 32,
    Pressure = 64,
    Steam = 128,
    Acid = 256,
    Oxygen = 512,
}

/// <summary>
/// One step as asked for: what is to be reached, not what it will give. Numbers that follow from the plant's state (a strike
/// temperature, the minutes of a heat-up) are left to <see cref="PlantModel"/>.
/// </summary>
public sealed record StepSpec
{
    /// <summary>Stable within a run sheet, such as <c>mash.rest-2</c>.</summary>
    public required string Id { get; init; }

    public required StepKind Kind { get; init; }

    public required UnitProcedure Unit { get; init; }

    /// <summary>Vessel worked in or drawn from; empty when the hands alone are busy.</summary>
    public string Vessel { get; init; } = "";

    /// <summary>Vessel filled by the step; empty when nothing moves.</summary>
    public string To { get; init; } = "";

    /// <summary>Temperature to reach or keep, °C; for strike liquor the mash temperature that it must give.</summary>
    public double? TargetC { get; init; }

    /// <summary>Volume to move or to reach, litres at 20 °C.</summary>
    public double? VolumeL { get; init; }

    /// <summary>Sparge liquor of a lauter, litres at 20 °C.</summary>
    public double? SpargeL { get; init; }

    /// <summary>Length of a step that ends by the clock, minutes.</summary>
    public double? Minutes { get; init; }

    /// <summary>pH that a sample of the vessel should show when it ends, at room temperature; null: none was predicted.</summary>
    public double? ExpectedPh { get; init; }

    /// <summary>What goes in.</summary>
    public ImmutableArray<Charge> Charges { get; init; } = [];

    /// <summary>Ends of hoses that are moved before the step begins; null: all hang where they must.</summary>
    public ImmutableArray<HoseMove>? Hoses { get; init; }

    /// <summary>Where hoses were moved: all that the step runs through, as it hangs then, in the order of its flows.</summary>
    public ImmutableArray<HosePath>? HosePaths { get; init; }

    /// <summary>A rest's or an addition's own name, for the words.</summary>
    public string Label { get; init; } = "";

    /// <summary>Seconds for which the hands are busy, from the start of the step.</summary>
    public double HandsS { get; init; }

    /// <summary><see cref="HandsS"/> of what is not left alone while it goes on, such as an open hose: more than it takes.</summary>
    public const double AllThroughS = 3600;

    /// <summary>Id of a step that must have ended before; empty: the vessels and the hands alone decide.</summary>
    public string AfterStepId { get; init; } = "";

    /// <summary>May begin so many seconds before <see cref="AfterStepId"/> ends: handwork that makes ready for what follows it.</summary>
    public double LeadS { get; init; }

    /// <summary>Run-off: throttled to this, L/min, the litres at 20 °C; null: as the brewhouse does.</summary>
    public double? FlowLPerMin { get; init; }

    /// <summary>Does not wait for the step that runs in its vessel.</summary>
    public bool CutsIn { get; init; }

    /// <summary>Runs by itself once started, while the hands go on with the next step.</summary>
    public bool Background { get; init; }

    public Cautions Cautions { get; init; }
}

/// <summary>One or both ends of a line are moved.</summary>
/// <param name="Line">Id of the pump in it, <c>chiller</c>, or empty for a hose alone.</param>
/// <param name="From">Vessel to whose outlet its inlet goes; null: it stays.</param>
/// <param name="To">Vessel (or <c>chiller</c>) to which its outlet goes; null: it stays.</param>
public sealed record HoseMove(string Line, string? From, string? To);

/// <summary>A line with both its ends.</summary>
/// <param name="Line">As in <see cref="HoseMove"/>.</param>
/// <param name="From">Vessel (or <c>chiller</c>) from whose outlet it draws.</param>
/// <param name="To">Vessel (or <c>chiller</c>) into which it runs.</param>
public sealed record HosePath(string Line, string From, string To);

public enum ChargeKind
{
    Grist,
    Hop,
    Extract,
    Other,

    /// <summary>For the water; its name is that of a <see cref="Physics.BrewingSalt"/>.</summary>
    Salt,

    /// <summary>For the water; its name is that of a <see cref="Waters.AcidKind"/>.</summary>
    Acid,

    /// <summary>In place of water from the tap.</summary>
    SoftWater,
}

/// <summary>Something weighed that goes in at a step.</summary>
/// <param name="Amount">In <paramref name="Unit"/>.</param>
/// <param name="Unit">kg for grist and extract, g for hops, as written for the rest.</param>
/// <param name="ExtractKg">Extract that it brings, kg.</param>
/// <param name="WaterKg">Water that it brings, kg.</param>
/// <param name="AlphaG">Alpha acids that it brings, g.</param>
/// <param name="Minutes">Before knock-out or cast-out, for hops.</param>
/// <param name="ColourEbc">Of malt and extract.</param>
public sealed record Charge(
    ChargeKind Kind,
    string Name,
    double Amount,
    string Unit,
    double ExtractKg = 0,
    double WaterKg = 0,
    double AlphaG = 0,
    double Minutes = 0,
    double ColourEbc = 0)
{
    internal double ColourKgEbc => Amount * ColourEbc;

    /// <summary>Sugar has no colour and dilutes none, kg.</summary>
    internal double ColouredKg => ColourEbc > 0 ? Amount : 0;

    /// <summary>Of an acid by its label, 0..1.</summary>
    public double? StrengthFraction { get; init; }

    /// <summary>When a hop goes in; null for what is no hop, and in records from before it was kept.</summary>
    public HopUse? Use { get; init; }

    /// <summary>Step that it goes in at, where a list is for several; null: the step that has it.</summary>
    public string? ForStepId { get; init; }
}
