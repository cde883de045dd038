using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
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

    public static int Headless(Workplace place, DayOptions day, RehearseOptions options) => place.Guard(() =>
    {
        var (seed, count, json) = (options.Seed, options.Count, options.Json);
        if (count < 1)
            throw new UsageException($"--count: {count} is too few; write 1 or more");
        var profiles = place.Profiles();
        if (day.Draw(profiles) is not PlanResult.Drawn { Plan: var plan })
            return PlanCommand.Run(place, day, json ? PlanFormat.Json : PlanFormat.Text);
        var aborted = 0;
        for (var i = 0; i < count; i++)
        {
            using var journal = options.Keep ? place.OpenJournal() : Journal.Open(new MemoryDisk(), Workplace.StatusOf);
            var card = options.Deal(plan, seed + i);
            var result = Play(new SessionPorts(journal, profiles, new Unwatched(card)), plan, card, options.House, i);
            aborted += result.Ended == RehearsalResult.Pitched ? 0 : 1;
            place.Output.WriteLine(json ? RehearsalJson.Of(result, plan) : RehearsalText.Of(result, plan));
        }
        return aborted == 0 ? ExitCode.Done : ExitCode.Refused;
    });

    private static RehearsalResult Play(SessionPorts ports, Plan plan, RehearsalCard card, int? house, int day)
    {
        // days on one brewhouse follow each other
        var start = (plan.Choices.Start ?? FixedStart).AddDays(house is null ? 0 : day);
        var session = new Session(ports, new SessionSettings { ProgramVersion = Workplace.Version }, start);
        session.Begin(plan, start);
        return RehearsalRun.Of(
            house is { } own ? HiddenTruth.Draw(plan.Brewhouse, plan.Choices, own, card.Seed) : HiddenTruth.Draw(plan.Brewhouse, plan.Choices, card.Seed),
            new SessionBook(session), start.ToUnixTimeMilliseconds(), mishaps: card.Mishaps);
    }

    /// <summary>On the deck, at a chosen speed. A rehearsal that was broken off is taken up again.</summary>
    public static int OnDeck(Workplace place, DayOptions day, RehearseOptions rehearsal, DeckOptions options) => place.Guard(() =>
    {
        if (rehearsal.Speed is not (>= 1 and <= 3600))
            throw new UsageException($"--speed: {rehearsal.Speed} is out of range; write 1 to 3600");
        using var journal = place.OpenJournal();
        var store = new WatchedStore(journal);
        var open = journal.List().FirstOrDefault(h => h.Rehearsed && h.Status is not (RunStatus.Complete or RunStatus.Aborted));
        var events = open is null ? [] : journal.Read(open.Number);
        var wall = place.Time.GetLocalNow();
        var begins = events.Count > 0 ? DateTimeOffset.FromUnixTimeMilliseconds(events[^1].AtMs) : wall;
        var clock = new RehearsalClock(wall, begins, rehearsal.Speed) { Card = (events.FirstOrDefault() as BatchOpened)?.Card };
        var ports = new SessionPorts(store, place.Profiles(), clock);
        var session = DeckCommand.NewSession(place, ports, options.Units, begins);
        if (session.State is null)
        {
            if (day.Draw(place.Profiles()) is not PlanResult.Drawn { Plan: var plan })
                return PlanCommand.Run(place, day, PlanFormat.Text);
            clock.Card = rehearsal.Deal(plan, rehearsal.Seed);
            session.Begin(plan, begins);
        }
        return DeckCommand.Show(place, new RehearsalSession(session, store, clock, events), options);
    });

    /// <summary>A headless day has no clock to steer; what it writes is marked as rehearsed all the same.</summary>
    private sealed class Unwatched(RehearsalCard card) : IRehearsalControls
    {
        public RehearsalCard? Card => card;

        public double Speed { get; set; } = 1;

        public bool Paused { get; set; }

        public bool HandsOn { get; set; }
    }
}
