using BrewDeck.Core.Recipes;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Sensible recipes: ordinary to strong, one rest or three, hops anywhere.</summary>
internal static class AnyRecipe
{
    private static readonly Gen<GristLine> Malt =
        from kg in Gen.Double[3, 6]
        from extract in Gen.Double[0.76, 0.83]
        from moisture in Gen.Double[0.03, 0.055]
        from ebc in Gen.Double[3, 30]
        select new GristLine("malt", kg, extract, moisture, ebc, GristUse.Mash);

    private static readonly Gen<HopAddition> Hop =
        from grams in Gen.Double[10, 60]
        from alpha in Gen.Double[0.03, 0.14]
        from use in Gen.OneOf(HopUse.FirstWort, HopUse.Boil, HopUse.Boil, HopUse.Whirlpool)
        from minutes in Gen.Int[0, 60]
        select new HopAddition("hop", grams, alpha, HopForm.Pellet, use, minutes);

    private static readonly Gen<MashRest[]> OneRest =
        from celsius in Gen.Double[62, 69]
        from minutes in Gen.Int[30, 75]
        select new[] { new MashRest("rest", celsius, minutes) };

    private static readonly Gen<MashRest[]> ThreeRests =
        from low in Gen.Double[50, 64]
        from middle in Gen.Double[65, 72]
        from minutes in Gen.Int[10, 40].Array[2]
        select new[] { new MashRest("first", low, minutes[0]), new MashRest("second", middle, minutes[1]), new MashRest("mash-out", 76, 10) };

    public static readonly Gen<Recipe> SingleRest = Of(OneRest);

    public static readonly Gen<Recipe> StepMash = Of(ThreeRests);

    private static Gen<Recipe> Of(Gen<MashRest[]> rests) =>
        from malts in Malt.Array[1, 2]
        from sugarKg in Gen.Double[0, 0.6]
        from hops in Hop.Array[1, 4]
        from mash in rests
        from gravity in Gen.Double[1.036, 1.062]
        from bitterness in Gen.Double[12, 55]
        from boilMin in Gen.Int[60, 90]
        from wanted in Gen.Bool
        select new Recipe
        {
            Name = "any",
            BatchL = 24,
            OriginalGravitySg = wanted ? gravity : null,
            BitternessIbu = wanted ? bitterness : null,
            Grist = sugarKg > 0.3 ? [.. malts, new GristLine("sugar", sugarKg, 1, 0, 0, GristUse.Kettle)] : [.. malts],
            Rests = [.. mash],
            BoilMin = boilMin,
            // the first addition is one that any wanted bitterness can be had from
            Hops = [hops[0] with { Use = HopUse.Boil, Minutes = 60 }, .. hops[1..]],
            Others = [new OtherAddition("finings", 5, "g", AdditionUse.Boil, 10)],
            Yeast = new Yeast("yeast", 0.75, 19, 0.75),
        };
}
