using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>Transfers: the pump, what stays behind at cast-out, the chiller, and what the fermenter keeps.</summary>
internal static class CastOutEvidence
{
    public static IEnumerable<Evidence> Of(BatchTrace batch) => [.. Pump(batch), .. CastOut(batch), .. Fermenter(batch)];

    /// <summary>A reading this long before the key was struck was taken while the pump still ran; s.</summary>
    private const double AtEndS = KeyDelayS + 3 * DelayNoiseS;

    private static IEnumerable<Evidence> Pump(BatchTrace batch)
    {
        if (batch.Plan.Brewhouse.Pumps.IsEmpty || batch.Final.LastDone(s => s.Kind == StepKind.TransferStrike) is not { Spec.VolumeL: > 5 and { } litres } step)
            yield break;
        // the strike liquor is read in the tun before the key is struck, and the pump stood by then
        var seconds = batch.Within(step, ReadingKind.Temperature, step.Spec.To) is { } read && step.EndedMs - read.AtMs <= 1000 * AtEndS
            ? (read.AtMs - step.StartedMs!.Value) / 1000.0 - ReadingDelayS
            : batch.SecondsOf(step) - KeyDelayS;
        if (seconds < 30)
            yield break;
        var flow = 60 * litres / seconds;
        yield return batch.Says(
            LessonParameters.PumpFlow, flow, flow * 0.5 * DelayNoiseS / seconds, flow * DelayBiasS / seconds,
            new DrivingReading("pumped_l", litres), new DrivingReading("pumped_s", seconds))
            with
        { LeftOut = Spoiling.OfTimed(batch.Final, step) ?? (flow < Spoiling.LateFlow * batch.Plan.Brewhouse.Pumps[0].FlowLPerMin ? Spoilt.Late : null) };
    }

    private static IEnumerable<Evidence> CastOut(BatchTrace batch)
    {
        const string fermenter = Places.Fermenter;
        if (batch.Final.LastDone(s => s.Kind == StepKind.CastOut) is not { } step || batch.AtStart(step) is not { } live
            || batch.Within(step, ReadingKind.Volume, fermenter) is not { } read)
            yield break;
        var wort = live.Vessel(step.Spec.Vessel);
        var seen = LauterEvidence.CoolL(read, wort.Plato, step.Spec.TargetC ?? 20);
        if (Behind(batch, live, read, seen) is { } behind)
            yield return behind;
        if (Chilling(batch, step, live, read, seen) is { } chilled)
            yield return chilled;
    }

    /// <summary>Kettle at knock-out less the stand's steam, less the fermenter, less what the profile gives to dead space, hops and hoses.</summary>
    private static Evidence? Behind(BatchTrace batch, LivePlant live, TakenReading read, double seenL)
    {
        var house = batch.Plan.Brewhouse;
        var knockOut = batch.Final.LastDone(s => s.Kind == StepKind.KnockOut);
        if (knockOut is null || batch.Within(knockOut, ReadingKind.Volume, house.Kettle.Id) is not { } before || Changed(batch, before)
            || batch.Final.LastDone(s => s.Kind == StepKind.Whirlpool) is not { } whirlpool || batch.AtStart(whirlpool) is not { } hot)
            return null;
        var kettle = live.Setting.IndexOf(house.Kettle.Id);
        var knockedOut = LauterEvidence.CoolL(before, live.Plant.Vessels[kettle].Plato, 98);
        var steam = Contents.CoolL(hot.Plant.Vessels[kettle]) - Contents.CoolL(live.Plant.Vessels[kettle]);
        var others = house.Kettle.DeadSpaceL + house.Habits.LineLossL + house.Habits.HopAbsorptionLPerKg * live.Plant.Hops.Sum(h => h.MassKg);
        return batch.Says(
            LessonParameters.CastOutLoss, knockedOut - steam - seenL - others, Math.Sqrt(2) * VolumeNoiseL, Root(VolumeBias(seenL), VolumeBias(seenL), 0.15),
            new DrivingReading("kettle_volume_l", before.Reading.Value), new DrivingReading("fermenter_volume_l", read.Reading.Value), new DrivingReading("steamed_off_l", steam))
            with
        { LeftOut = Spoiling.Of(batch.Final, [.. batch.Final.Done(s => s.Kind is StepKind.KnockOut or StepKind.Whirlpool or StepKind.Stand or StepKind.CastOut)]) };
    }

