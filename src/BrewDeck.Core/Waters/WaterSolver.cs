using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Waters;

/// <summary>What a day asks of its water.</summary>
/// <param name="StrikeL">First filling of the tank.</param>
/// <param name="MashL">What of it goes into the mash.</param>
/// <param name="SpargeL">Second filling; 0: none.</param>
/// <param name="WortL">Into the fermenter.</param>
public sealed record WaterNeed(double StrikeL, double MashL, double SpargeL, double WortL, ImmutableArray<GristLine> Grist);

/// <summary>Finds dilution, salts and acid that bring a water to its target.</summary>
public static class WaterSolver
{
    /// <summary>Dilution is measured out in twentieths: coarser than a sight glass, finer than it matters.</summary>
    private const double SoftStep = 0.05;

    // A mg/L of salt or of alkalinity taken by acid counts as a five-hundredth of one missed, a per cent of dilution as a fifth: soft
    // water is dear and slow, so salts and acid come first.
    private const double SaltReluctance = 0.002;
    private const double SoftReluctancePerShare = 20;

    /// <summary>A part of the treatment that brings all aims together less than this nearer is not worth weighing, (mg/L)².</summary>
    private const double Worthwhile = 1;

    /// <summary>pH at which acid is reckoned to give its protons where no pH is stated.</summary>
    private const double UsualPh = 5.4;

    /// <summary>Acid beyond this only spoils: ten times what the hardest tap asks for, mg/L as CaCO3.</summary>
    private const double MostAcidAsCaCO3 = 1000;

    private static readonly BrewingSalt[] Alkaline = [BrewingSalt.BakingSoda, BrewingSalt.Chalk, BrewingSalt.SlakedLime];

    /// <param name="need">With more than 0 L of strike liquor and more than 0 kg of grist in the mash.</param>
    public static WaterTreatment Treat(WaterSupply supply, WaterTarget target, WaterNeed need)
    {
        var (strike, softShare) = Strike(supply, target, need);
        var sparge = need.SpargeL > 0 ? Sparge(supply, target, need.SpargeL, softShare) : null;
        return new(supply, target, softShare, strike, sparge, MashAcidity.Ph(need.Grist, need.MashL, strike.Ions));
    }

    private static (WaterDose Dose, double SoftShare) Strike(WaterSupply supply, WaterTarget target, WaterNeed need)
    {
        // acid and alkaline salts undo each other: the better of the two ways is taken, never both
        var ways = new[] { supply with { Salts = supply.Salts.RemoveAll(Alkaline.Contains) }, supply with { Acid = null } };
        return ways.Take(target.AimsAtAlkalinity ? 2 : 1).Select(s => StrikeWith(s, target, need)).MinBy(w => w.Cost).Way;
    }

    private static (double Cost, (WaterDose Dose, double SoftShare) Way) StrikeWith(WaterSupply supply, WaterTarget target, WaterNeed need)
    {
        var blend = StrikeBlend(supply, target, need);
        var steps = blend.Whole(Worthwhile);
        var share = supply.Soft is null ? 0 : steps[^1] * SoftStep;
        var dose = Dose(supply, [.. supply.Salts], supply.Acid, need.StrikeL, share, steps, blend.Ions(steps));
        return (blend.Cost(steps), (dose, share));
    }

    /// <summary>Salts, then acid, then soft water.</summary>
    internal static Blend StrikeBlend(WaterSupply supply, WaterTarget target, WaterNeed need)
    {
        var parts = Parts(supply, [.. supply.Salts], supply.Acid, need.StrikeL, target.MashPh ?? UsualPh, supply.Soft is null ? null : need);
        if (supply.Soft is { } soft)
            parts.Add(new(SoftStep * (soft.Ions + -1 * supply.Source.Ions), Math.Round(1 / SoftStep), SoftStep * SoftReluctancePerShare));
        return new(supply.Source.Ions, parts, WaterAim.Strike(target, supply.Source.Ions, Residual(target, need)));
    }

    private static Band? Residual(WaterTarget target, WaterNeed need)
    {
        if (target.MashPh is not { } ph)
            return target.ResidualAlkalinityAsCaCO3;
        var wanted = MashAcidity.ResidualAlkalinityFor(need.Grist, need.MashL, ph);
        return new(wanted, wanted);
    }

