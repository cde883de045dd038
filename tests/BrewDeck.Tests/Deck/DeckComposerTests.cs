using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Tests.Deck;

public class DeckComposerTests
{
    [Fact]
    public void The_rest_runs_by_itself_and_the_hands_are_told_when()
    {
        var screen = Of(Moments.Resting(1159));

        Assert.Equal(("40:41", "left", Tone.Normal), (screen.Big, screen.BigLabel, screen.BigTone));
        Assert.Equal("Rest at 66 °C: saccharification", screen.Headline.ToString());
        Assert.Equal("Hands needed in 41 min, at 09:20.", screen.Hands.ToString());
        Assert.Equal("Mash · step 2 of 2", screen.Title);
        Assert.Equal("Quayside Amber · 08:39 · day 0:39", screen.Corner);
    }

    [Fact]
    public void Next_steps_leave_out_what_already_runs()
    {
        var screen = Of(Moments.Resting(60));

        Assert.Equal(["Vorlauf till clear", "Lauter and sparge to 47.5 L in the kettle", "Boil"], screen.Next.Select(n => n.Text));
        Assert.Equal("Heat the sparge liquor to 77 °C: 1 h 9 min left", screen.Background[0].ToString());
    }

    [Theory]
    [InlineData(0, "60:00", "left", Tone.Normal)]
    [InlineData(3599.2, "0:01", "left", Tone.Normal)]
    [InlineData(3600, "0:00", "over time", Tone.Due)]
    [InlineData(3725, "2:05", "over time", Tone.Due)]
    [InlineData(4000, "6:40", "over time", Tone.Warning)]
    public void The_countdown_comes_from_the_deadline(double intoRestS, string big, string label, Tone tone)
    {
        var screen = Of(Moments.Resting(intoRestS));

        Assert.Equal((big, label, tone), (screen.Big, screen.BigLabel, screen.BigTone));
    }

    [Fact]
    public void When_it_is_due_the_hands_are_wanted_now()
    {
        var screen = Of(Moments.Resting(3600, FocusAct.Finish));

        Assert.Equal(Line.Of("Hands now. Space when it is done.", Tone.Due).ToString(), screen.Hands.ToString());
        Assert.Equal(Tone.Due, screen.Hands.Spans[0].Tone);
    }

    [Fact]
    public void Gauges_follow_the_model_and_the_running_heat()
    {
        var screen = Of(Moments.Resting(60));

        Assert.Equal("41.7 L  77.9 °C  heat on", screen.Vessels[0].Text);
        Assert.Equal("heat off", screen.Vessels[1].Text[^8..]);
        Assert.Equal("empty", screen.Vessels[2].Text);
        Assert.Equal(3, screen.Vessels.Length);
        Assert.Equal(("circuit A", "15.0 of 15 A"), (screen.Circuits[0].Name, screen.Circuits[0].Text));
        Assert.Equal(0, screen.Circuits[1].Fraction);
    }

    [Fact]
    public void An_outlook_off_plan_says_so_in_a_word()
    {
        var moment = Moments.Resting(60);
        var off = moment with { Forecast = moment.Forecast with { Outlook = Moments.Outlook(1.044) } };

        Assert.Equal(("gravity", "1.048", "1.046 .. 1.050", Tone.Normal), Flat(Of(moment).Outlook[0]));
        Assert.Equal(("gravity off plan 1.048:", "1.044", "1.042 .. 1.046", Tone.Warning), Flat(Of(off).Outlook[0]));

        static (string, string, string, Tone) Flat(OutlookItem o) => (o.Label, o.Value, o.Band, o.Tone);
    }

    [Fact]
    public void The_strip_covers_the_day_without_gaps()
    {
        var screen = Of(Moments.Resting(60));

        Assert.Equal(["set up", "mash", "lauter", "boil"], screen.Strip.Select(p => p.Label));
        Assert.Equal(0, screen.Strip[0].From);
        Assert.Equal(1, screen.Strip[^1].To);
        for (var i = 1; i < screen.Strip.Length; i++)
            Assert.Equal(screen.Strip[i - 1].To, screen.Strip[i].From);
        Assert.Equal(21 / 190.0, screen.StripNow, 6);
    }

    [Fact]
    public void A_held_step_says_so_and_counts_since_when()
    {
        var moment = Moments.Resting(300);
        var held = moment with
        {
            State = moment.State with { Steps = moment.State.Steps.SetItem(3, new RunStep(Quayside.Rest.Spec, RunStatus.Held, Moments.At(1200), null, Moments.At(1440))) },
        };

        var screen = Of(held);

        Assert.Equal(("1:00", "held", Tone.Warning), (screen.Big, screen.BigLabel, screen.BigTone));
        Assert.StartsWith("HELD", screen.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_is_over_asks_for_nothing()
    {
        var moment = Moments.Resting(0) with { Focus = new RunFocus(FocusAct.None, "", 0) };

        var screen = Of(moment);

        Assert.Equal(("Day over", "20:00", "Space: batch, log, fermenter readings."), (screen.Title, screen.Big, screen.Hands.ToString()));
    }

    [Fact]
    public void The_clock_of_the_day_stops_when_the_day_is_over()
    {
        var moment = Moments.Resting(0) with { Focus = new RunFocus(FocusAct.None, "", 0), NowMs = Moments.At(90_000) };
        var over = moment.State.Steps.Select(s => s with { Status = RunStatus.Complete, StartedMs = s.StartedMs ?? Moments.At(1200), EndedMs = Moments.At(7260) });

        var screen = Of(moment with { State = moment.State with { Status = RunStatus.Complete, Steps = [.. over] } });

        Assert.EndsWith("day 2:01", screen.Corner, StringComparison.Ordinal);
        Assert.Equal(1, screen.StripNow, 1e-9);
    }

    private static DeckScreen Of(DeckMoment moment) => DeckComposer.Of(moment, KeyMap.Hints(KeyContext.Deck, moment.Notation));
}
