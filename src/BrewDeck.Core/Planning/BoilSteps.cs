using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>The boil, cut at each addition so that each has its own step at its own minute.</summary>
internal static class BoilSteps
{
    private const Cautions Boiling = Cautions.Scald | Cautions.Steam | Cautions.MainsNearWater;

    /// <summary>Minutes before knock-out at which the chiller may be sanitised; the first that no addition disturbs, and that leaves time to dig out the tun, is taken.</summary>
    private static readonly double[] SanitiseAt = [15, 20, 12, 25, 30, 10, .. Enumerable.Range(6, 50).Select(m => (double)m)];

    private const double AddMin = 1, SanitiseMin = 4;

    /// <summary>Digging out the tun takes this long.</summary>
    public const double DigOutMin = 20;

    /// <summary>The boil; with the grain dug out meanwhile where the additions leave time for it.</summary>
    public static List<StepSpec> Write(Recipe recipe, string kettle, StepSpec digOut)
    {
        var steps = new List<StepSpec>
        {
            Step("boil.heat", StepKind.HeatToBoil, kettle) with { HandsS = 120, Cautions = Boiling | Cautions.BoilOver | Cautions.DryFire },
            Step("boil.hot-break", StepKind.HotBreak, kettle) with { Minutes = 5, HandsS = 300, Cautions = Boiling | Cautions.BoilOver },
        };
        var marks = Marks(recipe);
        var sanitise = SanitiseMinute(recipe, marks);
        var cuts = Cuts(recipe, marks, sanitise);
        var digsFrom = DigsFrom(cuts, sanitise, marks);
        for (var i = 0; i < cuts.Count; i++)
        {
            steps.AddRange(AdditionsAt(marks, cuts[i], kettle));
            if (cuts[i] == sanitise)
                steps.Add(Sanitise(steps.Last(s => s.Vessel == kettle).Id));
            if (i + 1 == cuts.Count)
                break;
            steps.Add(Step($"boil.boil-{i + 1}", StepKind.Boil, kettle) with { Minutes = cuts[i] - cuts[i + 1], Cautions = Boiling });
            if (cuts[i] == digsFrom)
                steps.Add(digOut);
        }
        return steps;
    }

    private static List<(double Minutes, Charge Charge)> Marks(Recipe recipe) =>
    [
        .. recipe.Hops.Where(h => h.Use == HopUse.Boil).Select(h => (Math.Min(h.Minutes, recipe.BoilMin), RecipeFit.Charge(h))),
        .. recipe.Others.Where(o => o.Use == AdditionUse.Boil).Select(o => (Math.Min(o.Minutes, recipe.BoilMin), RecipeFit.Charge(o))),
        .. recipe.Grist.Where(g => g.Use == GristUse.Kettle).Select(g => (Math.Min(15, recipe.BoilMin), RecipeFit.Charge(g))),
    ];

    private static IEnumerable<StepSpec> AdditionsAt(List<(double Minutes, Charge Charge)> marks, double minute, string kettle)
    {
        var charges = marks.Where(m => m.Minutes == minute).Select(m => m.Charge).ToArray();
        if (charges.Length == 0)
            yield break;
        var id = FormattableString.Invariant($"boil.add-at-{minute:0.#}");
        yield return Step(id, StepKind.AddToBoil, kettle) with
        {
            Charges = [.. charges], Minutes = minute, HandsS = 60 * AddMin, Cautions = Boiling | Cautions.BoilOver,
        };
    }

    private static double SanitiseMinute(Recipe recipe, List<(double Minutes, Charge Charge)> marks)
    {
        bool Quiet(double minute) => minute < recipe.BoilMin && !marks.Any(m => m.Minutes < minute && m.Minutes > minute - 6);
        var quiet = SanitiseAt.Where(Quiet).DefaultIfEmpty(Math.Min(15, recipe.BoilMin)).ToList();
        var digs = quiet.Where(m => DigsFrom(Cuts(recipe, marks, m), m, marks) is not null).ToList();
        return digs.Count > 0 ? digs[0] : quiet[0];
    }

    /// <summary>Minutes before knock-out at which something goes in or the hands go to the chiller.</summary>
    private static List<double> Cuts(Recipe recipe, List<(double Minutes, Charge Charge)> marks, double sanitise) =>
    [
        .. marks.Select(m => m.Minutes).Append(sanitise).Append(recipe.BoilMin).Append(0).Distinct()
            .Where(m => m <= recipe.BoilMin).OrderDescending(),
    ];

    /// <summary>Minute of the longest piece of the boil in which the tun can be dug out before the hands are wanted again; null: in none.</summary>
    private static double? DigsFrom(List<double> cuts, double sanitise, List<(double Minutes, Charge Charge)> marks)
    {
        double Spare((double From, double To) piece) => piece.From - piece.To - DigOutMin
            - (marks.Any(m => m.Minutes == piece.From) ? AddMin : 0) - (piece.From == sanitise ? SanitiseMin : 0);
        var pieces = cuts.Zip(cuts.Skip(1)).Where(p => Spare(p) >= 0).ToList();
        return pieces.Count == 0 ? null : pieces.MaxBy(Spare).First;
    }

    private static StepSpec Sanitise(string after) => new()
    {
        Id = "boil.sanitise", AfterStepId = after, Kind = StepKind.SanitiseChiller, Unit = UnitProcedure.Boil, Minutes = SanitiseMin,
        HandsS = 60 * SanitiseMin,
        Cautions = Cautions.Scald | Cautions.Pressure,
    };

    private static StepSpec Step(string id, StepKind kind, string kettle) =>
        new() { Id = id, Kind = kind, Unit = UnitProcedure.Boil, Vessel = kettle };
}
