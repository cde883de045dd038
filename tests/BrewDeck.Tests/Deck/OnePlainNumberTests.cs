using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Deck;

/// <summary>A number that stands in two places of the deck is one, or says why it is not.</summary>
public class OnePlainNumberTests
{
    private static DeckMoment Moment(PerfectDay day) => new(day.State, day.Forecast, day.Focus, day.Events, day.NowMs, Notation.Metric);

    private static PerfectDay Until(string step)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(step);
        return day;
    }

    private static string Sentences(PerfectDay day) => string.Join(" ", DeckComposer.Of(Moment(day), []).Sentences.Select(l => l.ToString()));

    [Theory]
    [InlineData(-0.3)]
    [InlineData(-6)]
    public void A_level_read_in_a_fill_does_not_become_its_target(double by)
    {
        var day = Until("liquor.fill");
        var before = (Moment(day).Title("liquor.fill"), Sentences(day));
        day.Wait(30);
        day.Read(ReadingKind.Volume, "liquor", day.Expected(ReadingKind.Volume, "liquor") + by);
        Assert.Equal(before.Item1, Moment(day).Title("liquor.fill"));
        Assert.EndsWith(before.Item2[before.Item2.IndexOf("Expected", StringComparison.Ordinal)..], Sentences(day), StringComparison.Ordinal);
    }

    [Fact]
    public void Strike_liquor_is_expected_at_what_its_title_says()
    {
        var day = Until("liquor.heat-strike");
        day.Wait(90);
        day.ReadOff(ReadingKind.Temperature, "tun", 0);
        day.Accepted(new RunCommand.Take(new Reading(ReadingKind.Temperature, "grain", 12, ""), Confirmed: true));
        var moment = Moment(day);
        var step = moment.Step("liquor.heat-strike")!;
        Assert.Equal(step.TargetC!.Value, Assert.Single(step.Expected).Value, 1e-9);
        Assert.NotEqual(moment.Plan.Steps.First(s => s.Spec.Id == step.Spec.Id).TargetC!.Value, step.TargetC.Value, 0.1);
    }

    /// <summary>A dough-in that is expected off its rest is judged by the rest: both temperatures are said.</summary>
    [Fact]
    public void What_the_mash_comes_to_is_told_with_what_is_wanted()
    {
        var day = Until("mash.dough-in");
        day.ReadOff(ReadingKind.Temperature, "tun", -1);
        Assert.Matches("Expected: temperature 65[0-9.]+ °C \\(66[0.]* °C wanted\\)", Sentences(day));
    }

    [Fact]
    public void A_heat_up_that_never_gets_there_counts_no_hours_down()
    {
        var day = Until("boil.heat");
        day.Wait(1);
        Assert.Matches("^[0-9]+:[0-9]{2}$", Countdown.Of(Moment(day)).Digits);
        day.Accepted(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element("kettle", 1))));
        var screen = DeckComposer.Of(Moment(day), []);
        Assert.Equal(("--:--", "does not get there"), (screen.Big, screen.BigLabel));
        Assert.Equal("Hands now: like this it never gets there.", screen.Hands.ToString());
    }

    [Fact]
    public void A_stir_that_is_due_wants_the_hands_now()
    {
        var day = Until("mash.rest-1");
        day.RunPast("liquor.heat-sparge");
        var half = day.State.Step("mash.rest-1")!.StartedMs!.Value + 30 * 60_000L;
        if (day.NowMs < half - 4 * 60_000)
        {
            day.WaitUntil((half - day.State.DayStartMs!.Value) / 1000.0 - 240);
            Assert.Equal("Stir the mash in 4 min, at " + Notation.Metric.Clock(half) + ".", DeckComposer.Of(Moment(day), []).Hands.ToString());
        }
        day.WaitUntil((half - day.State.DayStartMs!.Value) / 1000.0 + 60);
        Assert.Equal("Hands now: stir the mash and read it.", DeckComposer.Of(Moment(day), []).Hands.ToString());
        day.ReadOff(ReadingKind.Temperature, "tun", 0);
        Assert.StartsWith("Hands needed in ", DeckComposer.Of(Moment(day), []).Hands.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The headline is of the rest, the tank behind it asks first.</summary>
    [Fact]
    public void Hands_that_another_vessel_asks_for_are_named()
    {
        var day = Until("liquor.heat-sparge");
        day.WaitUntil((day.State.Step("mash.rest-1")!.StartedMs!.Value - day.State.DayStartMs!.Value) / 1000.0 + 31 * 60);
        day.ReadOff(ReadingKind.Temperature, "tun", 0);
        Assert.Equal("mash.rest-1", day.Focus.StepId);
        Assert.Matches("^Hands in [0-9]+ min, at [0-9:]+: liquor\\.$", DeckComposer.Of(Moment(day), []).Hands.ToString());
    }

    [Fact]
    public void What_was_skipped_is_named_as_the_cause()
    {
        var day = new PerfectDay(Demo.Plan());
        var hops = day.State.Plan!.Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges.Any(c => c.AlphaG > 0)).Spec;
        day.RunUntil(s => StepOrder.CanStart(s, s.Step(hops.Id)!));
        Assert.Null(Slips.Last(day.State));
        day.Accepted(new RunCommand.Skip(hops.Id, "forgotten"));
        var slip = Slips.Last(day.State)!;
        Assert.Equal($"Not done: {Moment(day).Title(hops.Id)}.", SlipWords.Of(slip, Moment(day)));
        Assert.Matches("^bitterness [0-9]+ IBU instead of [0-9]+ IBU", RemedyWords.OffPlan(day.Offers, Notation.Metric));
        Assert.Contains(Charges.All(hops.Charges, Notation.Metric), RemedyWords.Title(day.Offers.First(r => r.Kind == RemedyKind.AddNow), day.State.Plan!.Brewhouse, Notation.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void An_addition_that_went_in_late_is_named_as_the_cause()
    {
        var steps = Demo.Plan().Steps.Select(s => s.Spec).Where(s => s.Kind is StepKind.Boil or StepKind.AddToBoil).ToList();
        var aroma = steps.FindLastIndex(s => s.Kind == StepKind.AddToBoil);
        var day = Until(steps[aroma - 1].Id);
        day.Wait(60);
        day.RunPast(steps[aroma].Id);
        var slip = Slips.Last(day.State)!;
        Assert.Equal(steps[aroma - 1].Id, slip.Spec.Id);
        Assert.Equal(Durations.Short(Slips.OverS(slip)) + $" late: {Moment(day).Title(steps[aroma].Id)}.", SlipWords.Of(slip, Moment(day)));
    }
}
