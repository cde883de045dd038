using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Which hose goes from which outlet to which inlet at each step, with the least number of ends moved over the day: every way of giving the
/// flows of each step to the pumps (and to hoses that run by gravity where there are more flows than pumps) is followed, and of those
/// that leave the hoses the same the cheapest is kept.
/// </summary>
public static class HoseMoves
{
    public const string Chiller = "chiller";

    /// <summary>In the hot liquor tank; a way in and a way out, like the chiller.</summary>
    public const string Coil = "coil";

    /// <summary>What wort runs through between two hoses: what leaves it has a hose of its own, whose beginning is never moved.</summary>
    public static bool IsPassed(string place) => place is Chiller or Coil;

    /// <summary>An end that hangs nowhere yet.</summary>
    private const string Loose = "";

    /// <summary>Puts the moves on the steps that need them, each with its caution: what is left in a hose is hot.</summary>
    public static List<StepSpec> OnSheet(PlantSetting setting, List<StepSpec> sheet)
    {
        // the mash may be raised otherwise that day than the house usually does
        var house = setting.Brewhouse with { Habits = setting.Habits };
        var flows = sheet.Select(s => Flows(house, s)).ToArray();
        var lines = Lines(house, flows);
        var best = new Dictionary<string, Way> { [""] = new([.. lines.Select(_ => new Hung(Loose, Loose))], [], [], 0, 0) };
        for (var i = 0; i < sheet.Count; i++)
        {
            if (flows[i].Length > 0)
                best = Next(best.Values, lines, flows[i], i);
        }
        var fewest = best.Values.MinBy(w => (w.Ends, w.Late))!;
        var moves = fewest.Moves.ToLookup(m => m.Step, m => m.Move);
        var paths = fewest.Paths.ToLookup(p => p.Step, p => p.Path);
        return [.. sheet.Select((s, i) => moves.Contains(i)
            ? s with { Hoses = [.. moves[i]], HosePaths = [.. paths[i]], Cautions = s.Cautions | Cautions.Scald } : s)];
    }

    /// <summary>From where to where liquid runs through hoses in a step; fixed pipes left out.</summary>
    internal static ImmutableArray<(string From, string To)> Flows(Brewhouse house, StepSpec spec)
    {
        (string From, string To)[] all = spec.Kind switch
        {
            StepKind.PrimePump => [(spec.Vessel, house.MashTun.Id)],
            StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort => [(spec.Vessel, spec.To)],
            StepKind.DoughIn or StepKind.Ramp when PumpsRound(house) && house.Habits.MashHeating == MashHeating.Coil => [(spec.Vessel, Coil), (Coil, spec.Vessel)],
            StepKind.DoughIn or StepKind.Ramp when PumpsRound(house) => [(spec.Vessel, spec.Vessel)],
            StepKind.Vorlauf or StepKind.Whirlpool when !house.Pumps.IsEmpty => [(spec.Vessel, spec.Vessel)],
            StepKind.Lauter when spec.SpargeL > 0 => [(spec.Vessel, spec.To), (house.HotLiquorTank.Id, spec.Vessel)],
            StepKind.Lauter or StepKind.RunOff => [(spec.Vessel, spec.To)],
            StepKind.BatchSparge => [(house.HotLiquorTank.Id, spec.Vessel)],
            StepKind.SanitiseChiller when !house.Chiller.IsCoil => [(house.Kettle.Id, Chiller), (Chiller, house.Kettle.Id)],
            // nothing else would bring boiling wort into the pump that casts out
            StepKind.SanitiseChiller when !house.Pumps.IsEmpty => [(house.Kettle.Id, house.Kettle.Id)],
            StepKind.CastOut when !house.Chiller.IsCoil => [(spec.Vessel, Chiller), (Chiller, spec.To)],
            StepKind.CastOut => [(spec.Vessel, spec.To)],
            _ => [],
        };
        return [.. all.Where(f => !house.Vessels.Any(v => v.Id == f.From && v.PipedTo == f.To))];
    }

