using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Deck;

/// <summary>What a debrief may call the best, and what it says of a day.</summary>
public sealed class DebriefWordsTests
{
    private static readonly DayResult Plan = new(1.048, 40, 30, 19, 19_000, 0, 0);

    private static readonly DayResult Day = new(1.038, 37.5, 40, 19.2, 44_000, 0.21, 0) { MashWorstK = 6 };

    private static readonly PerfectDay Brewed = Short();

    [Fact]
    public void An_unsafe_act_is_never_the_best_however_good_its_day()
    {
        var dried = Tried(HandAct.DryAndReset, 5);
        var said = Said(Debrief(MishapKind.TrippedCircuit, dried, dried, Tried(HandAct.ResetBreaker, 1)));

        Assert.DoesNotContain("best:", said, StringComparison.Ordinal);
        Assert.Contains("never: Switch the breaker on with the plug wet", said, StringComparison.Ordinal);
        Assert.Contains("Power on a wet plug may kill", said, StringComparison.Ordinal);
        Assert.Contains("That was the best choice", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_did_it_is_told_the_safe_way_even_if_it_costs_nothing()
    {
        var reset = Tried(HandAct.ResetBreaker, 1);
        var said = Said(Debrief(MishapKind.TrippedCircuit, reset, Tried(HandAct.DryAndReset, 1.1), reset));

        Assert.Contains("best: Breaker off, unplug, dry plug and socket", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing would have been", said, StringComparison.Ordinal);
    }

    [Fact]
    public void An_exercise_is_not_passed_by_what_may_hurt_someone()
    {
        var met = new Criterion.Met(MishapKind.TrippedCircuit, 5);
        TriedAnswer dried = Tried(HandAct.DryAndReset, 5), reset = Tried(HandAct.ResetBreaker, 1);

        Assert.True(met.Holds(Brewed.State, Debrief(MishapKind.TrippedCircuit, dried, dried, reset)));
        Assert.False(met.Holds(Brewed.State, Debrief(MishapKind.TrippedCircuit, reset, dried, reset)));
    }

    [Fact]
    public void Leaving_a_kettle_to_boil_over_is_no_answer_either()
    {
        Assert.False(Safety.Allows(MishapKind.BoilOver, Answer.Leave));
        Assert.True(Safety.Allows(MishapKind.ColdStrike, Answer.Leave));
        Assert.True(Safety.Allows(MishapKind.BoilOver, Answer.Of(RemedyKind.BoilLonger)));
    }

    [Fact]
    public void What_is_rounded_to_nothing_is_not_told_as_a_cost()
    {
        var mine = Tried(HandAct.RunWarmer, 9) with { Gives = Day with { FinishS = Day.FinishS + 2160, FermenterL = Day.FermenterL - 0.02, MashOffK = 0.22 } };
        var said = Said(Debrief(MishapKind.SlowChiller, mine, Tried(HandAct.FlushChiller, 5), mine));

        Assert.Contains("Against the best: +36 min.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_remedy_is_told_apart_from_the_same_work_by_hand()
    {
        var cut = new TriedAnswer(Answer.Of(RemedyKind.RakeBed), Day, 5, Safe: true);
        var said = Said(Debrief(MishapKind.StuckBed, cut, Tried(HandAct.RakeBed, 4.8), cut));

        Assert.Contains("done: Cut the bed and let it run clear again (remedy)", said, StringComparison.Ordinal);
        Assert.Contains("even: Pump off, tun shut; loosen the bed with the rake, let it settle", said, StringComparison.Ordinal);
    }

    /// <summary>The noise of an instrument decides nothing: within half a point an answer is neither the best nor beaten.</summary>
    [Fact]
    public void Answers_that_come_out_alike_are_called_even_and_a_mash_says_how_far_it_was_off()
    {
        var mine = Tried(HandAct.PumpOver, 7.2) with { Gives = Day with { MashOffK = 0.4 } };
        var left = Tried(HandAct.LeaveIt, 7) with { Gives = Day with { MashOffK = 2.1 } };
        var said = Said(Debrief(MishapKind.ColdStrike, mine, mine, left));

        Assert.Contains("mash 0.4 °C off; 7.2 points off.", said, StringComparison.Ordinal);
        Assert.Matches("even: Leave it as it is: .*mash 2.1 °C off; 7.0 points off", said);
        Assert.Contains("As good as the best", said, StringComparison.Ordinal);
        Assert.DoesNotContain("That was the best choice", said, StringComparison.Ordinal);
        Assert.Contains("Each line is the day brewed again", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_worst_of_the_mash_has_its_time()
    {
        var said = string.Join("\n", DebriefWords.Lines(new(new(1, []), Pitched: true, Plan, Day with { MashWorstAtS = 7200 }, []), Brewed.State, Brewed.Forecast.Outlook, Notation.Metric).Select(l => l.ToString()));
        Assert.Matches(@"6\.0 °C at worst, after 2 h \(Rest at .*\)\.", said);
    }

    [Fact]
    public void Bitterness_has_what_the_deck_reckoned_beside_the_truth_and_says_when_it_lies_outside()
    {
        var said = Said(Debrief(MishapKind.StuckBed, Tried(HandAct.RakeBed, 1), Tried(HandAct.RakeBed, 1)));
        var row = said.Split('\n').Single(l => l.TrimStart().StartsWith("bitterness", StringComparison.Ordinal));

        Assert.Matches(@"30 IBU +- +\d+ IBU \(\d+\.\.\d+ IBU\) +40 IBU", row);
        Assert.EndsWith("40 IBU !", row, StringComparison.Ordinal);
        Assert.Contains("! outside the band that the deck reckoned", said, StringComparison.Ordinal);
        Assert.Contains("0.2 °C off its rests on average, 6.0 °C at worst", said, StringComparison.Ordinal);
        Assert.All(said.Split('\n').Skip(1).Take(4), l => Assert.InRange(l.Length, 10, 72));
    }

    [Fact]
    public void The_columns_of_the_figures_stand_under_their_headings()
    {
        var rows = Said(Debrief(MishapKind.StuckBed, Tried(HandAct.RakeBed, 1), Tried(HandAct.RakeBed, 1))).Split('\n')[..6];

        Assert.StartsWith("  day", rows[^1], StringComparison.Ordinal);
        foreach (var heading in new[] { "plan", "the deck reckoned", "in truth" })
        {
            var at = rows[0].IndexOf(heading, StringComparison.Ordinal);
            Assert.All(rows[1..^1], r => Assert.True(r[at] != ' ' && r[at - 1] == ' ', r));
        }
        Assert.NotEqual(' ', rows[^1][rows[0].IndexOf("in truth", StringComparison.Ordinal)]);
    }

    [Fact]
    public void A_short_bag_and_a_late_step_are_told_beside_the_mishaps()
    {
        var said = Said(Debrief(MishapKind.StuckBed, Tried(HandAct.RakeBed, 1), Tried(HandAct.RakeBed, 1)));

        Assert.Contains("What else moved the day", said, StringComparison.Ordinal);
        Assert.Contains("kg went in, planned", said, StringComparison.Ordinal);
        Assert.Matches(@"Rest at .*: took 1 h 4\d min, planned 1 h", said);
    }

    /// <summary>A day given up before dough-in was "0.0 °C off its rests".</summary>
    [Fact]
    public void A_day_without_a_rest_says_nothing_of_its_mash()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.TransferStrike && !x.Open));
        var debrief = new Debrief(new(1, []), Pitched: false, Plan, Day with { MashOffK = 0, MashWorstK = 0 }, []);
        var said = string.Join("\n", DebriefWords.Lines(debrief, day.State, day.Forecast.Outlook, Notation.Metric).Select(l => l.ToString()));
        Assert.DoesNotContain("off its rests", said, StringComparison.Ordinal);
    }

    private static TriedAnswer Tried(HandAct act, double loss) => new(Answer.Of(act), Day, loss, Safety.Allows(MishapKind.TrippedCircuit, Answer.Of(act)));

    private static Debrief Debrief(MishapKind kind, TriedAnswer chosen, params TriedAnswer[] tried) => new(
        new(1, []), Pitched: true, Plan, Day,
        [new(new(kind, Severity.Plain), 100, 200, 260, chosen, [.. tried.OrderBy(t => !t.Safe).ThenBy(t => t.Loss)])]);

    private static string Said(Debrief debrief) =>
        string.Join("\n", DebriefWords.Lines(debrief, Brewed.State, Brewed.Forecast.Outlook, Notation.Metric).Select(l => l.ToString()));

    /// <summary>Less malt than planned, and a rest that nobody ended for three quarters of an hour.</summary>
    private static PerfectDay Short()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Status == RunStatus.Running);
        var malt = BagSheet.Of(day.State).First(b => b.Kind == ChargeKind.Grist);
        day.Accepted(new RunCommand.Weigh(new(ChargeKind.Grist, malt.Name, malt.Amount - 1.5)));
        day.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Rest && x.Status == RunStatus.Running));
        day.Wait(105);
        day.RunToEnd();
        return day;
    }
}
