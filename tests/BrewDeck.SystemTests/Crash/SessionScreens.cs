using System.Security.Cryptography;
using System.Text;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Crash;

/// <summary>What a session shows and what an event says, short enough to be told from one process to another.</summary>
internal static class SessionScreens
{
    /// <summary>As the program makes it for a rehearsal of that seed.</summary>
    public static Session New(IBatchStore store, IProfiles profiles, DateTimeOffset now, int seed) =>
        new(new SessionPorts(store, profiles, new Unwatched(seed)), new SessionSettings { ProgramVersion = "test" }, now);

    /// <summary>All of the screen at a moment but the notice, which speaks of what was just done.</summary>
    public static string At(Session session, DateTimeOffset now)
    {
        session.Receive(new Input.Tick(), now);
        return StillScreen.Of(session.Screen with { Notice = null }, 80, 24).ToText();
    }

    public static string HashOf(string screen) => Hash(Encoding.UTF8.GetBytes(screen));

    public static string HashOf(RunEvent happened) => Hash(EventCodec.Encode(happened));

    private static string Hash(byte[] content) => Convert.ToHexString(SHA256.HashData(content), 0, 8);

    private sealed class Unwatched(int seed) : IRehearsalControls
    {
        public RehearsalCard? Card => new(seed, []);

        public double Speed { get; set; } = 1;

        public bool Paused { get; set; }

        public bool HandsOn { get; set; }
    }
}
