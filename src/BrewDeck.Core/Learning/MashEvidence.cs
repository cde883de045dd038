using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>The gravity of the mash against the extract in the grist: conversion yield.</summary>
internal static class MashEvidence
{
    public static IEnumerable<Evidence> Of(BatchTrace batch)
    {
        var tun = batch.Plan.Brewhouse.MashTun.Id;
        if (batch.Final.LastDone(s => s.Kind == StepKind.Vorlauf) is not { } step || batch.Within(step, ReadingKind.Gravity, tun) is not { } read)
            yield break;
        var potential = Potential(batch);
        if (batch.AtStart(step) is not { } live || potential <= 0)
            yield break;
        var mash = live.CutAt(batch.Final.SecondsAt(read.AtMs)).Plant.Vessels[live.Setting.IndexOf(tun)];
        var plato = SugarSolution.PlatoFromSg(read.Reading.Value);
        var dissolved = mash.WaterKg * plato / (100 - plato);
        // what the model still expects to dissolve after this moment
        var reached = 1 - mash.UndissolvedKg / Math.Max(1e-9, mash.UndissolvedKg + mash.ExtractKg);
        var value = dissolved / potential / Math.Max(0.5, reached);
        var perPlato = value * 100 / (plato * (100 - plato));
        // half a per cent of the mash's water: what stays in tank and hoses, and steams
        yield return batch.Says(
            LessonParameters.ConversionYield, value, perPlato * PlatoNoise, Root(perPlato * PlatoBias, 0.005 * value),
            new DrivingReading("mash_gravity_sg", read.Reading.Value), new DrivingReading("mash_water_kg", mash.WaterKg), new DrivingReading("grist_extract_kg", potential))
            with
        { LeftOut = Spoiling.Of(batch.Final, [.. Made(batch), step]) };
    }

    /// <summary>The steps that made the mash.</summary>
    internal static IEnumerable<RunStep> Made(BatchTrace batch) => batch.Final.Done(s => s.Kind is StepKind.TransferStrike or StepKind.DoughIn);

    private static double Potential(BatchTrace batch) => batch.Final.Done(s => s.Kind == StepKind.DoughIn).Sum(s => s.Spec.Charges.Sum(c => c.ExtractKg));
}
