using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Running;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Events are the truth: any prefix folds to a state that the day can go on from.</summary>
public class FoldLaws
{
    [Fact]
    public void Any_prefix_is_sound_even_one_cut_inside_an_act()
    {
        var events = EventfulDay.Brew().Events;
        for (var n = 1; n <= events.Count; n++)
        {
            List<RunEvent> prefix = [.. events.Take(n)];
            var state = RunFold.Of(prefix);
            Sound.Check(state, prefix[^1].AtMs);
            Sound.Check(state, prefix[^1].AtMs + 1_800_000);
        }
    }

    [Fact]
    public void One_more_event_gives_what_all_of_them_give()
    {
        var events = EventfulDay.Brew().Events;
        var state = new RunState();
        for (var n = 1; n <= events.Count; n++)
        {
            var all = RunFold.Of([.. events.Take(n)]);
            state = events[n - 1] is Undone ? all : RunFold.Then(state, events[n - 1]);
            Assert.Equal(n, state.Count);
            Assert.Equal(Same.Text(all), Same.Text(state));
        }
    }

    [Fact]
    public void The_record_is_the_state_without_its_plant()
    {
        var events = EventfulDay.Brew().Events;
        for (var n = 1; n <= events.Count; n++)
        {
            List<RunEvent> prefix = [.. events.Take(n)];
            Assert.Equal(Same.Text(RunFold.Of(prefix) with { Live = null }), Same.Text(RunFold.RecordOf(prefix)));
        }
    }

    /// <summary>A record from before readings kept what was expected of them says the same.</summary>
    [Fact]
    public void What_a_reading_keeps_as_expected_is_what_the_fold_finds()
    {
        var events = EventfulDay.Brew().Events;
        Assert.Contains(events, e => e is ReadingTaken { Expected: not null });
        List<RunEvent> older = [.. events.Select(e => e is ReadingTaken taken ? taken with { Expected = null } : e)];
        Assert.Equal(Same.Text(RunFold.Of(events)), Same.Text(RunFold.Of(older)));
        Assert.Equal(Same.Text(RunFold.RecordOf(events)), Same.Text(RunFold.RecordOf(older)));
    }

    [Fact]
    public void Undo_restores_the_state_before_the_act()
    {
        List<RunEvent> events = [.. EventfulDay.Brew().Events.Where(e => e is not Undone)];
        for (var first = 1; first < events.Count; first++)
        {
            if (events[first].Part > 0 || first % 3 != 0)
                continue;
            var after = first + 1;
            while (after < events.Count && events[after].Part > 0)
                after++;
            List<RunEvent> done = [.. events.Take(after)];
            var state = RunFold.Of(done);
            if (state.UndoSeq != first)
                continue;
            var undo = Assert.IsType<Decision.Accepted>(RunDesk.Decide(state, new RunCommand.Undo(), done[^1].AtMs + 5000));
            Assert.Equal(Same.Text(RunFold.Of([.. events.Take(first)])), Same.Text(RunFold.Of([.. done, .. undo.Events])));
        }
    }

    [Fact]
    public void Undoing_everything_leads_back_to_the_opened_batch()
    {
        var day = EventfulDay.Brew();
        for (var i = 0; i < 1000 && day.State.UndoSeq is not null; i++)
            day.Accepted(new RunCommand.Undo());
        Assert.Equal(Same.Text(RunFold.Of([day.Events[0]])), Same.Text(day.State));
        Assert.Equal(new Decision.Refused("nothing_to_undo"), day.Do(new RunCommand.Undo()));
    }

    /// <summary>A start, a reading or a hold elsewhere cuts what runs; the day must end the same.</summary>
    [Fact]
    public void Cutting_what_runs_at_any_moments_leaves_the_end_of_the_day_the_same() =>
        Gen.Select(AnyDay.Brewable, Gen.Double[0, 1].Array[3].Array[80]).Sample(
            (planned, cuts) =>
            {
                var day = new PerfectDay(planned.Plan);
                for (var i = 0; i < 80 && day.State.Status != RunStatus.Complete; i++)
                {
                    var (fromS, dueS) = (day.State.SecondsAt(day.NowMs), day.State.SecondsAt(day.Focus.DueMs));
                    if (dueS > fromS + 60)
                        SameWhenCut(day.State, [.. cuts[i].Order().Select(c => fromS + c * (dueS - fromS))]);
                    day.GoOn();
                }
            },
            iter: 6);

