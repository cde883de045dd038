using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

namespace BrewDeck.Reports;

/// <summary>The recipe of what was really brewed: times as they were, what a remedy put in, volume and gravity as they came out.</summary>
internal static class BrewedRecipe
{
    public static Recipe Of(RecordSource source)
    {
        var recipe = source.Plan.Recipe;
        var came = source.Came;
        return recipe with
        {
            BatchL = Math.Round(came.FermenterL.P50, 2),
            OriginalGravitySg = Math.Round(source.State.Ferment.MeasuredOriginalSg ?? came.OriginalGravitySg.P50, 4),
            BitternessIbu = Math.Round(came.BitternessIbu.P50, 1),
            Grist = [.. recipe.Grist, .. Done(source, StepKind.AddExtract).SelectMany(s => s.Spec.Charges).Select(Extract)],
            Rests = [.. recipe.Rests.Select(rest => Rest(rest, source))],
            BoilMin = BoilMin(source) ?? recipe.BoilMin,
            Hops = [.. recipe.Hops.Select(hop => hop.Use == HopUse.Boil ? hop with { Minutes = ReallyMin(hop, source) } : hop)],
            Yeast = recipe.Yeast with { PitchC = Math.Round(came.PitchC.P50, 1) },
        };
    }

    private static IEnumerable<RunStep> Done(RecordSource source, StepKind kind) =>
        source.State.Steps.Where(s => s.Spec.Kind == kind && s is { Status: RunStatus.Complete, StartedMs: not null, EndedMs: not null });

    private static GristLine Extract(Charge charge) => new(
        charge.Name,
        charge.Amount,
        charge.Amount > charge.WaterKg ? charge.ExtractKg / (charge.Amount - charge.WaterKg) : 0,
        charge.Amount > 0 ? charge.WaterKg / charge.Amount : 0,
        charge.ColourEbc,
        GristUse.Kettle);

    /// <summary>At the mean of what was read while it stood, or at what it aimed at.</summary>
    private static MashRest Rest(MashRest rest, RecordSource source)
    {
        if (Done(source, StepKind.Rest).FirstOrDefault(s => s.Spec.Label == rest.Name) is not { } step)
            return rest;
        var read = source.State.Readings
            .Where(r => r.StepId == step.Spec.Id && r.Reading.Is(ReadingKind.Temperature, step.Spec.Vessel)).Select(r => r.Reading.Value).ToImmutableArray();
        return rest with { Minutes = Minutes(step.StartedMs!.Value, step.EndedMs!.Value), TempC = read.Length > 0 ? Math.Round(read.Average(), 1) : rest.TempC };
    }

    private static double? BoilMin(RecordSource source) =>
        KnockOutMs(source) is { } end && Done(source, StepKind.Boil).Select(s => s.StartedMs!.Value).DefaultIfEmpty(long.MaxValue).Min() is var start && start < end
            ? Minutes(start, end)
            : null;

    /// <summary>From when it went in to the knock-out; as planned when the record does not say.</summary>
    private static double ReallyMin(HopAddition hop, RecordSource source)
    {
        var step = Done(source, StepKind.AddToBoil).FirstOrDefault(s => s.Spec.Charges.Any(c => c.Kind == ChargeKind.Hop && c.Name == hop.Name && Math.Abs(c.Minutes - hop.Minutes) < 0.5));
        return step is not null && KnockOutMs(source) is { } end ? Math.Max(0, Minutes(step.EndedMs!.Value, end)) : hop.Minutes;
    }

    private static long? KnockOutMs(RecordSource source) => Done(source, StepKind.KnockOut).FirstOrDefault()?.StartedMs;

    /// <summary>Whole minutes: what a recipe says.</summary>
    private static double Minutes(long fromMs, long toMs) => Math.Round((toMs - fromMs) / 60_000.0);
}
