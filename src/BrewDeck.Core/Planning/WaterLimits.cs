using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

/// <summary>The treated water held against what is safe and usual. These warn, they never refuse a day: beer can be made of it.</summary>
internal static class WaterLimits
{
    public static bool Has(Limit limit) => LimitName.InWater(limit.Name) is not null;

    public static ImmutableArray<Limit> Of(WaterTreatment water, double batchL)
    {
        Limit Most(string ion, Func<WaterIons, double> of, double bound) =>
            new(LimitName.OfWater(ion), water.Doses().Max(d => of(d.Ions)), bound, "mg/L");
        return
        [
            new(LimitName.AnalysisImbalance, 100 * water.Supply.Source.Imbalance, 100 * SafeWater.Imbalance, "%"),
            Most("calcium", i => i.CalciumMgPerL, SafeWater.CalciumMgPerL),
            Most("magnesium", i => i.MagnesiumMgPerL, SafeWater.MagnesiumMgPerL),
            Most("sodium", i => i.SodiumMgPerL, SafeWater.SodiumMgPerL),
            Most("chloride", i => i.ChlorideMgPerL, SafeWater.ChlorideMgPerL),
            Most("sulphate", i => i.SulphateMgPerL, SafeWater.SulphateMgPerL),
            .. Lactate(water, batchL),
            new(LimitName.MashPhLow, water.MashPh, WaterChemistry.MashPhLow, "", AtMost: false),
            new(LimitName.MashPhHigh, water.MashPh, WaterChemistry.MashPhHigh, ""),
        ];
    }

    /// <summary>All the lactic acid that goes in, spread over the wort.</summary>
    private static IEnumerable<Limit> Lactate(WaterTreatment water, double batchL)
    {
        var acids = water.Doses().Select(d => d.Acid).OfType<AcidDose>().Where(a => a.Kind == AcidKind.Lactic).ToList();
        if (acids.Count == 0)
            yield break;
        var mg = acids.Sum(a => a.VolumeMl * new AcidOnHand(a.Kind, a.MassFraction).MmolPerMl) * Acids.LacticGPerMol;
        yield return new(LimitName.Lactate, mg / batchL, SafeWater.LactateMgPerL, "mg/L");
    }
}
