using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;
using CsCheck;

namespace BrewDeck.Tests.Waters;

public class WaterSolverTests
{
    private static readonly Gen<WaterIons> Tap = Gen.Select(
        Gen.Double[0, 150], Gen.Double[0, 30], Gen.Double[0, 60], Gen.Double[0, 80], Gen.Double[0, 120], Gen.Double[0, 300],
        (ca, mg, na, cl, so4, alk) => new WaterIons(ca, mg, na, cl, so4, alk));

    private static readonly Gen<Band> Wanted = Gen.Select(Gen.Double[0, 250], Gen.Double[0, 50], (from, wide) => new Band(from, from + wide));

    private static readonly Gen<WaterTarget> Targets =
        from calcium in Wanted.Nullable()
        from chloride in Wanted.Nullable()
        from sulphate in Wanted.Nullable()
        from ratio in Gen.Double[0.3, 4].Nullable()
        from ph in Gen.Double[5.2, 5.6].Nullable()
        from residual in Gen.Double[-80, 120].Nullable()
        from sparge in Gen.Double[5.4, 6].Nullable()
        select new WaterTarget
        {
            CalciumMgPerL = calcium,
            ChlorideMgPerL = chloride,
            SulphateMgPerL = sulphate,
            SulphateToChloride = ratio,
            MashPh = ph,
            ResidualAlkalinityAsCaCO3 = ph is null && residual is { } r ? new Band(r, r + 10) : null,
            SpargePh = sparge,
        };

    private static readonly Gen<(WaterSupply Supply, WaterTarget Target, WaterNeed Need)> Days =
        from ions in Tap
        from target in Targets
        from soft in Gen.Bool
        from acid in Gen.OneOf(Gen.Const((AcidOnHand?)null), Gen.Const((AcidOnHand?)Given.Lactic), Gen.Const((AcidOnHand?)new AcidOnHand(AcidKind.Phosphoric, 0.1)))
        from salts in Gen.Shuffle(Given.Shelf.ToArray()).Select(Gen.Int[0, 5], (all, n) => all[..n])
        from strike in Gen.Double[8, 60]
        from sparge in Gen.Double[0, 50]
        select (
            new WaterSupply { Source = new("tap", ions, 7.4), Soft = soft ? SourceWater.Distilled : null, Acid = acid, Salts = [.. salts] },
            target, new WaterNeed(strike, 0.9 * strike, sparge < 5 ? 0 : sparge, 0.7 * strike + sparge, Given.PaleGrist));

    /// <summary>What is in the treated water is what came with the tap, the soft water and the salts, less what the acid took.</summary>
    [Fact]
    public void Ions_balance() => Days.Sample(d =>
    {
        var treated = WaterSolver.Treat(d.Supply, d.Target, d.Need);
        foreach (var dose in treated.Doses())
        {
            var share = dose.SoftL / dose.VolumeL;
            double Balance(Ion ion, double tap) => (1 - share) * tap
                + dose.Salts.Sum(s => BrewingSalts.IonMgPerL(s.Salt, ion, s.MassG, dose.VolumeL));
            var tap = d.Supply.Source.Ions;
            Assert.Equal(Balance(Ion.Calcium, tap.CalciumMgPerL), dose.Ions.CalciumMgPerL, 1e-6);
            Assert.Equal(Balance(Ion.Magnesium, tap.MagnesiumMgPerL), dose.Ions.MagnesiumMgPerL, 1e-6);
            Assert.Equal(Balance(Ion.Sodium, tap.SodiumMgPerL), dose.Ions.SodiumMgPerL, 1e-6);
            Assert.Equal(Balance(Ion.Chloride, tap.ChlorideMgPerL), dose.Ions.ChlorideMgPerL, 1e-6);
            Assert.Equal(Balance(Ion.Sulphate, tap.SulphateMgPerL), dose.Ions.SulphateMgPerL, 1e-6);
            var ph = dose == treated.Strike ? d.Target.MashPh ?? 5.4 : d.Target.SpargePh ?? 5.4;
            var bicarbonate = Balance(Ion.Bicarbonate, Ions.EquivalentMass(Ion.Bicarbonate) * tap.AlkalinityAsCaCO3 / WaterChemistry.CaCO3MgPerMEq);
            var taken = dose.Acid is { } acid ? acid.VolumeMl * d.Supply.Acid!.MEqPerMl(ph) / dose.VolumeL : 0;
            Assert.Equal(
                WaterChemistry.AlkalinityAsCaCO3(bicarbonate) - WaterChemistry.CaCO3MgPerMEq * taken, dose.Ions.AlkalinityAsCaCO3, 1e-6);
        }
    }, iter: 300);