    /// <summary>
    /// The plant stays where it is and so does the day that follows from it; the bands grow narrower, and with them goes their middle.
    /// </summary>
    [Fact]
    public void A_reading_equal_to_the_prediction_changes_nothing_at_any_moment() =>
        Gen.Select(AnyDay.Brewable, Gen.Select(Gen.Double[0, 1], Gen.Int[0, 3], Gen.Int[0, 2]).Array[80]).Sample(
            (planned, looks) =>
            {
                var day = new PerfectDay(planned.Plan);
                for (var i = 0; i < 80 && day.State.Status != RunStatus.Complete; i++)
                {
                    var (share, vessel, kind) = looks[i];
                    day.Wait(share * Math.Max(0, day.Focus.DueMs - day.NowMs) / 60_000);
                    var id = vessel < 3 ? planned.Plan.Brewhouse.Vessels[vessel].Id : Places.Fermenter;
                    var before = day.Forecast;
                    day.Read((ReadingKind)kind, id, day.Predicted((ReadingKind)kind, id));
                    if (!IsFilled(day.State, id))
                        SameDay(before, day.Forecast, $"{day.Focus.StepId}: {(ReadingKind)kind} of {id}");
                    day.GoOn();
                }
            },
            iter: 6);

    /// <summary>A level read just before the end of a fill is that of its end, and the day goes on from there.</summary>
    private static bool IsFilled(RunState state, string vessel) => Filling.In(state, vessel) is { } fill
        && (state.Live?.Running.FirstOrDefault(s => s.Left.Id == fill.Spec.Id)?.Left ?? fill.Spec).VolumeL == 0;

    private static void SameDay(Forecast before, Forecast after, string reading)
    {
        foreach (var (one, other) in before.Now.Vessels.Zip(after.Now.Vessels))
            SameVessel(one, other, reading);
        if (before.Rest.IsEmpty)
            return;
        foreach (var (one, other) in before.Rest[^1].After.Vessels.Zip(after.Rest[^1].After.Vessels))
            SameVessel(one, other, $"{reading}, at the end of the day");
        Assert.Equal(before.Rest.Max(s => s.EndS), after.Rest.Max(s => s.EndS), 60.0);
    }

    /// <summary>To what is shown: tenths of litres and degrees, thousandths of gravity.</summary>
    private static void SameVessel(in VesselState one, in VesselState other, string reading)
    {
        var same = Math.Abs(Contents.CoolL(one) - Contents.CoolL(other)) < 0.1 && Math.Abs(one.TempC - other.TempC) < 0.1
            && (one.LiquidKg < 1 || Math.Abs(one.Plato - other.Plato) < 0.12);
        Assert.True(same, $"{reading}: {one} became {other}");
    }

    private static void SameWhenCut(RunState state, double[] momentsS)
    {
        var cut = momentsS.Aggregate(state.Live!, (live, s) => live.CutAt(s));
        var nowMs = state.MsAt(momentsS[^1], 0);
        var before = Forecasts.At(state, nowMs);
        var after = Forecasts.At(state with { Live = cut }, nowMs);
        var moved = Shifts.Between(before, after);
        Assert.True(moved.IsEmpty, $"{RunFocus.Of(state, before, nowMs).StepId} cut at {string.Join(", ", momentsS)}: {string.Join(", ", moved)}");
        Assert.Equal(before.Outlook.OriginalGravitySg.P50, after.Outlook.OriginalGravitySg.P50, 0.00005);
        Assert.Equal(before.Outlook.FermenterL.P50, after.Outlook.FermenterL.P50, 0.02);
        Assert.Equal(before.Outlook.BitternessIbu.P50, after.Outlook.BitternessIbu.P50, 0.1);
    }
}
