using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>A rehearsal on the deck: its session, its clock and its plant. One that was broken off is taken up again.</summary>
internal sealed class RehearsalDeck
{
    private readonly DateTimeOffset _begins;

    private RehearsalDeck(Session session, RehearsalClock clock, RehearsalSession live, DateTimeOffset begins) =>
        (Session, Clock, Live, _begins) = (session, clock, live, begins);

    /// <summary>Without a batch nothing was broken off.</summary>
    public Session Session { get; }

    public RehearsalClock Clock { get; }

    /// <summary>What the terminal shows.</summary>
    public RehearsalSession Live { get; }

    /// <param name="wall">Time now.</param>
    /// <param name="speed">Times faster than the clock, 1 to 3600.</param>
    public static RehearsalDeck Open(IBatchStore journal, IProfiles profiles, SessionSettings settings, DateTimeOffset wall, double speed, IExerciseBook? book = null)
    {
        var store = new WatchedStore(journal);
        var open = journal.List().FirstOrDefault(h => h.Rehearsed && h.Status is not (RunStatus.Complete or RunStatus.Aborted));
        var events = open is null ? [] : journal.Read(open.Number);
        var begins = events.Count > 0 ? DateTimeOffset.FromUnixTimeMilliseconds(events[^1].AtMs) : wall;
        var card = (events.FirstOrDefault() as BatchOpened)?.Card;
        var clock = new RehearsalClock(wall, begins, speed) { Card = card, HandsOn = HandsIn(events) ?? card?.Exercise is not null };
        var session = new Session(new SessionPorts(store, profiles, clock) { Debrief = Debriefing.Of, Exercises = book }, settings, begins);
        return new RehearsalDeck(session, clock, new RehearsalSession(session, store, clock, events), begins);
    }

    /// <summary>Whose hands a rehearsal was left in: true, the trainee's; null: they never changed, and an exercise is the trainee's own work.</summary>
    private static bool? HandsIn(IReadOnlyList<RunEvent> events) =>
        events.OfType<RehearsalMarked>().LastOrDefault(e => e.Mark != RehearsalMark.PowerLost) is { } last ? last.Mark == RehearsalMark.OwnHands : null;

    /// <summary>Opens a batch with what it is dealt.</summary>
    public bool Begin(Plan plan, RehearsalCard card)
    {
        Clock.Card = card;
        Clock.HandsOn = card.Exercise is not null;
        return Session.Begin(plan, _begins);
    }
}
