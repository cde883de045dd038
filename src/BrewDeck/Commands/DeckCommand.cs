using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Terminal;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck</c> alone: the deck on this terminal.</summary>
internal static class DeckCommand
{
    public static int Brew(Workplace place, DeckOptions options) => place.Guard(() =>
    {
        var (code, exercise) = Once(place, options);
        return exercise is { } number ? RehearseCommand.Exercise(place, number, options) : code;
    });

    /// <returns>The exit code, and the exercise that the deck was left for.</returns>
    private static (int Code, int? Exercise) Once(Workplace place, DeckOptions options)
    {
        using var journal = place.OpenJournal();
        var ports = new SessionPorts(journal, place.Profiles(), Keeper: place.Keeper(), Writer: place.Writer())
        {
            Debrief = Debriefing.Of,
            Exercises = new ExerciseBook(place.Folder),
        };
        var session = NewSession(place, ports, options.Units, place.Time.GetLocalNow());
        return (Show(place, session, options), session.Exercise);
    }

    public static Session NewSession(Workplace place, SessionPorts ports, UnitSystem units, DateTimeOffset now) =>
        new(ports, Settings(place, units), now);

    public static SessionSettings Settings(Workplace place, UnitSystem units) =>
        new() { Units = units, Zone = TimeZoneInfo.Local, ProgramVersion = Workplace.Version, Brewer = place.Brewer };

    public static int Show(Workplace place, ISession session, DeckOptions options)
    {
        if (!TerminalHost.HasTerminal)
            throw new UsageException("the deck needs a terminal; for output to a file or a pipe use plan, rehearse --headless or log");
        using var bell = options.BellCommand is { Length: > 0 } command ? new BellCommand(command) : null;
        var ending = TerminalHost.Run(session, place.Time, options.Theme, bell is null ? null : bell.Ring);
        if (ending != Ending.SessionEnded)
            SayStopped(place);
        return ExitCode.Done;
    }

    private static void SayStopped(Workplace place)
    {
        try
        {
            place.Errors.WriteLine("brewdeck: stopped; everything up to the last act is in the logbook, start brewdeck again to go on");
        }
        catch (IOException) // the terminal is gone, and nobody is there to tell
        {
        }
    }
}
