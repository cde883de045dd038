using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>A session on a virtual plant: time passes on both, the stand-in brewer acts through the session's own door.</summary>
/// <param name="events">Those of the batch that the session has open, for a rehearsal that is taken up again.</param>
internal sealed class RehearsalSession(Session session, WatchedStore store, RehearsalClock clock, IReadOnlyList<RunEvent> events)
    : ISession
{
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(100);

    private RehearsalPlayer? _player;
    private DateTimeOffset _wall;

    public Screen Screen => session.Screen;

    public DateTimeOffset? NextTick => clock.Paused ? null : _wall + Frame;

    public bool Ended => session.Ended;

    public string Title => session.Title;

    public bool TakeBell() => session.TakeBell();

    public void Receive(Input input, DateTimeOffset now)
    {
        _wall = now;
        var day = clock.Turn(now);
        Play(day);
        session.Receive(input, day);
        Follow();
    }

    private void Play(DateTimeOffset until)
    {
        if (Player() is not { } player)
            return;
        player.BrewerActs = !clock.HandsOn;
        while (session.State is { Plan: not null } state && player.Next(state, until.ToUnixTimeMilliseconds()) is { } command)
        {
            var decision = session.Act(command, DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs));
            player.Answered(command, decision);
            Follow();
        }
    }

    private void Follow()
    {
        var fresh = store.Take();
        if (fresh.Count > 0 && session.State is { } state)
            Player()?.Happened(fresh, state);
    }

    private RehearsalPlayer? Player()
    {
        if (_player is not null || session.State is not { Plan: { } plan } state)
            return _player;
        var start = events.Count > 0 ? events[0].AtMs : clock.Turn(_wall).ToUnixTimeMilliseconds();
        _player = RehearsalPlayer.For(plan, clock.Card?.Seed ?? 1, start, clock.Card?.Mishaps ?? []);
        if (events.Count > 0)
            _player.Happened(events, state);
        return _player;
    }
}
