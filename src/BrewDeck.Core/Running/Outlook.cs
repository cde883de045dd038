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
/// <param name="Now">The plant at this moment as the model has it after the readings.</param>
/// <param name="Rest">Running steps cut at now, then the waiting ones, with start and length in seconds since the start of the day.</param>
/// <param name="Outlook">What it will give.</param>
/// <param name="HandsNeededS">When the hands are needed next, seconds since the start of the day; null: no more.</param>
public sealed record Forecast(PlantState Now, ImmutableArray<PlanStep> Rest, Outlook Outlook, double? HandsNeededS);
