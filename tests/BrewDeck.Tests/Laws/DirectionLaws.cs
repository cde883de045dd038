using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Which way a figure must move when one thing is changed.</summary>
public class DirectionLaws
{
    private const int Days = 20;

    /// <summary>A plan's times are worked out in steps of a minute here and there: this much is noise, s.</summary>
    private const double NoiseS = 5;

    /// <summary>
    /// Slower as the planner reckons it: a minute that a rest waits for heat counts twice. Of two orders it may take the longer day in
    /// which no rest waits, so the length alone does not follow the power.
    /// </summary>
    [Fact]
    public void More_power_is_never_slower() => Changed(
        d => d with { House = d.House with { Vessels = [.. d.House.Vessels.Select(Stronger)], Circuits = [.. d.House.Circuits.Select(c => c with { Amps = 2 * c.Amps })] } },
        (before, after) => Assert.InRange(Cost(after), 0, Cost(before) + NoiseS));

    /// <summary>
    /// Up to knock-out: what the kettle loses later the chiller need not take. In one and the same order of steps: with one circuit the
    /// liquor is all heated first while it fits the tank, and once a little more of it does not, another order can be quicker.
    /// </summary>
    [Fact]
    public void More_loss_is_never_faster() => Changed(
        d => d with { House = d.House with { Vessels = [.. d.House.Vessels.Select(v => v with { LossWPerK = 1.3 * v.LossWPerK })] } },
        (before, after) =>
        {
            if (Order(before).SequenceEqual(Order(after)))
                Assert.InRange(KnockOutS(after), KnockOutS(before) - NoiseS, double.MaxValue);
        });

    [Fact]
    public void Higher_up_wort_boils_cooler_and_takes_less_bitterness() => Changed(
        d => d with { Recipe = AsWritten(d.Recipe), Choices = d.Choices with { AltitudeM = 0 } },
        d => d with { Recipe = AsWritten(d.Recipe), Choices = d.Choices with { AltitudeM = 1500 } },
        (sea, high) =>
        {
            Assert.InRange(BoilC(high), 90, BoilC(sea) - 4);
            // first-wort hops that wait for hours in hot wort have given nearly all before it boils, at any height
            var most = sea.Recipe.Hops.Any(h => h.Use == HopUse.FirstWort) ? 1 - 1e-6 : 0.97;
            Assert.InRange(high.Totals.BitternessIbu, 0, sea.Totals.BitternessIbu * most);
        });

    /// <summary>A bed that washes evenly; one that mixes fully is drained better in two batches.</summary>
    [Fact]
    public void Fly_sparging_gets_more_than_batch_sparging_and_that_more_than_none()
    {
        static Day By(Day d, SpargeMethod sparge) => d with
        {
            House = d.House with { Habits = d.House.Habits with { SpargeStages = 3 } },
            Recipe = AsWritten(d.Recipe),
            Choices = d.Choices with { Sparge = sparge },
        };
        Changed(d => By(d, SpargeMethod.Fly), d => By(d, SpargeMethod.Batch),
            (fly, batch) =>
            {
                // a strong batch leaves next to nothing to sparge with: there both come to the same
                if (fly.Totals.SpargeWaterL > 0.6 * fly.Totals.StrikeWaterL)
                    Assert.InRange(batch.Totals.OriginalGravitySg, 1.001, fly.Totals.OriginalGravitySg - 1e-4);
            });
        Changed(d => By(d, SpargeMethod.Batch), d => By(d, SpargeMethod.None),
            (batch, none) => Assert.InRange(none.Totals.OriginalGravitySg, 1.001, batch.Totals.OriginalGravitySg - 1e-4));
    }

    [Fact]
    public void A_thicker_mash_takes_less_strike_liquor_and_more_sparge_liquor_in_all_as_much() => Changed(
        d => Thick(d, 3.2), d => Thick(d, 2.6),
        (thin, thick) =>
        {
            Assert.InRange(thick.Totals.StrikeWaterL, 1, thin.Totals.StrikeWaterL * 0.9);
            Assert.InRange(thick.Totals.SpargeWaterL, thin.Totals.SpargeWaterL * 1.01, double.MaxValue);
            var all = thin.Totals.StrikeWaterL + thin.Totals.SpargeWaterL;
            Assert.InRange(thick.Totals.StrikeWaterL + thick.Totals.SpargeWaterL, 0.97 * all, 1.03 * all);
        });

