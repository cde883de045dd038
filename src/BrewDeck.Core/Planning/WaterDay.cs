using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

/// <summary>Puts the treatment of the water on a run sheet: each treating step takes what its filling of the tank needs.</summary>
internal static class WaterDay
{
    /// <summary>Null without an analysis of the water, or without a step that treats it.</summary>
    public static WaterTreatment? Of(Batch batch, IReadOnlyList<StepSpec> sheet, DayChoices choices)
    {
        var treating = sheet.Where(s => s.Kind == StepKind.TreatWater).ToList();
        if (choices.Water is not { } supply || treating.Count == 0)
            return null;
        var fills = treating.Select(t => FillBefore(sheet, t)?.VolumeL ?? 0).ToList();
        var need = new WaterNeed(fills[0], batch.StrikeL, fills.Skip(1).Sum(), batch.Recipe.BatchL, batch.Recipe.Grist);
        return need.StrikeL > 0 ? WaterSolver.Treat(supply, Target(batch, choices), need) : null;
    }

    private static WaterTarget Target(Batch batch, DayChoices choices) =>
        choices.WaterTarget ?? batch.Recipe.Water ?? WaterTarget.Nothing;

    public static IReadOnlyList<StepSpec> OnSheet(IReadOnlyList<StepSpec> sheet, WaterTreatment? water)
    {
        if (water is null)
            return sheet;
        var doses = Doses(sheet, water);
        var soft = doses.Where(d => d.Value.SoftL > 0).Select(d => (Fill: FillBefore(sheet, d.Key), d.Value.SoftL)).ToList();
        var firstRest = sheet.FirstOrDefault(s => s.Kind == StepKind.Rest);
        return [.. sheet.Select((s, i) => s.Kind switch
        {
            StepKind.TreatWater when doses.TryGetValue(s, out var dose) => Treated(s, dose),
            StepKind.Fill when soft.Exists(f => f.Fill == s) => s with { Charges = [SoftWater(soft.First(f => f.Fill == s).SoftL)] },
            StepKind.WeighIn => WeighedIn(s, doses.Where(d => sheet.IndexOf(d.Key) > i)),
            StepKind.Rest when s == firstRest => s with { ExpectedPh = water.MashPh },
            _ => s,
        })];
    }

    private static Dictionary<StepSpec, WaterDose> Doses(IReadOnlyList<StepSpec> sheet, WaterTreatment water) =>
        sheet.Where(s => s.Kind == StepKind.TreatWater).Zip(water.Doses()).ToDictionary(p => p.First, p => p.Second);

    private static StepSpec? FillBefore(IReadOnlyList<StepSpec> sheet, StepSpec treat) =>
        sheet.TakeWhile(s => s != treat).LastOrDefault(s => s.Kind == StepKind.Fill);

    private static StepSpec Treated(StepSpec spec, WaterDose dose) => spec with
    {
        Charges = [.. Charges(dose)],
        Cautions = spec.Cautions | Of(dose),
    };

    /// <summary>What goes in before the weigh-in is weighed at its own step.</summary>
    private static StepSpec WeighedIn(StepSpec spec, IEnumerable<KeyValuePair<StepSpec, WaterDose>> later)
    {
        var doses = later.ToList();
        return spec with
        {
            Charges = [.. spec.Charges, .. doses.SelectMany(d => Charges(d.Value).Select(c => c with { ForStepId = d.Key.Id }))],
            Cautions = doses.Aggregate(spec.Cautions, (all, d) => all | Of(d.Value)),
        };
    }

    private static IEnumerable<Charge> Charges(WaterDose dose)
    {
        foreach (var salt in dose.Salts)
            yield return new(ChargeKind.Salt, salt.Salt.ToString(), salt.MassG, "g");
        if (dose.Acid is { } acid)
            yield return new(ChargeKind.Acid, acid.Kind.ToString(), acid.VolumeMl, "mL") { StrengthFraction = acid.MassFraction };
    }

    private static Charge SoftWater(double litres) => new(ChargeKind.SoftWater, "", litres, "L");

    private static Cautions Of(WaterDose dose) =>
        (dose.Acid is null ? Cautions.None : Cautions.Acid)
        | (dose.Salts.Any(s => s.Salt == BrewingSalt.SlakedLime) ? Cautions.Caustic : Cautions.None);

    private static int IndexOf(this IReadOnlyList<StepSpec> sheet, StepSpec spec)
    {
        for (var i = 0; i < sheet.Count; i++)
        {
            if (sheet[i] == spec)
                return i;
        }
        return -1;
    }
}
