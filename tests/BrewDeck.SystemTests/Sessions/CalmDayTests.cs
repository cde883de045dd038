using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A calm day is calm: rehearsed days with a stand-in brewer who is there, counted from their records.</summary>
public sealed class CalmDayTests(ITestOutputHelper said)
{
    private static readonly DateTimeOffset Start = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("quayside-amber", 1)]
    [InlineData("harbour-lager", 2)]
    [InlineData("lantern-pale", 3)]
    [InlineData("breakwater-strong", 4)]
    public void No_minute_of_a_rehearsed_day_has_more_than_one_alarm(string recipe, int seed)
    {
        var raised = Day(recipe, seed).OfType<AlarmRaised>().ToList();
        said.WriteLine($"{recipe}, seed {seed}: {raised.Count} alarms: {string.Join(", ", raised.Select(e => $"{e.Alarm.Kind} {e.Alarm.About}"))}");

        Assert.All(raised.GroupBy(e => e.AtMs / 60_000), minute => Assert.Single(minute));
        Assert.InRange(raised.Count, 0, 6);
    }

    /// <summary>Figures for many days; minutes.</summary>
    [Fact(Explicit = true)]
    public void Forty_days_have_no_minute_with_more_than_one_alarm()
    {
        var counts = new List<int>();
        var kinds = new List<AlarmKind>();
        foreach (var recipe in (string[])["quayside-amber", "harbour-lager", "lantern-pale", "breakwater-strong"])
        {
            for (var seed = 1; seed <= 10; seed++)
            {
                var raised = Day(recipe, seed).OfType<AlarmRaised>().ToList();
                Assert.All(raised.GroupBy(e => e.AtMs / 60_000), minute => Assert.Single(minute));
                counts.Add(raised.Count);
                kinds.AddRange(raised.Select(e => e.Alarm.Kind));
            }
        }
        counts.Sort();
        said.WriteLine($"{counts.Count} days: {counts.Sum()} alarms, {counts[0]} to {counts[^1]} a day, median {counts[counts.Count / 2]}; days without any: {counts.Count(c => c == 0)}");
        foreach (var kind in kinds.GroupBy(k => k).OrderByDescending(k => k.Count()))
            said.WriteLine($"{kind.Key}: {kind.Count()}");
        Assert.InRange(counts[^1], 0, 6);
    }

    private static IReadOnlyList<RunEvent> Day(string recipe, int seed)
    {
        using var own = new TempFolder();
        var profiles = ProfileFolder.BesideProgram(own.Path);
        using var journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
        var store = new WatchedStore(journal);
        var session = new Session(new SessionPorts(store, profiles), new SessionSettings { ProgramVersion = "test" }, Start);
        Assert.True(session.Begin(PlanOf(profiles, recipe), Start));
        var player = RehearsalPlayer.For(session.State!.Plan!, seed, Start.ToUnixTimeMilliseconds());
        while (session.State!.Status is not (RunStatus.Complete or RunStatus.Aborted))
            Pass(session, player, store, player.NowMs + 15_000);
        return journal.Read(session.Batch!.Value);
    }

    private static void Pass(Session session, RehearsalPlayer player, WatchedStore store, long untilMs)
    {
        while (player.Next(session.State!, untilMs) is { } command)
        {
            player.Answered(command, session.Act(command, DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs)));
            player.Happened(store.Take(), session.State!);
        }
        session.Receive(new Input.Tick(), DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs));
        player.Happened(store.Take(), session.State!);
    }

    private static Plan PlanOf(ProfileFolder profiles, string recipe) => Assert.IsType<PlanResult.Drawn>(Planner.Draw(
        profiles.Brewhouse(profiles.FindBrewhouse("quayside-65")), profiles.Recipe(profiles.FindRecipe(recipe)), new DayChoices())).Plan;
}