    /// <summary>Hundreds of any waters and targets, all five salts, soft water and acid at once.</summary>
    [Fact]
    public void The_search_comes_to_its_end()
    {
        var most = 0;
        Days.Sample(d =>
        {
            var supply = d.Supply with { Salts = Given.Shelf, Soft = SourceWater.Distilled, Acid = Given.Lactic };
            var blend = WaterSolver.StrikeBlend(supply, d.Target, d.Need);
            blend.Whole();
            most = Math.Max(most, blend.Nodes);
        }, iter: 1000, threads: 1);
        TestContext.Current.TestOutputHelper?.WriteLine($"most nodes {most}");
        Assert.InRange(most, 1, Blend.MostNodes);
    }

    [Fact]
    public void Amounts_are_what_scale_and_syringe_show_and_salts_are_those_on_hand() => Days.Sample(d =>
    {
        var treated = WaterSolver.Treat(d.Supply, d.Target, d.Need);
        Assert.InRange(treated.SoftShare, 0, d.Supply.Soft is null ? 0 : 1);
        foreach (var dose in treated.Doses())
        {
            Assert.All(dose.Salts, s => Assert.True(s.MassG > 0 && Whole(s.MassG / 0.1) && d.Supply.Salts.Contains(s.Salt), $"{s}"));
            Assert.True(dose.Acid is null || (d.Supply.Acid is not null && dose.Acid.VolumeMl > 0 && Whole(dose.Acid.VolumeMl / 0.1)));
            Assert.Equal(treated.SoftShare * dose.VolumeL, dose.SoftL, 1e-9);
        }
    }, iter: 300);

