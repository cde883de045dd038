using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>In which kinds of step each mishap can begin, the usual one first.</summary>
public static class MishapPlaces
{
    private static IReadOnlyList<StepKind> Of(MishapKind kind) => kind switch
    {
        MishapKind.ColdStrike => [StepKind.HeatStrike],
        MishapKind.ThickMash => [StepKind.TransferStrike],
        MishapKind.StuckBed => [StepKind.Lauter, StepKind.RunOff],
        MishapKind.TrippedCircuit => [StepKind.HeatToBoil, StepKind.HeatStrike, StepKind.HeatSparge, StepKind.Ramp, StepKind.Boil],
        MishapKind.FailedElement => [StepKind.HeatToBoil, StepKind.HotBreak, StepKind.Boil],
        MishapKind.PumpLostPrime => [StepKind.TransferStrike, StepKind.Infuse, StepKind.BatchSparge, StepKind.TransferMash, StepKind.TransferWort],
        MishapKind.BoilOver => [StepKind.HeatToBoil],
        MishapKind.WrongWeighIn => [StepKind.WeighIn],
        MishapKind.SlowChiller => [StepKind.CastOut, StepKind.ChillInKettle],
        MishapKind.MisreadHydrometer => [StepKind.Lauter, StepKind.RunOff],
        _ => [StepKind.Rest, StepKind.HeatStrike, StepKind.Ramp, StepKind.Lauter, StepKind.HeatToBoil, StepKind.Boil, StepKind.Stand],
    };

    public static bool Fits(MishapKind kind, StepKind step) => Of(kind).Contains(step);

    /// <summary>Each with the step of this day that it begins in; those that have no place in it keep none and never begin.</summary>
    public static ImmutableArray<Mishap> Placed(Plan plan, IEnumerable<Mishap> mishaps) => [.. mishaps.Select(m => m with { StepId = In(plan, m)?.Id })];

    /// <summary>The step of a day in which a mishap begins; null: it has no place in such a day.</summary>
    public static StepSpec? In(Plan plan, Mishap mishap) => mishap.StepId is { } id
        ? plan.Steps.FirstOrDefault(s => s.Spec.Id == id && Fits(mishap.Kind, s.Spec.Kind))?.Spec
        : Of(mishap.Kind).Select(k => plan.Steps.FirstOrDefault(s => s.Spec.Kind == k)?.Spec).FirstOrDefault(s => s is not null);
}
