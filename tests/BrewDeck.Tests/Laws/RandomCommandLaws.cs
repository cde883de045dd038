using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Wet hands and a second pair of hands: any command, in any state, at any time of any clock.</summary>
public class RandomCommandLaws
{
    private sealed record Stroke(int Command, int Pick, double Value, int Seconds);

    private static readonly Gen<Stroke> AnyStroke = Gen.Select(
        Gen.Int[0, 12], Gen.Int[0, 999], Gen.Double[0, 1], Gen.Int[-900, 5400], (c, p, v, s) => new Stroke(c, p, v, s));

    private static readonly Lazy<RunEvent[]> ADay = new(() => [.. EventfulDay.Brew().Events]);

    /// <summary>As many as go into a few seconds, from every moment of a day that has everything in it.</summary>
    [Fact]
    public void No_sequence_of_commands_throws_or_leaves_an_impossible_state() =>
        Gen.Select(Gen.Int[1, ADay.Value.Length], AnyStroke.Array[1, 6]).Sample(
            (n, strokes) =>
            {
                List<RunEvent> events = [.. ADay.Value.Take(n)];
                var state = RunFold.Of(events);
                var nowMs = events[^1].AtMs;
                Remedy? stale = null;
                foreach (var stroke in strokes)
                {
                    nowMs += 1000L * stroke.Seconds;
                    var command = Command(state, stroke, nowMs, ref stale);
                    if (RunDesk.Decide(state, command, nowMs) is not Decision.Accepted accepted)
                        continue;
                    events.AddRange(accepted.Events);
                    state = command is RunCommand.Undo ? RunFold.Of(events) : accepted.Events.Aggregate(state, RunFold.Then);
                }
                Sound.Check(state, nowMs);
            },
            time: 3);

    private static RunCommand Command(RunState state, Stroke stroke, long nowMs, ref Remedy? stale)
    {
        var any = state.Steps[stroke.Pick % state.Steps.Length].Spec.Id;
        var open = state.Steps.Where(s => s.Status is RunStatus.Running or RunStatus.Held).Select(s => s.Spec.Id).ToList();
        var one = open.Count > 0 && stroke.Value < 0.8 ? open[stroke.Pick % open.Count] : any;
        switch (stroke.Command)
        {
            case 0:
                return new RunCommand.Start(any);
            case 1:
                return new RunCommand.Finish(one);
            case 2:
                return new RunCommand.Hold(one, "");
            case 3:
                return new RunCommand.Resume(one);
            case 4:
                return new RunCommand.Skip(one, stroke.Value < 0.1 ? " " : "why not");
            case 5 or 6 or 7:
                return Take(stroke);
            case 8:
                var offers = Remedies.For(state, nowMs);
                stale = offers.IsEmpty ? stale : offers[stroke.Pick % offers.Length];
                return stale is null ? new RunCommand.Write("no remedy") : new RunCommand.Choose(stale);
            case 9:
                return new RunCommand.Undo();
            case 10 when stroke.Value > 0.5 && Possible.At(state) is { Count: > 0 } can:
                return new RunCommand.Report(can[stroke.Pick % can.Count]);
            case 10 when stroke.Value > 0.4 && state.Troubles is { IsEmpty: false } told:
                return new RunCommand.Clear(told[stroke.Pick % told.Length].Trouble);
            case 10 when stroke.Value < 0.2:
                return new RunCommand.Abort("");
            default:
                var focus = RunFocus.Of(state, Forecasts.At(state, nowMs), nowMs);
                return focus.Act == FocusAct.Start ? new RunCommand.Start(focus.StepId) : new RunCommand.Finish(focus.StepId);
        }
    }

    private static RunCommand Take(Stroke stroke)
    {
        string[] places = ["liquor", "tun", "kettle", "kettle", "fermenter", "grain", "source", "room", "cellar"];
        var kind = (ReadingKind)(stroke.Pick % 5);
        double[] tops = [110, 90, 1.2, 8, 50];
        var value = stroke.Value switch
        {
            < 0.02 => double.NaN,
            < 0.04 => double.PositiveInfinity,
            _ when kind == ReadingKind.Gravity => 0.98 + stroke.Value * 0.22,
            _ => stroke.Value * tops[(int)kind],
        };
        return new RunCommand.Take(new Reading(kind, places[stroke.Pick / 5 % places.Length], value, ""), stroke.Pick % 2 == 0);
    }
}
