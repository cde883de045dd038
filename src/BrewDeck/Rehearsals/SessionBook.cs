using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>A headless rehearsal decided and kept by the session and the journal of the program.</summary>
internal sealed class SessionBook(Session session) : IRunBook
{
    public RunState State => session.State ?? throw new InvalidOperationException("no batch is open");

    public Decision Submit(RunCommand command, long nowMs) =>
        session.Act(command, DateTimeOffset.FromUnixTimeMilliseconds(nowMs));
}