    private static WaterDose Sparge(WaterSupply supply, WaterTarget target, double litres, double softShare)
    {
        var salts = supply.Salts.Where(s => !Alkaline.Contains(s)).ToList();
        var byItself = target.SpargePh is not null || target.SpargeAlkalinityAsCaCO3 is not null;
        var acid = byItself || !target.AimsAtAlkalinity ? null : supply.Acid;
        var start = supply.Source.Ions;
        if (supply.Soft is { } soft)
            start = (1 - softShare) * start + softShare * soft.Ions;
        var blend = new Blend(start, Parts(supply, salts, acid, litres, UsualPh, null), WaterAim.Sparge(target, start, acid is not null));
        var steps = blend.Whole(Worthwhile);
        var dose = Dose(supply, salts, acid, litres, softShare, steps, blend.Ions(steps));
        return byItself && supply.Acid is { } stated ? Acidified(dose, supply, target, stated, softShare) : dose;
    }

    /// <param name="untasted">Where soft water can take over, lactic acid stays below what is tasted in this day's wort; null: it need not.</param>
    private static List<BlendPart> Parts(
        WaterSupply supply, List<BrewingSalt> salts, AcidOnHand? acid, double litres, double ph, WaterNeed? untasted)
    {
        var saltStep = supply.ScaleG / litres;
        var parts = salts.Select(s => new BlendPart(
            WaterIons.Of(s, saltStep), double.PositiveInfinity, SaltReluctance * 1000 * saltStep)).ToList();
        if (acid is not null)
        {
            var step = WaterIons.OfAcid(AcidOnHand.ResolutionMl * acid.MEqPerMl(ph) / litres);
            var takes = -step.AlkalinityAsCaCO3;
            var most = untasted is null ? MostAcidAsCaCO3 / takes : UntastedMl(acid, litres, untasted) / AcidOnHand.ResolutionMl;
            parts.Add(new(step, Math.Floor(most), SaltReluctance * takes));
        }
        return parts;
    }

    /// <summary>This filling's share, by volume, of the lactic acid that stays untasted.</summary>
    private static double UntastedMl(AcidOnHand acid, double litres, WaterNeed need) => acid.Kind == AcidKind.Lactic
        ? SafeWater.LactateMgPerL * need.WortL * litres / (need.StrikeL + need.SpargeL) / (acid.MmolPerMl * acid.GramsPerMol)
        : double.PositiveInfinity;

    private static WaterDose Dose(
        WaterSupply supply, List<BrewingSalt> salts, AcidOnHand? acid, double litres, double softShare, double[] steps, WaterIons ions)
    {
        var doses = salts.Select((s, i) => new SaltDose(s, Tidy(steps[i] * supply.ScaleG))).Where(d => d.MassG > 0);
        return new(litres, softShare * litres, [.. doses], acid is null ? null : Measured(acid, steps[salts.Count]), ions);
    }

    /// <summary>The sparge liquor's own pH or alkalinity, which salts do not move.</summary>
    private static WaterDose Acidified(
        WaterDose dose, WaterSupply supply, WaterTarget target, AcidOnHand acid, double softShare)
    {
        var mEqPerL = target.SpargePh is { } ph
            ? (1 - softShare) * ToPh(supply.Source, ph) + softShare * (supply.Soft is { } soft ? ToPh(soft, ph) : 0)
            : (dose.Ions.AlkalinityAsCaCO3 - target.SpargeAlkalinityAsCaCO3!.Value) / WaterChemistry.CaCO3MgPerMEq;
        var strength = acid.MEqPerMl(target.SpargePh ?? UsualPh);
        var steps = Math.Round(Math.Max(0, mEqPerL) * dose.VolumeL / strength / AcidOnHand.ResolutionMl);
        return dose with
        {
            Acid = Measured(acid, steps),
            Ions = dose.Ions + WaterIons.OfAcid(steps * AcidOnHand.ResolutionMl * strength / dose.VolumeL),
        };
    }

    // alkalinity and dissolved carbonate both mix by volume, so the acid for a mixture is that for its shares
    private static double ToPh(SourceWater water, double ph) =>
        ph < water.Ph ? WaterChemistry.AcidMEqPerL(water.Ions.AlkalinityAsCaCO3, water.Ph, ph) : 0;

    private static AcidDose? Measured(AcidOnHand acid, double steps) =>
        steps > 0 ? new(acid.Kind, acid.MassFraction, Tidy(steps * AcidOnHand.ResolutionMl)) : null;

    /// <summary>0.3, not 0.30000000000000004.</summary>
    private static double Tidy(double amount) => Math.Round(amount, 9);
}
