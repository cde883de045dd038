using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>A recipe moved between two brewhouses that can both brew it.</summary>
public class ScalingLaws
{
    private sealed record Move(Day Day, Brewhouse To, double BatchL, KeptFigures Keep)
    {
        public Scaling? Scaled() => RecipeScaling.Of(Day.House, To, Day.Recipe, Keep, Day.Choices, BatchL);

        public override string ToString() => $"{Keep}, {BatchL:0.#} L\n{To.Habits}\n{Day}";
    }

    private static readonly Gen<Move> All =
        from day in AnyDay.All
        from to in AnyBrewhouse.All
        from recipe in AnyRecipe.SingleRest
        from share in Gen.Double[0.35, 0.55]
        from keep in Gen.Int[0, (int)KeptFigures.All]
        select new Move(day with { Recipe = recipe }, to, share * to.Kettle.WorkingL, (KeptFigures)keep);

    private static readonly Gen<(Move Move, Scaling There)> Brewable =
        All.Select(m => (Move: m, There: m.Scaled())).Where(x => x.There is { } s && s.Old.Failed.IsEmpty && s.New.Failed.IsEmpty).Select(x => (x.Move, x.There!));

    /// <summary>Where all was kept that was asked for: back from a beer of another colour there is another recipe.</summary>
    [Fact]
    public void There_and_back_is_the_same_recipe() => Brewable.Where(x => !x.There.Missed.HasFlag(KeptFigures.Colour)).Sample(
        x =>
        {
            var ((day, _, _, keep), there) = x;
            var batchL = there.Old.Recipe.BatchL;
            var back = RecipeScaling.Of(there.New.House, day.House, there.New.Recipe, keep, day.Choices with { BatchL = there.New.Recipe.BatchL }, batchL)!;
            Assert.Equal(batchL, back.New.Recipe.BatchL, 1e-9);
            Same(there.Old.Recipe.Grist.Select(g => g.MassKg), back.New.Recipe.Grist.Select(g => g.MassKg));
            Same(there.Old.Recipe.Hops.Select(h => h.MassG), back.New.Recipe.Hops.Select(h => h.MassG));
            Same(there.Old.Recipe.Others.Select(o => o.Amount), back.New.Recipe.Others.Select(o => o.Amount));
        },
        iter: 12);

    [Fact]
    public void What_is_kept_is_what_the_planner_foresees_on_the_new_brewhouse() => Brewable.Sample(
        x =>
        {
            var ((day, to, batchL, keep), there) = x;
            var old = there.Old.Day.Totals;
            var drawn = Assert.IsType<PlanResult.Drawn>(Planner.Draw(to, there.New.Recipe, day.Choices with { BatchL = batchL })).Plan;
            Assert.Equal(batchL, drawn.Totals.FermenterL, 0.002);
            if (keep.HasFlag(KeptFigures.Gravity))
                Assert.Equal(old.OriginalGravitySg, drawn.Totals.OriginalGravitySg, 0.00001);
            if (keep.HasFlag(KeptFigures.Bitterness))
                Assert.Equal(old.BitternessIbu, drawn.Totals.BitternessIbu, 0.01);
            if (there.Kept.HasFlag(KeptFigures.Colour))
                Assert.Equal(old.ColourEbc, drawn.Totals.ColourEbc, 0.002 * old.ColourEbc);
            if (keep.HasFlag(KeptFigures.Ratio) && day.Choices.Sparge != SpargeMethod.None)
                Assert.Equal(there.Old.RatioLPerKg, drawn.Totals.StrikeWaterL / drawn.Recipe.MashKg, 0.001);
            Assert.Equal(KeptFigures.None, there.Missed & (KeptFigures.Gravity | KeptFigures.Bitterness));
        },
        iter: 12);

    /// <summary>A gravity that the planner meets to 0.00001 leaves the grist of a strong wort with next to no sparge to 5 in 10,000 (seen: 0.000003 and 4.8).</summary>
    private static void Same(IEnumerable<double> expected, IEnumerable<double> actual) =>
        Assert.All(expected.Zip(actual), pair => Assert.Equal(1, pair.Second / pair.First, 1e-3));
}
