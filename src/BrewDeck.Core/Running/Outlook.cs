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
public sealed record Forecast
{
    private readonly Lazy<Outlook> _outlook;

    /// <param name="outlook">Asked once, when somebody looks. Measured: its bands are half of what a forecast costs, and most of a day only the rest is wanted.</param>
    public Forecast(PlantState now, ImmutableArray<PlanStep> rest, Func<Outlook> outlook, double? handsNeededS) =>
        (Now, Rest, _outlook, HandsNeededS) = (now, rest, new(outlook), handsNeededS);

    /// <summary>The plant at this moment as the model has it after the readings.</summary>
    public PlantState Now { get; init; }

    /// <summary>Running steps cut at now, then the waiting ones, with start and length in seconds since the start of the day.</summary>
    public ImmutableArray<PlanStep> Rest { get; init; }

    /// <summary>What it will give.</summary>
    public Outlook Outlook
    {
        get => _outlook.Value;
        init => _outlook = new(value);
    }

    /// <summary>Heat that the hands switch while a run-off runs, the next first.</summary>
    public ImmutableArray<HeatSwitch> Switches { get; init; } = [];

    /// <summary>When the hands are needed next, seconds since the start of the day; null: no more.</summary>
    public double? HandsNeededS { get; init; }
}
