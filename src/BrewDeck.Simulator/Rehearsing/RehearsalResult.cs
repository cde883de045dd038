using System.Collections.Immutable;
using BrewDeck.Core.Running;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>What really came out, beyond any instrument.</summary>
/// <param name="FermenterL">Litres at 20 °C.</param>
/// <param name="BitternessIbu">On the scale of the Tinseth utilisation.</param>
/// <param name="PitchC">True temperature in the fermenter at the end, °C.</param>
/// <param name="FinishS">End of the day, seconds since its start.</param>
public sealed record RehearsalTruth(
    double OriginalGravitySg, double FermenterL, double BitternessIbu, double PitchC, double FinishS);

/// <summary>The outlook as it stood at a moment of the day.</summary>
/// <param name="At"><c>start</c>, <c>after_mash</c>, <c>pre_boil</c> or <c>end_of_boil</c>.</param>
/// <param name="State">The run at that moment.</param>
/// <param name="NowMs">That moment, Unix ms.</param>
public sealed record RehearsalOutlook(string At, Outlook Outlook, RunState State, long NowMs);

/// <summary>A rehearsed day.</summary>
/// <param name="Ended"><c>pitched</c> or <c>aborted</c>.</param>
/// <param name="VirtualS">Length of the day on the virtual clock, s.</param>
/// <param name="Final">State of the run at the end: readings, remedies and times are in it.</param>
public sealed record RehearsalResult(
    int Seed,
    string Ended,
    double VirtualS,
    int Events,
    RehearsalTruth Truth,
    ImmutableArray<RehearsalOutlook> Outlooks,
    RunState Final)
{
    public const string Pitched = "pitched";

    public const string Aborted = "aborted";

    /// <summary>In the order in which they were dealt.</summary>
    public ImmutableArray<MishapCourse> Mishaps { get; init; } = [];

    public ImmutableArray<TakenReading> Readings => Final.Readings;

    public ImmutableArray<TakenRemedy> Remedies => Final.Remedies;
}
