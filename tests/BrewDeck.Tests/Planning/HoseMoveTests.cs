using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

/// <summary>Every flow finds its hose, and no day moves fewer ends.</summary>
public sealed class HoseMoveTests
{
    private static readonly Brewhouse OnePump = Demo.House with { Pumps = [Demo.House.Pumps[0]] };

    public static TheoryData<string> Houses => ["three vessels", "one pump", "no pump", "five vessels", "coil in the kettle", "coil in the tank"];

    [Theory]
    [MemberData(nameof(Houses))]
    public void Each_flow_runs_through_a_line_that_hangs_there(string name)
    {
        var house = House(name);
        var hung = new List<(string Line, string From, string To)>();
        foreach (var step in Demo.Plan(house: house).Steps)
        {
            foreach (var move in step.Spec.Hoses ?? [])
                Hang(hung, move);
            foreach (var (from, to) in HoseMoves.Flows(house, step.Spec))
                Assert.Contains(hung, h => h.From == from && h.To == to);
            Assert.True(step.Spec.Hoses is null || step.Spec.Cautions.HasFlag(Cautions.Scald));
        }
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void No_other_day_moves_fewer_ends(string name)
    {
        var house = House(name);
        StepSpec[] sheet = [.. Demo.Plan(house: house).Steps.Select(s => s.Spec)];
        var ends = sheet.SelectMany(s => s.Hoses ?? []).Sum(m => (m.From is null ? 0 : 1) + (m.To is null ? 0 : 1));
        Assert.Equal(Fewest(house, sheet), ends);
    }

    [Fact]
    public void A_fixed_pipe_needs_no_hose()
    {
        var piped = Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "liquor" ? v with { PipedTo = "tun" } : v)] };
        Assert.DoesNotContain(Demo.Plan(house: piped).Steps.SelectMany(s => s.Spec.Hoses ?? []), m => m.From == "liquor");
    }

    /// <summary>By trying everything, deep first: what the quick way must equal. State: each line with its two ends.</summary>
    private static int Fewest(Brewhouse house, StepSpec[] sheet)
    {
        var flows = sheet.Select(s => HoseMoves.Flows(house, s)).Where(f => !f.IsEmpty).ToArray();
        var alone = Math.Max(0, flows.Max(f => f.Count(x => !HoseMoves.IsPassed(x.From))) - house.Pumps.Length);
        var moved = house.Pumps.Length + alone;
        var known = new Dictionary<string, int>();
        var start = Enumerable.Repeat(("", ""), moved + 2).ToArray();
        return Rest(0, start);

        int Rest(int at, (string From, string To)[] lines)
        {
            if (at == flows.Length)
                return 0;
            var key = at + string.Join(';', lines);
            return known.TryGetValue(key, out var before) ? before : known[key] = Serve(at, 0, lines, []);
        }

        int Serve(int at, int flow, (string From, string To)[] lines, int[] taken)
        {
            if (flow == flows[at].Length)
                return Rest(at + 1, lines);
            var (from, to) = flows[at][flow];
            var own = HoseMoves.IsPassed(from);
            var pumpsAreFew = flows[at].Count(x => !HoseMoves.IsPassed(x.From)) > house.Pumps.Length;
            var may = Enumerable.Range(0, lines.Length).Except(taken)
                .Where(l => own ? l == moved + (from == HoseMoves.Chiller ? 0 : 1) : l < house.Pumps.Length || (pumpsAreFew && l < moved));
            return may.Min(l => (own || lines[l].From == from ? 0 : 1) + (lines[l].To == to ? 0 : 1)
                + Serve(at, flow + 1, [.. lines[..l], (from, to), .. lines[(l + 1)..]], [.. taken, l]));
        }
    }

    private static void Hang(List<(string Line, string From, string To)> hung, HoseMove move)
    {
        // hoses alone have no name: one that moves a single end is the one that hangs by the other
        var at = hung.FindIndex(h => h.Line == move.Line && (move.From is null || move.To is null || h.Line.Length > 0));
        var old = at >= 0 ? hung[at] : (move.Line, From: HoseMoves.IsPassed(move.Line) ? move.Line : "", To: "");
        if (at >= 0)
            hung.RemoveAt(at);
        hung.Add((move.Line, move.From ?? old.From, move.To ?? old.To));
    }

    private static Brewhouse House(string name) => name switch
    {
        "one pump" => OnePump,
        "no pump" => Demo.House with { Pumps = [] },
        "five vessels" => Demo.FiveVessels,
        "coil in the tank" => Demo.House with { Coil = new Coil(0.7, 8, 20), Habits = Demo.House.Habits with { MashHeating = MashHeating.Coil } },
        "coil in the kettle" => OnePump with { Chiller = OnePump.Chiller with { Kind = ChillerKind.Immersion } },
        _ => Demo.House,
    };
}
