using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>The boil, cut at each addition so that each has its own step at its own minute.</summary>
internal static class BoilSteps
{
    private const Cautions Boiling = Cautions.Scald | Cautions.Steam | Cautions.MainsNearWater;

    /// <summary>Minutes before knock-out at which the chiller may be sanitised; the first that no addition disturbs is taken.</summary>
    private static readonly double[] SanitiseAt = [15, 20, 12, 25, 30, 10, .. Enumerable.Range(6, 50).Select(m => (double)m)];

    /// <summary>
    /// Minutes before knock-out at which sugar and extract may go in (10 to 15 are common practice); the first at which neither they nor another addition has to wait is taken.
    /// </summary>
    private static readonly double[] SugarAt = [15, 12, 17, 10, 20, 22, 8, 25];

    /// <summary>Hands that stir it in have no hops in them.</summary>
    private const double SugarMin = 2, HopMin = 1;

    /// <summary>Digging out the tun wants this long without an addition.</summary>
    public const double DigOutMin = 20;

    public static List<StepSpec> Write(Recipe recipe, string kettle, StepSpec digOut)
    {
        var steps = new List<StepSpec>
        {
            Step("boil.heat", StepKind.HeatToBoil, kettle) with { HandsS = 120, Cautions = Boiling | Cautions.BoilOver | Cautions.DryFire },
            Step("boil.hot-break", StepKind.HotBreak, kettle) with { Minutes = 5, HandsS = 300, Cautions = Boiling | Cautions.BoilOver },
        };
        var marks = Marks(recipe);
        var (digOutAt, sanitiseAt) = Windows(recipe, marks);
        var cuts = marks.Select(m => m.Minutes).Append(sanitiseAt).Append(recipe.BoilMin).Append(digOutAt).Append(0).Distinct()
            .Where(m => m >= 0 && m <= recipe.BoilMin).OrderDescending().ToList();
        for (var i = 0; i < cuts.Count; i++)
        {
            steps.AddRange(AdditionsAt(marks, cuts[i], kettle));
            if (cuts[i] == sanitiseAt)
                steps.Add(Sanitise(steps.Last(s => s.Vessel == kettle).Id));
            if (i + 1 == cuts.Count)
                break;
            steps.Add(Step($"boil.boil-{i + 1}", StepKind.Boil, kettle) with { Minutes = cuts[i] - cuts[i + 1], Cautions = Boiling });
            if (cuts[i] == digOutAt)
                steps.Add(digOut);
        }
        return steps;
    }

    /// <summary>Minutes before knock-out at which the tun is dug out and the chiller sanitised, so that neither keeps an addition waiting; -1: no time for it in the boil.</summary>
    private static (double DigOut, double Sanitise) Windows(Recipe recipe, List<(double Minutes, Charge Charge)> marks)
    {
        var sanitise = SanitiseMinute(recipe, marks);
        var edges = marks.Select(m => m.Minutes).Append(recipe.BoilMin).Append(0).Distinct().OrderDescending().ToList();
        var gaps = edges.Zip(edges.Skip(1), (from, to) => (From: from, Length: from - to)).ToList();
        bool Free((double From, double Length) gap) => gap.From <= sanitise || gap.From - sanitise >= DigOutMin + 1 || gap.From - gap.Length >= sanitise;
        var best = gaps.Where(g => g.Length >= DigOutMin + 1 && Free(g)).OrderByDescending(g => g.Length).FirstOrDefault();
        if (best.Length > 0)
            return (best.From, sanitise);
        // the chiller is sanitised right after the tun where both fit into one gap
        var both = gaps.Where(g => g.Length >= DigOutMin + 6 && g.From - DigOutMin - 1 <= 35).OrderByDescending(g => g.Length).FirstOrDefault();
        return both.Length > 0 ? (both.From, both.From - DigOutMin - 1) : (-1, sanitise);
    }

    private static List<(double Minutes, Charge Charge)> Marks(Recipe recipe)
    {
        List<(double Minutes, Charge Charge)> marks = [.. Timed(recipe)];
        var sugarAt = SugarAt.Where(m => m <= recipe.BoilMin && !marks.Any(o => o.Minutes < m + HopMin && o.Minutes > m - SugarMin)).DefaultIfEmpty(Math.Min(SugarAt[0], recipe.BoilMin)).First();
        return [.. marks, .. recipe.Grist.Where(g => g.Use == GristUse.Kettle).Select(g => (sugarAt, RecipeFit.Charge(g)))];
    }

    /// <summary>What the recipe has a minute for.</summary>
    private static IEnumerable<(double Minutes, Charge Charge)> Timed(Recipe recipe) =>
    [
        .. recipe.Hops.Where(h => h.Use == HopUse.Boil).Select(h => (Math.Min(h.Minutes, recipe.BoilMin), RecipeFit.Charge(h))),
        .. recipe.Others.Where(o => o.Use == AdditionUse.Boil).Select(o => (Math.Min(o.Minutes, recipe.BoilMin), RecipeFit.Charge(o))),
    ];

    private static IEnumerable<StepSpec> AdditionsAt(List<(double Minutes, Charge Charge)> marks, double minute, string kettle)
    {
        var charges = marks.Where(m => m.Minutes == minute).Select(m => m.Charge).ToLookup(c => c.Kind == ChargeKind.Extract);
        if (charges.Contains(false))
        {
            yield return Step(FormattableString.Invariant($"boil.add-at-{minute:0.#}"), StepKind.AddToBoil, kettle) with
            {
                Charges = [.. charges[false]],
                Minutes = minute,
                HandsS = 60 * HopMin,
                Cautions = Boiling | Cautions.BoilOver,
            };
        }
        // by itself: it wants the heat off, and what hops and finings share is no tub for syrup
        if (charges.Contains(true))
        {
            yield return Step(FormattableString.Invariant($"boil.add-sugar-at-{minute:0.#}"), StepKind.AddToBoil, kettle) with
            {
                Charges = [.. charges[true]],
                Minutes = minute,
                Label = StepLabels.Sugar,
                HandsS = 60 * SugarMin,
                Cautions = Boiling | Cautions.BoilOver | Cautions.DryFire,
            };
        }
    }

    private static double SanitiseMinute(Recipe recipe, List<(double Minutes, Charge Charge)> marks)
    {
        bool Quiet(double minute) => minute < recipe.BoilMin && !marks.Any(m => m.Minutes < minute && m.Minutes > minute - 6);
        return SanitiseAt.Where(Quiet).DefaultIfEmpty(Math.Min(15, recipe.BoilMin)).First();
    }

    private static StepSpec Sanitise(string after) => new()
    {
        Id = "boil.sanitise",
        AfterStepId = after,
        Kind = StepKind.SanitiseChiller,
        Unit = UnitProcedure.Boil,
        Minutes = 4,
        HandsS = 240,
        Cautions = Cautions.Scald | Cautions.Pressure,
    };

    private static StepSpec Step(string id, StepKind kind, string kettle) =>
        new() { Id = id, Kind = kind, Unit = UnitProcedure.Boil, Vessel = kettle };
}
