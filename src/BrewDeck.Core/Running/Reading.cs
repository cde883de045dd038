using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

public enum ReadingKind
{
    /// <summary>°C.</summary>
    Temperature,

    /// <summary>Litres as they stand in the vessel, at its temperature.</summary>
    Volume,

    /// <summary>SG at 20 °C, after the instrument's correction.</summary>
    Gravity,

    /// <summary>pH at room temperature.</summary>
    Ph,

    /// <summary>kg.</summary>
    Weight,
}

/// <summary>One measured value with its place.</summary>
/// <param name="Vessel">Vessel id, or <c>grain</c>, <c>fermenter</c>, <c>source</c>.</param>
/// <param name="Value">In the canonical unit of its kind.</param>
/// <param name="AsTyped">What the brewer typed, kept for the record.</param>
public sealed record Reading(ReadingKind Kind, string Vessel, double Value, string AsTyped)
{
    /// <summary>Volume readings: temperature of the liquid when it was read, °C; null: the vessel's.</summary>
    public double? AtC { get; init; }

    /// <summary>Stands before the temperature of what was read: <c>1.046@40</c>, <c>41@77</c>.</summary>
    public const char AtMark = '@';

    /// <summary>Stand after what a refractometer shows: <c>11.8bx</c>.</summary>
    public static readonly ImmutableArray<string> BrixMarks = ["bx", "brix"];

    /// <summary>Of a gravity: what was typed tells how warm the sample was, or that it was a refractometer's drops, which cool at once.</summary>
    public bool TellsItsSample => AsTyped.Contains(AtMark, StringComparison.Ordinal)
        || BrixMarks.Any(mark => AsTyped.EndsWith(mark, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether it is one of that kind there.</summary>
    public bool Is(ReadingKind kind, string vessel) => Kind == kind && Vessel == vessel;

    /// <summary>True for a kettle level of which the brewer says that the tun still runs off, however the clock stands; null: nothing was said.</summary>
    public bool? StillRuns { get; init; }
}