    [Fact]
    public void A_target_that_states_nothing_changes_nothing()
    {
        var treated = WaterSolver.Treat(Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic), WaterTarget.Nothing, Given.Need);
        Assert.All(treated.Doses(), d => Assert.True(d.IsEmpty && d.SoftL == 0 && d.Ions == Given.Tap.Ions));
    }

    /// <summary>IUPAC atomic weights: 3 g of gypsum in 20 L bring 34.92 mg/L of calcium and 83.69 mg/L of sulphate.</summary>
    [Fact]
    public void Three_grams_of_gypsum_in_twenty_litres_are_found_again()
    {
        var target = new WaterTarget { CalciumMgPerL = new(34.92, 34.92), SulphateMgPerL = new(83.69, 83.69) };
        var treated = WaterSolver.Treat(Given.Supply(Given.Empty), target, new WaterNeed(20, 18, 0, 12, Given.PaleGrist));
        Assert.Equal([new SaltDose(BrewingSalt.Gypsum, 3.0)], treated.Strike.Salts);
    }

    /// <summary>Carbonate equilibrium, closed: 2.601 mEq/L bring water of 150 mg/L as CaCO3 from pH 7.5 to 5.5.</summary>
    [Fact]
    public void Sparge_liquor_gets_the_acid_that_the_equilibrium_asks_for()
    {
        var source = new SourceWater("tap", new(60, 0, 0, 0, 0, 150), 7.5);
        var treated = WaterSolver.Treat(Given.Supply(source, acid: new(AcidKind.Phosphoric, 0.1)), new WaterTarget { SpargePh = 5.5 }, new(30, 24, 100, 100, Given.PaleGrist));
        var mEqPerMl = Acids.MmolPerMl(0.1, 1.053, Acids.PhosphoricGPerMol) * Acids.PhosphoricProtons(5.5);
        Assert.Equal(260.1 / mEqPerMl, treated.Sparge!.Acid!.VolumeMl, 0.3);
        Assert.Null(treated.Strike.Acid);
    }

    /// <summary>A brewing-supply page: 0.17 mL of 88 % lactic acid takes 100 mg/L of alkalinity from a litre (±2).</summary>
    [Fact]
    public void Alkalinity_of_sparge_liquor_is_taken_by_the_printed_amount_of_lactic_acid()
    {
        var source = new SourceWater("tap", new(60, 0, 0, 0, 0, 150), 7.5);
        var treated = WaterSolver.Treat(
            Given.Supply(source, acid: new(AcidKind.Lactic, 0.88)), new WaterTarget { SpargeAlkalinityAsCaCO3 = 50 }, new(30, 24, 100, 100, Given.PaleGrist));
        Assert.InRange(treated.Sparge!.Acid!.VolumeMl, 17 * 0.98, 17 * 1.06);
        Assert.Equal(50, treated.Sparge.Ions.AlkalinityAsCaCO3, 0.5);
    }

    [Fact]
    public void With_acid_on_hand_the_mash_pH_is_met_and_the_ions_are_in_their_bands()
    {
        var treated = WaterSolver.Treat(Given.Supply(acid: Given.Lactic), Given.Pale, Given.Need);
        Assert.Equal(5.4, treated.MashPh, 0.01);
        var ions = treated.Strike.Ions;
        Assert.InRange(ions.ChlorideMgPerL, 49, 71);
        Assert.InRange(ions.SulphateMgPerL, 139, 181);
        Assert.InRange(ions.CalciumMgPerL, 70, 121);
    }

    [Fact]
    public void A_pale_mash_needs_acid_and_a_black_one_baking_soda()
    {
        var soft = new SourceWater("soft", new(30, 3, 10, 15, 20, 30), 7);
        var pale = WaterSolver.Treat(Given.Supply(soft, acid: Given.Lactic), Given.Pale, Given.Need);
        var black = WaterSolver.Treat(Given.Supply(soft, acid: Given.Lactic), Given.Pale with { SodiumMgPerL = null, MashPh = 5.5 }, Given.Need with
        {
            Grist = [Given.Malt(6, 6), Given.Malt(1, 150), Given.Malt(1.2, 1300)],
        });
        Assert.NotNull(pale.Strike.Acid);
        Assert.DoesNotContain(pale.Strike.Salts, s => s.Salt == BrewingSalt.BakingSoda);
        Assert.Null(black.Strike.Acid);
        Assert.Contains(black.Strike.Salts, s => s.Salt == BrewingSalt.BakingSoda);
        Assert.DoesNotContain(black.Sparge!.Salts, s => s.Salt == BrewingSalt.BakingSoda);
        Assert.Equal(5.5, black.MashPh, 0.02);
    }

    [Fact]
    public void What_salts_cannot_lower_soft_water_does()
    {
        var hard = Given.Tap with { Ions = Given.Tap.Ions with { SulphateMgPerL = 240, SodiumMgPerL = 90 } };
        var target = new WaterTarget { SulphateMgPerL = new(40, 60), SodiumMgPerL = new(0, 25), CalciumMgPerL = new(50, 70) };
        Assert.Equal(0, WaterSolver.Treat(Given.Supply(hard), target, Given.Need).SoftShare);
        var treated = WaterSolver.Treat(Given.Supply(hard, SourceWater.Distilled), target, Given.Need);
        Assert.InRange(treated.SoftShare, 0.7, 0.8);
        Assert.InRange(treated.Strike.Ions.SulphateMgPerL, 40, 65);
        Assert.InRange(treated.Strike.Ions.CalciumMgPerL, 49, 71);
    }

    [Fact]
    public void Residual_alkalinity_and_ratio_are_a_target_of_their_own()
    {
        var target = new WaterTarget { ResidualAlkalinityAsCaCO3 = new(-10, 10), SulphateToChloride = 2, CalciumMgPerL = new(90, 130) };
        var treated = WaterSolver.Treat(Given.Supply(acid: Given.Lactic), target, Given.Need);
        Assert.InRange(treated.Strike.Ions.ResidualAlkalinityAsCaCO3, -12, 12);
        Assert.Equal(2, treated.Strike.Ions.SulphateToChloride!.Value, 0.1);
    }

    [Fact]
    public void A_target_past_all_measure_stays_near_what_is_safe()
    {
        // much residual alkalinity is to go and only calcium salts are there: the safe range holds them back
        var target = new WaterTarget { ResidualAlkalinityAsCaCO3 = new(-150, -150) };
        var salts = new WaterSupply { Source = Given.Tap, Salts = [BrewingSalt.Gypsum, BrewingSalt.CalciumChlorideDihydrate] };
        var ions = WaterSolver.Treat(salts, target, Given.Need).Strike.Ions;
        Assert.InRange(ions.CalciumMgPerL, 150, 1.1 * SafeWater.CalciumMgPerL);
        Assert.InRange(ions.SulphateMgPerL, 0, SafeWater.SulphateMgPerL);
        Assert.InRange(ions.ChlorideMgPerL, 0, SafeWater.ChlorideMgPerL);
    }

    [Fact]
    public void Acid_and_alkaline_salts_are_never_given_together() => Days.Sample(d =>
    {
        var supply = d.Supply with { Salts = Given.Shelf, Acid = Given.Lactic };
        var strike = WaterSolver.Treat(supply, d.Target, d.Need).Strike;
        Assert.True(strike.Acid is null || strike.Salts.All(s => s.Salt != BrewingSalt.BakingSoda), $"{strike}");
    }, iter: 300);

    /// <summary>Alone, lactic acid has to do it; with soft water beside it, it stays below what is tasted.</summary>
    [Fact]
    public void Soft_water_takes_over_from_acid_that_would_be_tasted()
    {
        double Lactate(WaterTreatment treated) => treated.Strike.Acid!.VolumeMl * Given.Lactic.MmolPerMl * Given.Lactic.GramsPerMol;
        var target = new WaterTarget { MashPh = 5.3 };
        var alone = WaterSolver.Treat(Given.Supply(acid: Given.Lactic), target, Given.Need);
        var beside = WaterSolver.Treat(Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic), target, Given.Need);
        var untasted = SafeWater.LactateMgPerL * 40 * 30 / 55;
        Assert.True(Lactate(alone) > untasted);
        Assert.True(Lactate(beside) <= untasted);
        Assert.InRange(beside.SoftShare, 0.2, 0.9);
        Assert.Equal(5.3, beside.MashPh, 0.02);
    }

    /// <summary>Sparge liquor is acidified by itself; salts must not be driven up to lower its residual alkalinity.</summary>
    [Fact]
    public void Carbonates_of_the_sparge_liquor_are_left_to_acid()
    {
        var target = new WaterTarget { CalciumMgPerL = new(50, 100), ResidualAlkalinityAsCaCO3 = new(50, 60), SpargeAlkalinityAsCaCO3 = 60 };
        var sparge = WaterSolver.Treat(Given.Supply(acid: Given.Lactic), target, Given.Need).Sparge!;
        Assert.Empty(sparge.Salts);
        Assert.Equal(60, sparge.Ions.AlkalinityAsCaCO3, 1.0);
    }

    [Fact]
    public void A_salt_that_hardly_helps_is_not_weighed()
    {
        // a little more chloride than the calcium chloride for the calcium brings: not worth a second salt
        var target = new WaterTarget { CalciumMgPerL = new(60, 60), ChlorideMgPerL = new(106.7, 106.7) };
        var treated = WaterSolver.Treat(Given.Supply(Given.Empty), target, Given.Need);
        Assert.Equal(BrewingSalt.CalciumChlorideDihydrate, Assert.Single(treated.Strike.Salts).Salt);
    }

    [Fact]
    public void More_sulphate_wanted_is_never_less_sulphate_given() =>
        Monotone(so4 => new WaterTarget { SulphateMgPerL = new(so4, so4), ChlorideMgPerL = new(50, 60) }, i => i.SulphateMgPerL, 60, 300);

    [Fact]
    public void Less_residual_alkalinity_wanted_is_never_more_given() =>
        Monotone(ra => new WaterTarget { ResidualAlkalinityAsCaCO3 = new(ra, ra) }, i => i.ResidualAlkalinityAsCaCO3, -60, 150);

    [Fact]
    public void A_lower_mash_pH_never_takes_less_acid()
    {
        var last = double.PositiveInfinity;
        for (var ph = 5.2; ph <= 5.8; ph += 0.05)
        {
            var acid = WaterSolver.Treat(Given.Supply(acid: Given.Lactic), new WaterTarget { MashPh = ph }, Given.Need).Strike.Acid?.VolumeMl ?? 0;
            Assert.True(acid <= last, $"{acid} mL for pH {ph}, {last} before");
            last = acid;
        }
        Assert.True(last < 10);
    }

    private static void Monotone(Func<double, WaterTarget> target, Func<WaterIons, double> of, double from, double to)
    {
        var values = Enumerable.Range(0, 25).Select(i => target(from + i * (to - from) / 24))
            .Select(t => of(WaterSolver.Treat(Given.Supply(acid: Given.Lactic), t, Given.Need).Strike.Ions)).ToList();
        // a step of the scale is about 2 mg/L here
        Assert.All(values.Zip(values.Skip(1)), p => Assert.True(p.Second >= p.First - 2.1, $"{p.First} then {p.Second}"));
        Assert.True(values[^1] > values[0] + 100);
    }

    private static bool Whole(double number) => Math.Abs(number - Math.Round(number)) < 1e-6;
}
