using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>A figure with its 80 % band; the band is null where no spread is known.</summary>
public sealed record Figure(double P50, double? P10 = null, double? P90 = null);

/// <summary>What the rest of the day will give. Volumes are litres at 20 °C, times Unix ms.</summary>
public sealed record Outlook(
    Figure PreBoilL,
    Figure PreBoilGravitySg,
    Figure PostBoilL,
    Figure FermenterL,
    Figure OriginalGravitySg,
    Figure BitternessIbu,
    Figure ColourEbc,
    Figure PitchC,
    Figure FinishMs);

/// <summary>The rest of the day from now on, by the same model that drew the plan.</summary>
/// <remarks>
/// Each part is reckoned when somebody looks. Measured: bands are half of what a forecast costs, most of a day only the rest is wanted, and to see
/// whether a running step is over not even that.
/// </remarks>
public sealed record Forecast
{
    private readonly Lazy<ImmutableArray<PlanStep>> _rest;
    private readonly Lazy<Outlook> _outlook;
    private readonly Lazy<double?> _handsNeededS;

    public Forecast(PlantState now, ImmutableArray<PlanStep> rest, Func<Outlook> outlook, double? handsNeededS)
        : this(now, rest, () => rest, _ => outlook(), _ => handsNeededS)
    {
    }

    /// <param name="rest">What is going on and what waits.</param>
    /// <param name="outlook">Of the rest.</param>
    /// <param name="handsNeededS">Of the rest.</param>
    internal Forecast(
        PlantState now, ImmutableArray<PlanStep> going, Func<ImmutableArray<PlanStep>> rest, Func<ImmutableArray<PlanStep>, Outlook> outlook,
        Func<ImmutableArray<PlanStep>, double?> handsNeededS)
    {
        (Now, Going, _rest) = (now, going, new(rest));
        (_outlook, _handsNeededS) = (new(() => outlook(Rest)), new(() => handsNeededS(Rest)));
    }

    /// <summary>The plant at this moment as the model has it after the readings.</summary>
    public PlantState Now { get; init; }

    /// <summary>The first of <see cref="Rest"/>: what cuts in, runs or is on hold, each from now on.</summary>
    public ImmutableArray<PlanStep> Going { get; }

    /// <summary>Running steps cut at now, then the waiting ones, with start and length in seconds since the start of the day.</summary>
    public ImmutableArray<PlanStep> Rest
    {
        get => _rest.Value;
        init => _rest = new(() => value);
    }

    /// <summary>As it is expected from now on; null: it is over, or there is none.</summary>
    public PlanStep? Step(string id) => Rest.FirstOrDefault(s => s.Spec.Id == id);

    /// <summary>What it will give.</summary>
    public Outlook Outlook
    {
        get => _outlook.Value;
        init => _outlook = new(value);
    }

    /// <summary>Heat that the hands switch while a run-off runs, the next first.</summary>
    public ImmutableArray<HeatSwitch> Switches { get; init; } = [];

    /// <summary>When the hands are needed next, seconds since the start of the day; null: no more.</summary>
    public double? HandsNeededS => _handsNeededS.Value;
}
