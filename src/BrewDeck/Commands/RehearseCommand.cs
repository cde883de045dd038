using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck rehearse</c>: a simulator stands in for the vessels, and for the brewer unless the brewer takes over.</summary>
internal static class RehearseCommand
{
    /// <summary>Headless days begin then unless the day says otherwise, so that a seed gives the same lines on any date.</summary>
    private static readonly DateTimeOffset FixedStart = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    /// <param name="count">Days with the seeds that follow.</param>
    /// <param name="house">The hidden brewhouse that all the days are brewed on; null: one of its own for each day.</param>
    /// <param name="keep">Into the logbook, marked as rehearsed; otherwise the journal works in memory.</param>
    public static int Headless(Workplace place, DayOptions day, int seed, int count, bool json, bool keep, int? house = null) => place.Guard(() =>
    {
        if (count < 1)
            throw new UsageException($"--count: {count} is too few; write 1 or more");
        var profiles = place.Profiles();
        if (day.Draw(profiles) is not PlanResult.Drawn { Plan: var plan })
            return PlanCommand.Run(place, day, json ? PlanFormat.Json : PlanFormat.Text);
        var aborted = 0;
        for (var i = 0; i < count; i++)
        {
            using var journal = keep ? place.OpenJournal() : Journal.Open(new MemoryDisk(), Workplace.StatusOf);
            var result = Play(new SessionPorts(journal, profiles, new Unwatched()), place.Brewer, plan, seed + i, house, i);
            aborted += result.Ended == RehearsalResult.Pitched ? 0 : 1;
            place.Output.WriteLine(json ? RehearsalJson.Of(result, plan) : RehearsalText.Of(result, plan));
        }
        return aborted == 0 ? ExitCode.Done : ExitCode.Refused;
    });

    private static RehearsalResult Play(SessionPorts ports, string? brewer, Plan plan, int seed, int? house, int day)
    {
        // days on one brewhouse follow each other
        var start = (plan.Choices.Start ?? FixedStart).AddDays(house is null ? 0 : day);
        var session = new Session(ports, new SessionSettings { ProgramVersion = Workplace.Version, Brewer = brewer }, start);
        session.Begin(plan, start);
        return RehearsalRun.Of(
            house is { } own ? HiddenTruth.Draw(plan.Brewhouse, plan.Choices, own, seed) : HiddenTruth.Draw(plan.Brewhouse, plan.Choices, seed),
            new SessionBook(session), start.ToUnixTimeMilliseconds());
    }

    /// <summary>On the deck, at a chosen speed. A rehearsal that was broken off is taken up again.</summary>
    public static int OnDeck(Workplace place, DayOptions day, int seed, double speed, DeckOptions options) => place.Guard(() =>
    {
        if (!(speed is >= 1 and <= 3600))
            throw new UsageException($"--speed: {speed} is out of range; write 1 to 3600");
        using var journal = place.OpenJournal();
        var store = new WatchedStore(journal);
        var open = journal.List().FirstOrDefault(h => h.Rehearsed && h.Status is not (RunStatus.Complete or RunStatus.Aborted));
        var events = open is null ? [] : journal.Read(open.Number);
        var wall = place.Time.GetLocalNow();
        var begins = events.Count > 0 ? DateTimeOffset.FromUnixTimeMilliseconds(events[^1].AtMs) : wall;
        var clock = new RehearsalClock(wall, begins, speed);
        var ports = new SessionPorts(store, place.Profiles(), clock);
        var session = DeckCommand.NewSession(place, ports, options.Units, begins);
        if (session.State is null)
        {
            if (day.Draw(place.Profiles()) is not PlanResult.Drawn { Plan: var plan })
                return PlanCommand.Run(place, day, PlanFormat.Text);
            session.Begin(plan, begins);
        }
        return DeckCommand.Show(place, new RehearsalSession(session, store, clock, seed, events), options);
    });

    /// <summary>A headless day has no clock to steer; what it writes is marked as rehearsed all the same.</summary>
    private sealed class Unwatched : IRehearsalControls
    {
        public double Speed { get; set; } = 1;

        public bool Paused { get; set; }

        public bool HandsOn { get; set; }
    }
}
