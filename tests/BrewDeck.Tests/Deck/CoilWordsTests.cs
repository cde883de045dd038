using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Wording;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Deck;

/// <summary>A mash heated through a coil in the hot liquor tank: what is told, what is planned with and what is rehearsed are one.</summary>
public sealed class CoilWordsTests
{
    private const long StartMs = 1_780_000_000_000;

    private static readonly Brewhouse House = Demo.House with
    {
        Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "tun" ? v with { Elements = [] } : v)],
        Coil = new Coil(0.7, 8, 20),
        Habits = Demo.House.Habits with { MashHeating = MashHeating.Coil },
    };

    private static readonly Recipe ThreeRests = Demo.Amber with { Rests = [new("mash-in", 52, 10), new("maltose", 63, 40), new("mash-out", 77, 10)] };

    private static Plan Plan { get; } = Demo.Plan(ThreeRests, house: House);

    [Fact]
    public void A_raise_leads_the_wort_through_the_coil_and_heats_the_tank()
    {
        var raises = Plan.Steps.Where(s => s.Spec.Kind == StepKind.Ramp).Select(s => string.Join(" ", HandsWords.AtTheDeck(s, Plan, Notation.Metric))).ToList();

        Assert.Equal(
            [
                "Coil covered? Pump on: wort through the coil and back over the bed. Heat on, set to 71 °C, in the hot liquor tank. Pump off at 63 °C; then 77 °C in the hot liquor tank.",
                "Coil covered? Pump on: wort through the coil and back over the bed. Heat on, set to 79 °C, in the hot liquor tank. Pump off at 77 °C; then 78 °C in the hot liquor tank.",
            ],
            raises);
    }

    /// <summary>The tank is never reckoned hotter than it is told to be set, and is kept afterwards at what is told.</summary>
    [Fact]
    public void What_is_told_is_what_is_planned_with()
    {
        var tank = PlantSetting.Of(Plan.Brewhouse, Plan.Choices).IndexOf("liquor");
        foreach (var (before, ramp) in Plan.Steps.Zip(Plan.Steps.Skip(1)).Where(p => p.Second.Spec.Kind == StepKind.Ramp))
        {
            var (was, liquor) = (before.After.Vessels[tank].TempC, ramp.After.Vessels[tank]);
            Assert.True(liquor.TempC <= Math.Max(was, CoilHeat.TankC(ramp.Spec.TargetC!.Value)) + 0.01, $"{liquor.TempC}");
            Assert.EndsWith($"then {Notation.Metric.Target(liquor.HoldC)} in the hot liquor tank.", HandsWords.AtTheDeck(ramp, Plan, Notation.Metric)[^1], StringComparison.Ordinal);
        }
    }

    /// <summary>The tank's heat off alone would not stop a mash that runs through hot liquor.</summary>
    [Fact]
    public void A_raise_that_runs_on_is_stopped_at_the_pump()
    {
        var alarm = new Alarm(AlarmKind.HeatRunsOn, "mash.ramp-2", 3, 0);
        Assert.StartsWith("Pump off", new AlarmWords(House, Notation.Metric, id => id) { ByCoil = true }.Action(alarm), StringComparison.Ordinal);

        var day = new PerfectDay(Plan);
        day.RunUntil(s => s.Step("mash.ramp-2")?.Status == RunStatus.Running);
        var moment = new DeckMoment(day.State, day.Forecast, RunFocus.Of(day.State, day.Forecast, day.NowMs), day.Events, day.NowMs, Notation.Metric);
        Assert.True(AlarmLines.Words(moment).ByCoil);
    }

    /// <summary>The circuit beside it shows what it draws.</summary>
    [Fact]
    public void While_the_mash_is_raised_the_tank_is_what_has_its_heat_on()
    {
        var day = new PerfectDay(Plan);
        day.RunUntil(s => s.Step("mash.ramp-2")?.Status == RunStatus.Running);
        var moment = new DeckMoment(day.State, day.Forecast, RunFocus.Of(day.State, day.Forecast, day.NowMs), day.Events, day.NowMs, Notation.Metric);

        var gauges = VesselGauges.Of(moment);

        Assert.EndsWith("heat on", gauges[0].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("heat", gauges[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_rest_nothing_runs_through_the_hot_coil_but_what_keeps_it()
    {
        var rest = Plan.Steps.Single(s => s.Spec is { Kind: StepKind.Rest, TargetC: 63 });
        Assert.StartsWith("Lid on, pump off. Coil only below 63 °C.", HandsWords.AtTheDeck(rest, Plan, Notation.Metric)[0], StringComparison.Ordinal);

        // a single mash without a sparge leaves the tank all but empty: no coil is covered
        var plain = Demo.Plan(Demo.Amber with { Rests = [new("all of it", 66, 60)] }, new DayChoices { Sparge = SpargeMethod.None, BatchL = 25 }, House);
        var only = plain.Steps.Single(s => s.Spec.Kind == StepKind.Rest);
        Assert.Equal("Lid on, pump off: nothing through the coil.", HandsWords.AtTheDeck(only, plain, Notation.Metric)[0]);
    }

    [Fact]
    public void The_hoses_name_the_coil_and_the_vorlauf_runs_past_it()
    {
        string Hoses(StepKind kind) => HandsWords.AtTheDeck(Plan.Steps.First(s => s.Spec.Kind == kind), Plan, Notation.Metric)[0];

        Assert.Matches("^Valves shut; tun to P[12] pump to coil to tun\\.$", Hoses(StepKind.DoughIn));
        Assert.Matches("^Valves shut; tun to P[12] pump to tun\\.$", Hoses(StepKind.Vorlauf));
    }

    [Fact]
    public void A_remedy_that_heats_by_the_coil_says_so_and_waits_for_the_tank()
    {
        var ramp = Plan.Steps.First(s => s.Spec.Kind == StepKind.Ramp);
        foreach (var label in new[] { "", StepLabels.Liquor })
        {
            var heat = ramp with { Spec = ramp.Spec with { Kind = StepKind.HeatMash, Label = label } };
            var said = string.Join(" ", HandsWords.Of(heat, Plan, Notation.Metric));
            Assert.Contains("through the coil", said, StringComparison.Ordinal);
            Assert.Contains("in the hot liquor tank", said, StringComparison.Ordinal);
            Assert.DoesNotContain("Elements covered?", said, StringComparison.Ordinal);
            var setting = PlantSetting.Of(Plan.Brewhouse, Plan.Choices);
            Assert.Contains(setting.IndexOf("liquor"), PlantModel.VesselsOf(setting, heat.Spec));
        }
    }

    /// <summary>No order of a rest speaks of the tank: it stays at what it was set to last.</summary>
    [Fact]
    public void A_rehearsed_rest_leaves_the_tank_as_it_is()
    {
        var player = new RehearsalPlayer(HiddenTruth.AsProfile(House, Plan.Choices), StartMs, 1, [], new Manner(Mends: false));
        var book = new TankWatch(new PaperBook(new BatchOpened(StartMs, Plan, "", Rehearsed: true)), player);

        Assert.Equal(RehearsalResult.Pitched, RehearsalRun.Of(book, player).Ended);

        Assert.InRange(player.MashOffK, 0, 1.5);
        Assert.NotEmpty(book.Sets);
        Assert.All(book.Sets, c => Assert.Equal(77, c, 0.5));
    }

    /// <summary>Looks at the tank's thermostat each time that something is done in the rest at 63 °C.</summary>
    private sealed class TankWatch(IRunBook book, RehearsalPlayer player) : IRunBook
    {
        public List<double> Sets { get; } = [];

        public RunState State => book.State;

        public Decision Submit(RunCommand command, long nowMs)
        {
            if (State.Step("mash.rest-2") is { Status: RunStatus.Running, StartedMs: { } since } && nowMs - since > 60_000)
                Sets.Add(player.Plant["liquor"].SetC);
            return book.Submit(command, nowMs);
        }
    }
}
