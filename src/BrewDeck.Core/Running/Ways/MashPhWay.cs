using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Acid or baking soda against the malts' buffers. Half of what the sum says: a mash that is overshot is worse than one that is off.</summary>
internal sealed class MashPhWay : Way
{
    /// <summary>What is wanted is known no better than this after a correction; common practice, no source.</summary>
    public const double ErrorPh = 0.08;

    /// <summary>Of the sum, so that it can be measured and done again: common practice, no source.</summary>
    private const double Share = 0.5;

    /// <summary>Farther off than this, something else is wrong: the meter, or the wrong salts.</summary>
    private const double MostPh = 0.6;

    /// <summary>What most brewers have, where nothing is said: lactic acid of 80 %.</summary>
    private static readonly AcidOnHand _usual = new(AcidKind.Lactic, 0.8);

    public override bool Helps(Off off) => off.Kind == OffKind.MashPh && Math.Abs(off.By) <= MostPh;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var rest = weigh.State.Step(off.About)!.Spec;
        var wanted = rest.ExpectedPh!.Value;
        var water = weigh.Live.Vessel(rest.Vessel).WaterKg;
        var grist = weigh.Plan.Recipe.Grist;
        var mEq = Share * water * (MashAcidity.ResidualAlkalinityFor(grist, water, wanted + off.By) - MashAcidity.ResidualAlkalinityFor(grist, water, wanted))
            / WaterChemistry.CaCO3MgPerMEq;
        var (kind, charge) = mEq > 0 ? Acid(weigh, mEq, wanted) : Soda(-mEq);
        var step = new StepSpec
        {
            Id = weigh.FreshId("ph"),
            Kind = StepKind.TreatMash,
            Unit = UnitProcedure.Mash,
            Vessel = rest.Vessel,
            Charges = [charge],
            HandsS = 120,
            Cautions = kind == RemedyKind.AddAcid ? Cautions.Acid : Cautions.None,
        };
        var after = rest with { ExpectedPh = wanted + (1 - Share) * off.By };
        return [Now(weigh, kind, charge.Amount, step, off.About) with { Replace = [after] }];
    }

    private static (RemedyKind Kind, Charge Charge) Acid(Weigh weigh, double mEq, double ph)
    {
        var acid = weigh.Plan.Choices.Water?.Acid ?? _usual;
        var name = acid.Kind.ToString();
        return (RemedyKind.AddAcid, new Charge(ChargeKind.Acid, name, mEq / acid.MEqPerMl(ph), "mL") { StrengthFraction = acid.MassFraction });
    }

    private static (RemedyKind Kind, Charge Charge) Soda(double mEq) =>
        (RemedyKind.AddSoda, new Charge(ChargeKind.Salt, nameof(BrewingSalt.BakingSoda), mEq * BrewingSalts.GramsPerMol(BrewingSalt.BakingSoda) / 1000, "g"));
}