    [Fact]
    public void Twice_the_recipe_for_twice_the_batch_is_the_same_plan() => AnyDay.Brewable.Sample(
        p =>
        {
            var twice = Scaled(p.Day.Recipe, 2);
            var plan = (p.Day with { Recipe = twice }).Plan();
            Assert.NotNull(plan);
            Assert.Equal(p.Plan.Totals.OriginalGravitySg, plan.Totals.OriginalGravitySg, 0.00001);
            Assert.Equal(p.Plan.Totals.BitternessIbu, plan.Totals.BitternessIbu, 0.01);
            Assert.Equal(p.Plan.Totals.StrikeWaterL, plan.Totals.StrikeWaterL, 0.01);
            Assert.Equal(p.Plan.Recipe.MashKg, plan.Recipe.MashKg, 0.002);
        },
        iter: Days);

    [Fact]
    public void A_larger_batch_of_the_same_beer_takes_more_of_everything() => Changed(
        d => d,
        d => d with { Choices = d.Choices with { BatchL = 1.08 * d.Choices.BatchL } },
        (less, more) =>
        {
            Assert.InRange(more.Recipe.MashKg, 1.02 * less.Recipe.MashKg, double.MaxValue);
            Assert.InRange(more.Totals.StrikeWaterL + more.Totals.SpargeWaterL, less.Totals.StrikeWaterL + less.Totals.SpargeWaterL + 0.5, double.MaxValue);
            Assert.InRange(more.Totals.PreBoilL, less.Totals.PreBoilL + 0.5, double.MaxValue);
        });

    /// <summary>Additions go in at their minute: no boil waits for hands that are busy elsewhere.</summary>
    [Fact]
    public void The_boil_goes_on_from_the_first_bubble_to_knock_out() => AnyDay.Brewable.Sample(
        p =>
        {
            var boil = p.Plan.Steps.Where(s => s.Spec.Vessel == "kettle" && s.Spec.Kind is StepKind.Boil or StepKind.AddToBoil or StepKind.KnockOut).ToList();
            foreach (var (one, next) in boil.Zip(boil.Skip(1)))
            {
                // what goes in last keeps the hands from the valve as long as it takes
                var hands = next.Spec.Kind == StepKind.KnockOut ? one.Spec.HandsS : 0;
                Assert.InRange(next.StartS - one.EndS, -1e-6, hands + 1e-6);
            }
        },
        iter: Days);

    private static Day Thick(Day d, double thickness) => d with
    {
        House = d.House with { Habits = d.House.Habits with { MashThicknessLPerKg = thickness } },
        Choices = d.Choices with { Sparge = SpargeMethod.Fly },
    };

    private static Vessel Stronger(Vessel v) => v with { Elements = [.. v.Elements.Select(e => e with { PowerW = 1.25 * e.PowerW })] };

    private static Recipe AsWritten(Recipe recipe) => recipe with { OriginalGravitySg = null, BitternessIbu = null };

    private static Recipe Scaled(Recipe recipe, double by) => recipe with
    {
        BatchL = by * recipe.BatchL,
        Grist = [.. recipe.Grist.Select(g => g with { MassKg = by * g.MassKg })],
        Hops = [.. recipe.Hops.Select(h => h with { MassG = by * h.MassG })],
        Others = [.. recipe.Others.Select(o => o with { Amount = by * o.Amount })],
    };

    private static double Cost(Plan plan) => Planner.Cost(PlantSetting.Of(plan.Brewhouse, plan.Choices), plan.Steps);

    private static IEnumerable<string> Order(Plan plan) => plan.Steps.Select(s => s.Spec.Id);

    private static double KnockOutS(Plan plan) => plan.Steps.First(s => s.Spec.Kind == StepKind.KnockOut).StartS;

    private static double BoilC(Plan plan) => plan.Steps.Last(s => s.Spec.Kind == StepKind.Boil).After.Vessels[2].TempC;

    private static void Changed(Func<Day, Day> change, Action<Plan, Plan> law) => Changed(d => d, change, law);

    /// <summary>Holds the law on days that can be brewed both ways; enough of them must be.</summary>
    private static void Changed(Func<Day, Day> one, Func<Day, Day> other, Action<Plan, Plan> law)
    {
        var (drawn, held) = (0, 0);
        AnyDay.All.Sample(
            d =>
            {
                Interlocked.Increment(ref drawn);
                if (one(d).Plan() is not { } before || other(d).Plan() is not { } after)
                    return;
                law(before, after);
                Interlocked.Increment(ref held);
            },
            iter: Days);
        Assert.InRange(held, drawn / 3, drawn);
    }
}
