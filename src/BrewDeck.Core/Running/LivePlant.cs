using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Core.Running;

/// <summary>A step that is going on: what is left of it, and since when.</summary>
/// <param name="Left">As it was at <paramref name="SinceS"/>; a step that ended by its nature but not by the brewer has nothing left to do.</param>
/// <param name="SinceS">Seconds since the start of the day.</param>
/// <param name="DueS">When it was expected to end as it was started, seconds since the start of the day; NaN: not a matter of the plant.</param>
/// <param name="EndedS">When it came to its end by its nature, though the brewer has not ended it; null: it has not yet.</param>
/// <param name="Known">A run-off as it was last known; null: none, or it was never known.</param>
public sealed record Segment(StepSpec Left, double SinceS, double DueS = double.NaN, double? EndedS = null, KnownRunOff? Known = null);

/// <summary>A run-off when it began, was taken up again, or its level was read: from there it is run again if it turns out to have been slower.</summary>
/// <param name="Left">What was left of it.</param>
/// <param name="SinceS">Seconds since the start of the day.</param>
public sealed record KnownRunOff(StepSpec Left, double SinceS, PlantState Plant);

/// <summary>The model's plant following the day: state, running steps, and what the readings have taught.</summary>
public sealed record LivePlant
{
    public required PlantSetting Setting { get; init; }

    public required PlantState Plant { get; init; }

    public ImmutableArray<Segment> Running { get; init; } = [];

    /// <summary>Steps on hold, each with what is left of it and since when it is held.</summary>
    public ImmutableArray<Segment> Held { get; init; } = [];

    /// <summary>The kettle when the lauter ended, after the readings that followed; null before.</summary>
    public VesselState? PreBoil { get; init; }

    /// <summary>The kettle when the boil ended, after the readings that followed; null before.</summary>
    public VesselState? PostBoil { get; init; }

    /// <summary>What is believed of the uncertain things of the day; the plant is its mean.</summary>
    internal Belief Belief { get; init; } = null!;

    /// <summary>False where a record is only read: then only the clocks of the steps go on, and the plant stays as it was at the start.</summary>
    internal bool Learns => Belief is not null;

    /// <param name="openedMs">When the batch was opened, Unix ms: what its members are drawn from.</param>
    public static LivePlant Of(Plan plan, long openedMs) =>
        new() { Setting = PlantSetting.Of(plan.Brewhouse, plan.Choices), Plant = plan.Start, Belief = Belief.Of(plan, openedMs) };

    /// <summary>What the model has in a vessel.</summary>
    public VesselState Vessel(string id) => Plant.Vessels[Setting.IndexOf(id)];

    /// <summary>The same with each step that goes on or is on hold changed.</summary>
    internal LivePlant Each(Func<Segment, Segment> changed) => this with { Running = [.. Running.Select(changed)], Held = [.. Held.Select(changed)] };

    /// <summary>Running steps cut at a moment: what is done is in the plant, the rest of each goes on from there.</summary>
    public LivePlant CutAt(double nowS)
    {
        if (!Learns)
            return this with { Running = [.. Running.Select(s => Advance.ByClock(s, nowS))] };
        var plant = Plant;
        var running = ImmutableArray.CreateBuilder<Segment>(Running.Length);
        foreach (var segment in Running)
        {
            (plant, var rest) = Advance.Cut(Setting, segment, plant, nowS);
            running.Add(rest);
        }
        return this with { Plant = PlantModel.WaitUntil(Setting, plant, nowS), Running = running.ToImmutable() };
    }
}