    /// <summary>A remedy has put something into the kettle since then, or boiled it once more.</summary>
    private static bool Changed(BatchTrace batch, TakenReading since) => batch.Final
        .Done(s => s.Kind is StepKind.AddWater or StepKind.AddExtract or StepKind.Boil && s.Vessel == batch.Plan.Brewhouse.Kettle.Id)
        .Any(s => s.EndedMs >= since.AtMs);

    /// <summary>Heat transfer that throttles a counterflow chiller to the flow that was seen; at full throttle it says nothing.</summary>
    private static Evidence? Chilling(BatchTrace batch, RunStep step, LivePlant live, TakenReading read, double seenL)
    {
        var chiller = batch.Plan.Brewhouse.Chiller;
        if (chiller.IsCoil || batch.Within(step, ReadingKind.Temperature, Places.Fermenter) is not { } cold)
            return null;
        var seconds = (read.AtMs - step.StartedMs!.Value) / 1000.0 - ReadingDelayS;
        var wort = live.Vessel(step.Spec.Vessel);
        var flow = 60 * (seenL + batch.Plan.Brewhouse.Habits.LineLossL) / Math.Max(60, seconds);
        if (flow > 0.96 * chiller.WortLPerMin || cold.Reading.Value <= live.Setting.SourceWaterC + 1)
            return null;
        var ua = TransferFor(live.Setting, wort, flow, cold.Reading.Value);
        // a kelvin of the wort, of the water or behind the chiller, and the flow's own error, by the slope at this point
        var perFlow = (TransferFor(live.Setting, wort, 1.01 * flow, cold.Reading.Value) - ua) / 0.01;
        var perKelvin = TransferFor(live.Setting, wort, flow, cold.Reading.Value - 1) - ua;
        return batch.Says(
            LessonParameters.Chiller, ua, Root(perFlow * Root(VolumeNoiseL / seenL, DelayNoiseS / seconds), perKelvin * Root(0.5, 0.4, TemperatureNoiseK)),
            Root(perFlow * Root(VolumeBias(seenL) / seenL, DelayBiasS / seconds), perKelvin * ThermometerBiasK),
            new DrivingReading("cast_out_l_per_min", flow), new DrivingReading("behind_chiller_c", cold.Reading.Value), new DrivingReading("source_water_c", live.Setting.SourceWaterC))
            with
        { LeftOut = Spoiling.OfTimed(batch.Final, step) };
    }

    private static double TransferFor(PlantSetting setting, in VesselState wort, double litresPerMin, double outC)
    {
        var mean = 0.5 * (wort.TempC + setting.SourceWaterC);
        // litres at 20 °C
        var kgPerS = litresPerMin / 60 * SugarSolution.DensityKgPerM3(wort.Plato, 20) / 1000;
        var capacity = kgPerS * SugarSolution.SpecificHeatJPerKgK(wort.Plato, mean);
        var water = setting.Brewhouse.Chiller.WaterLPerMin / 60 * Water.SpecificHeatJPerKgK(20);
        double low = 1, high = 100_000;
        for (var i = 0; i < 60; i++)
        {
            var middle = Math.Sqrt(low * high);
            if (Physics.Chiller.CounterflowOutletC(capacity, wort.TempC, water, setting.SourceWaterC, middle) > outC)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>Of the wort; common practice, no source.</summary>
    private const double MostLees = 0.2;

    private static IEnumerable<Evidence> Fermenter(BatchTrace batch)
    {
        if (batch.Final.Ferment is not { MeasuredL: { } wort, Lots.IsEmpty: false, IsPackaged: true } beer)
            yield break;
        var behind = wort - beer.PackagedL;
        // what was poured away is not what a fermenter keeps
        if (behind > MostLees * wort)
            yield break;
        yield return batch.Says(
            LessonParameters.FermenterLoss, behind, Root(VolumeNoiseL, 0.3), VolumeBias(wort),
            new DrivingReading("fermenter_volume_l", wort), new DrivingReading("packaged_l", beer.PackagedL));
    }
}
