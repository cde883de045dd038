using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A day that is killed after each of its events and started again shows the screen that it showed.</summary>
public sealed class EveryEventTests
{
    private static readonly DateTimeOffset Start = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Killed_after_any_event_the_same_screen_comes_back()
    {
        using var own = new TempFolder();
        var profiles = ProfileFolder.BesideProgram(own.Path);
        var disk = new MemoryDisk();
        var store = new WatchedStore(Journal.Open(disk, Workplace.StatusOf));
        var session = NewSession(store, profiles, Start);
        Assert.True(session.Begin(PlanOf(profiles), Start));
        var player = RehearsalPlayer.For(session.State!.Plan!, 11, Start.ToUnixTimeMilliseconds());
        var (compared, last) = (0, "");
        while (true)
        {
            var command = player.Next(session.State!, player.NowMs + 600_000);
            if (command is null)
                continue;
            var now = DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs);
            player.Answered(command, session.Act(command, now));
            player.Happened(store.Take(), session.State!);
            if (session.State!.Status == RunStatus.Complete)
                break;
            last = Shown(session, now);
            // nothing of the program is closed: what it had not written is gone
            using var journal = Journal.Open(disk, Workplace.StatusOf);
            Assert.Equal(last, Shown(NewSession(journal, profiles, now), now));
            compared++;
            store = new WatchedStore(Journal.Open(disk, Workplace.StatusOf));
            session = NewSession(store, profiles, now);
        }

        Assert.True(compared > 60, $"{compared} events");
    }

    private static Session NewSession(IBatchStore store, IProfiles profiles, DateTimeOffset now) =>
        new(new SessionPorts(store, profiles), new SessionSettings { ProgramVersion = "test" }, now);

    private static string Shown(Session session, DateTimeOffset now)
    {
        session.Receive(new Input.Tick(), now);
        Assert.IsType<DeckScreen>(session.Screen);
        return StillScreen.Of(session.Screen with { Notice = null }, 80, 24).ToText();
    }

    private static Plan PlanOf(ProfileFolder profiles) => Assert.IsType<PlanResult.Drawn>(Planner.Draw(
        profiles.Brewhouse(profiles.FindBrewhouse("quayside-65")), profiles.Recipe(profiles.FindRecipe("harbour-lager")), new DayChoices())).Plan;
}
