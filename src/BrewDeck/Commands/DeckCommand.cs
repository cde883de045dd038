using BrewDeck.Deck;
using BrewDeck.Probes;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Terminal;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck</c> alone: the deck on this terminal.</summary>
internal static class DeckCommand
{
    public static int Brew(Workplace place, DeckOptions options)
    {
        var (code, left) = Once(place, options);
        return left.LeftForRehearsal ? RehearseCommand.GoOn(place, options) : left.Exercise is { } number ? RehearseCommand.Exercise(place, number, options) : code;
    }

    /// <returns>The exit code, and the session as it was left.</returns>
    private static (int Code, Session Left) Once(Workplace place, DeckOptions options)
    {
        FirstFrame.Begins();
        using var journal = place.OpenJournal();
        var ports = new SessionPorts(journal, place.Profiles(), Keeper: place.Keeper(), Writer: place.Writer())
        {
            Debrief = Debriefing.Of,
            Figures = journal.FiguresOf,
            NextDues = journal.NextDuesOf,
            Exercises = new ExerciseBook(place.Folder),
        };
        var session = NewSession(place, ports, options, place.Time.GetLocalNow());
        // of a start with an open batch a third are the bands of its first outlook: they are reckoned while the terminal is taken over
        if (session.Forecast is { } forecast)
            _ = Task.Run(() => forecast.Outlook);
        return (Show(place, session, options, "brew"), session);
    }

    private static int Say(Workplace place, ISession session, DeckOptions options, string again, BellCommand? bell, ProbeMail? mail)
    {
        if (!new PlainLoop(session, place.Time, Console.In, place.Output, options.Notation, bell is null ? null : bell.Ring, mail).Run())
            place.Output.WriteLine($"The input has ended; everything up to the last act is in the logbook. Start brewdeck {again} --plain{place.LogbookGiven} again to go on.");
        return ExitCode.Done;
    }

    private static Session NewSession(Workplace place, SessionPorts ports, DeckOptions options, DateTimeOffset now) =>
        new(ports, Settings(place, options), now);

    /// <summary>Lines that are typed whole do not bounce as keys do.</summary>
    public static SessionSettings Settings(Workplace place, DeckOptions options)
    {
        var settings = new SessionSettings { Units = options.Units, Tongue = options.Tongue, Zone = TimeZoneInfo.Local, ProgramVersion = Workplace.Version, Brewer = place.Brewer, TakenByRule = options.TakenByRule.IsDefault ? [] : options.TakenByRule };
        return options.Plain ? settings with { DoubleStrike = TimeSpan.Zero, LeaveAlone = TimeSpan.Zero } : settings;
    }

    /// <param name="again">The command that goes on with it.</param>
    public static int Show(Workplace place, ISession session, DeckOptions options, string again)
    {
        if (!options.Plain && !TerminalHost.HasTerminal)
            throw new UsageException("the deck needs a terminal; for output to a file or a pipe use brew --plain, plan, rehearse --headless or log");
        using var bell = options.BellCommand is { Length: > 0 } command ? new BellCommand(command) : null;
        var mail = options.Probe is null ? null : new ProbeMail();
        using var probe = Probe(options.Probe, place.Time, mail);
        if (options.Plain)
            return Say(place, session, options, again, bell, mail);
        var ending = TerminalHost.Run(session, place.Time, options.Theme, bell is null ? null : bell.Ring, mail);
        if (ending != Ending.SessionEnded)
            SayStopped(place);
        return ExitCode.Done;
    }

    private static IDisposable? Probe(string? path, TimeProvider time, ProbeMail? mail)
    {
        if (path is null || mail is null)
            return null;
        if (path.StartsWith(MqttAddress.Scheme, StringComparison.OrdinalIgnoreCase))
        {
            return MqttAddress.Read(path) is { } address
                ? new MqttProbe(address, time, mail)
                : throw new UsageException($"--probe: \"{path}\" is no topic of a broker; right is mqtt://HOST/TOPIC or mqtt://HOST:1883/TOPIC");
        }
        if (!OperatingSystem.IsLinux())
            throw new UsageException("--probe: files, FIFOs and devices work on Linux only; use mqtt://HOST/TOPIC, or leave it out and type the readings");
        if (path.Length == 0 || Directory.Exists(path))
            throw new UsageException($"--probe: \"{path}\" is no file, FIFO or serial device; write the path of one");
        return new ProbeReader(path, time, mail);
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
