using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>Which hose goes where before a step, and what the pump cannot bear.</summary>
public static class HoseWords
{
    /// <param name="brief">Only what something of is moved, each whole, and both of a lauter, which run at once; else all that the step runs through.</param>
    public static IEnumerable<string> Of(PlanStep step, Plan plan, Notation notation, bool brief)
    {
        // a plan from before whole paths were kept has the moved ends only
        if (step.Spec is { HosePaths: { IsEmpty: false } paths, Hoses: { } moved })
        {
            var runs = string.Join("; ", Runs(paths).Where(r => !brief || step.Spec.Kind == StepKind.Lauter || r.Any(p => moved.Any(m => Moves(m, p)))).Select(r => Run(r, step, plan, notation)));
            yield return brief ? notation.Text($"Valves shut; {runs}.") : notation.Text($"Valves shut; hoses {runs}.");
        }
        else if (step.Spec.Hoses is { IsEmpty: false } moves)
            yield return notation.Text($"Valves shut; hoses {string.Join("; ", moves.Select(m => Move(m, plan, notation)))}.");
        if (SuctionHeads.Cavitates(PlantSetting.Of(plan.Brewhouse, plan.Choices), step))
            yield return notation.Text("The pump would cavitate: throttle it at its outlet, never at its inlet.");
    }

    private static bool Moves(HoseMove move, HosePath path) =>
        move.Line == path.Line && (move.From is null || move.From == path.From) && (move.To is null || move.To == path.To);

    /// <summary>What runs into chiller or coil and out of it is one way.</summary>
    private static List<ImmutableArray<HosePath>> Runs(ImmutableArray<HosePath> paths)
    {
        var runs = new List<ImmutableArray<HosePath>>();
        foreach (var path in paths)
        {
            if (HoseMoves.IsPassed(path.From) && runs is [.., var last] && last[^1].To == path.From)
                runs[^1] = last.Add(path);
            else
                runs.Add([path]);
        }
        return runs;
    }

    /// <summary>"kettle to wort pump to kettle (whirlpool inlet)", "kettle to liquor pump to chiller to fermenter": no end is left to guess.</summary>
    private static string Run(ImmutableArray<HosePath> run, PlanStep step, Plan plan, Notation notation)
    {
        var places = run.SelectMany(p => HoseMoves.IsPassed(p.Line)
            ? new[] { Place(p.To, plan, notation) }
            : [Place(p.From, plan, notation), Line(p.Line, plan, notation), Place(p.To, plan, notation)]);
        return Joined(places, notation) + (step.Spec.Kind == StepKind.Whirlpool ? notation.Text(" (whirlpool inlet)") : "");
    }

    /// <summary>"tun to wort pump to kettle": from an outlet, to an inlet; what stays is not said.</summary>
    private static string Move(HoseMove move, Plan plan, Notation notation) =>
        Joined(new[] { Place(move.From, plan, notation), Line(move.Line, plan, notation), Place(move.To, plan, notation) }, notation);

    private static string Joined(IEnumerable<string?> places, Notation notation) =>
        places.OfType<string>().Aggregate((from, to) => notation.Text($"{from} to {to}"));

    private static string Line(string line, Plan plan, Notation notation) => line switch
    {
        "" => notation.Text("hose"),
        HoseMoves.Chiller => notation.Text("chiller"),
        HoseMoves.Coil => notation.Text("coil"),
        _ => plan.Brewhouse.Pumps.Length > 1 ? notation.Name($"{line} pump", notation.Text($"{line} pump")) : notation.Text("pump"),
    };

    private static string? Place(string? vessel, Plan plan, Notation notation) =>
        vessel is null ? null : plan.Brewhouse.Vessels.Any(v => v.Id == vessel) ? notation.Name(vessel) : notation.Name(Names.Plainly(vessel));
}