    private static bool PumpsRound(Brewhouse house) => !house.Pumps.IsEmpty && house.Habits.MashHeating != MashHeating.HotWater;

    /// <summary>Pumps, the ways out of chiller and coil, and as many hoses alone as some step has flows beyond the pumps.</summary>
    private static ImmutableArray<string> Lines(Brewhouse house, ImmutableArray<(string From, string To)>[] flows)
    {
        var pumps = house.Pumps.Select(p => p.Id).ToArray();
        var most = flows.Max(Driven);
        var passed = flows.SelectMany(f => f).Select(f => f.From).Where(IsPassed).Distinct();
        return [.. pumps, .. Enumerable.Repeat("", Math.Max(0, most - pumps.Length)), .. passed];
    }

    /// <summary>Flows that want a pump, or a fall.</summary>
    private static int Driven(ImmutableArray<(string From, string To)> flows) => flows.Count(f => !IsPassed(f.From));

    private static Dictionary<string, Way> Next(
        IEnumerable<Way> ways, ImmutableArray<string> lines, ImmutableArray<(string From, string To)> flows, int step)
    {
        var best = new Dictionary<string, Way>(StringComparer.Ordinal);
        foreach (var way in ways)
        {
            foreach (var next in Given(way, lines, flows, step))
            {
                var key = string.Join('|', next.Lines.Select(l => $"{l.From}>{l.To}"));
                if (!best.TryGetValue(key, out var other) || (next.Ends, next.Late).CompareTo((other.Ends, other.Late)) < 0)
                    best[key] = next;
            }
        }
        return best;
    }

    /// <summary>Every way of giving the flows of a step to lines, one each.</summary>
    private static IEnumerable<Way> Given(Way way, ImmutableArray<string> lines, ImmutableArray<(string From, string To)> flows, int step)
    {
        IEnumerable<(Way Way, ImmutableArray<int> Taken)> found = [(way, [])];
        foreach (var flow in flows)
        {
            found = found.SelectMany(f => Enumerable.Range(0, lines.Length)
                .Where(l => !f.Taken.Contains(l) && Serves(lines, l, flow.From, Driven(flows)))
                .Select(l => (f.Way.Hang(l, lines[l], flow.From, flow.To, step), f.Taken.Add(l))));
        }
        return found.Select(f => f.Way);
    }

    /// <summary>What leaves chiller or coil runs in its own hose; a hose alone is for what finds no pump.</summary>
    private static bool Serves(ImmutableArray<string> lines, int line, string from, int flows)
    {
        if (IsPassed(from) || IsPassed(lines[line]))
            return lines[line] == from;
        return lines[line].Length > 0 || flows > lines.Count(l => l.Length > 0 && !IsPassed(l));
    }

    private readonly record struct Hung(string From, string To);

    /// <param name="Ends">Ends moved so far.</param>
    /// <param name="Late">Of ways with as few, the one that takes the pumps in their own order is easiest to remember.</param>
    /// <param name="Paths">What each step runs through, moved or not.</param>
    private sealed record Way(
        ImmutableArray<Hung> Lines, ImmutableArray<(int Step, HoseMove Move)> Moves, ImmutableArray<(int Step, HosePath Path)> Paths, int Ends, double Late)
    {
        public Way Hang(int line, string name, string from, string to, int step)
        {
            bool takes = Lines[line].From != from && !IsPassed(name), gives = Lines[line].To != to;
            var late = Late + line / (1.0 + step);
            var paths = Paths.Add((step, new(name, from, to)));
            if (!takes && !gives)
                return this with { Late = late, Paths = paths };
            return new(
                Lines.SetItem(line, new(from, to)),
                Moves.Add((step, new(name, takes ? from : null, gives ? to : null))),
                paths,
                Ends + (takes ? 1 : 0) + (gives ? 1 : 0),
                late);
        }
    }
}
