using BrewDeck.Core.Recipes;
using CsCheck;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>Any recipe that a file may hold, with odd names and numbers of many digits.</summary>
internal static class AnyRecipe
{
    private static readonly Gen<string> Name =
        Gen.OneOf("pale", "Hallertau Mittelfrüh", "a \"quoted\" name", "back\\slash", "#5", "tab\there", "雨", "x = [1]", "'", "&<b>").Array[1, 2].Select(a => string.Join(" ", a));

    private static readonly Gen<GristLine> Mashed = Gen.Select(Name, Gen.Double[0.01, 900], Share(0.3, 1), Share(0, 0.2), Gen.Double[0, 1900],
        (n, kg, e, m, c) => new GristLine(n, kg, e, m, c, GristUse.Mash));

    private static readonly Gen<GristLine> Grist = Gen.Select(Mashed, Gen.Bool, (g, kettle) => g with { Use = kettle ? GristUse.Kettle : GristUse.Mash });

    private static readonly Gen<HopAddition> Hop = Gen.Select(Name, Gen.Double[0.02, 900], Share(0, 0.25), Gen.Enum<HopForm>(), Gen.Enum<HopUse>(), Gen.Int[0, 60],
        (n, g, a, f, u, min) => new HopAddition(n, g, a, f, u, min));

    private static readonly Gen<OtherAddition> Other = Gen.Select(Name, Gen.Double[0.01, 900], Gen.OneOf("g", "mL", "each"), Gen.Enum<AdditionUse>(), Gen.Int[0, 60],
        (n, a, unit, u, min) => new OtherAddition(n, a, unit, u, u == AdditionUse.Mash ? 0 : min));

    private static readonly Gen<Yeast> Yeast = Gen.Select(Name, Share(0.4, 0.95), Gen.Double[2, 40], Gen.OneOf(0.75, 1.5),
        (n, a, c, rate) => new Yeast(n, a, c, rate));

    private static readonly Gen<MashRest[]> Rests = Gen.Select(Name, Gen.Double[21, 84], Gen.Int[1, 700], (n, c, min) => new MashRest(n, c, min))
        .Array[1, 5].Select(rests => rests.OrderBy(r => r.TempC).ToArray());

    public static readonly Gen<Recipe> Any = Gen.Select(
        Gen.Select(Name, Gen.OneOf(Name, Gen.Const("")), Gen.Double[1, 1900], Gen.Double[1.006, 1.19], Gen.Int[60, 400], Gen.Bool),
        Gen.Select(Mashed, Grist.Array[0, 4], Rests, Hop.Array[0, 6], Other.Array[0, 3], Yeast),
        (head, body) => new Recipe
        {
            Name = head.Item1,
            Author = head.Item2,
            Style = head.Item2,
            Notes = head.Item2.Length > 0 ? $"{head.Item2}\n\"\"\" second line \\ \r\n" : "",
            BatchL = head.Item3,
            OriginalGravitySg = head.Item6 ? Math.Round(head.Item4, 5) : null,
            BitternessIbu = head.Item6 ? null : head.Item3 % 200,
            MashThicknessLPerKg = head.Item6 ? null : 2 + head.Item3 % 6,
            Grist = [body.Item1, .. body.Item2],
            Rests = [.. body.Item3],
            BoilMin = head.Item5,
            Hops = [.. body.Item4],
            Others = [.. body.Item5],
            StandMin = head.Item5 % 100,
            Yeast = body.Item6,
        });

    private static Gen<double> Share(double least, double most) => Gen.Double[least, most].Select(v => Math.Round(v, 6));
}
