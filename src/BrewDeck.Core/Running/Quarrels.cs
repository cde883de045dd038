using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// A gravity and a volume of the same wort that are each plausible and cannot both be right: together they are an extract, and of that the
/// day has no more than went in. A gravity of which no volume was read is held against the litres that are reckoned.
/// </summary>
internal static class Quarrels
{
    /// <summary>Two readings so far apart are not of the same wort, ms; common practice, no source.</summary>
    private const long TogetherMs = 15 * 60_000;

    /// <summary>A hydrometer and a dip stick are together no better than this, share of the extract.</summary>
    private const double Instruments = 0.05;

    /// <summary>Farther from what was predicted for both than any mash falls short or does better, share of the extract; common practice, no source.</summary>
    private const double Far = 0.35;

    public static Decision.Quarrel? Of(RunState state, Reading reading, long nowMs)
    {
        var live = state.Live!.CutAt(state.SecondsAt(nowMs));
        var index = live.Setting.IndexOf(reading.Vessel);
        if (index < 0 || live.Plant.Vessels[index].GrainDryKg > 0 || (Partner(state, reading, nowMs) ?? Reckoned(live, reading, nowMs)) is not { } other)
            return null;
        var celsius = live.Plant.Vessels[index].TempC;
        var extract = ExtractKg(reading, other.Reading, celsius);
        var expected = Expectations.Of(live.Setting, live.Plant, reading.Kind, reading.Vessel);
        var predicted = ExtractKg(reading with { Value = expected, AtC = null }, other.Reading with { Value = other.Expected, AtC = null }, celsius);
        var most = MostKg(state);
        return extract > (1 + Instruments) * most || Math.Abs(extract - predicted) > Far * predicted
            ? new(reading, other.Reading, extract, predicted, most)
            : null;
    }

    /// <summary>The last reading of the other kind of the same wort; null: none, or too long ago.</summary>
    private static TakenReading? Partner(RunState state, Reading reading, long nowMs)
    {
        ReadingKind? kind = reading.Kind switch
        {
            ReadingKind.Gravity => ReadingKind.Volume,
            ReadingKind.Volume => ReadingKind.Gravity,
            _ => null,
        };
        return state.Readings.LastOrDefault(r => r.Reading.Kind == kind && r.Reading.Vessel == reading.Vessel && nowMs - r.AtMs <= TogetherMs && double.IsFinite(r.Expected));
    }

    /// <summary>What the model has in the vessel; of a level alone nothing follows, for the gravity may be what is off.</summary>
    private static TakenReading? Reckoned(LivePlant live, Reading reading, long nowMs)
    {
        if (reading.Kind != ReadingKind.Gravity)
            return null;
        var litres = Expectations.Of(live.Setting, live.Plant, ReadingKind.Volume, reading.Vessel);
        return new(0, nowMs, "", new Reading(ReadingKind.Volume, reading.Vessel, litres, ""), litres, []);
    }

    private static double ExtractKg(Reading one, Reading other, double celsius)
    {
        var (gravity, volume) = one.Kind == ReadingKind.Gravity ? (one, other) : (other, one);
        var plato = Math.Max(0, SugarSolution.PlatoFromSg(gravity.Value));
        return volume.Value * SugarSolution.DensityKgPerM3(plato, volume.AtC ?? celsius) / 1000 * plato / 100;
    }

    /// <summary>All that the charges of the day bring, as weighed. The strike and the weigh-in only name what goes in later.</summary>
    private static double MostKg(RunState state) => state.Steps
        .Where(s => s.Spec.Kind is not (StepKind.WeighIn or StepKind.HeatStrike) && s.Status != RunStatus.Skipped)
        .SelectMany(s => s.Spec.Charges)
        .Sum(c => c.ExtractKg);
}
