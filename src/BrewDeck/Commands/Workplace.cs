using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Logbook.Moving;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary>The folders that a command works with, the streams it writes to, and how trouble becomes one line and an exit code.</summary>
internal sealed class Workplace(string? logbook, TimeProvider time, TextWriter output, TextWriter errors)
{
    /// <summary>Who brews, as <c>--brewer</c> or BREWDECK_BREWER says, for the batch record; null: not said.</summary>
    public string? Brewer { get; init; } = Environment.GetEnvironmentVariable("BREWDECK_BREWER") is { Length: > 0 } name ? name : null;

    /// <summary>Of the program, written into each batch.</summary>
    public static string Version => typeof(Workplace).Assembly.GetName().Version?.ToString(3) ?? "0";

    public TimeProvider Time => time;

    public TextWriter Output => output;

    public TextWriter Errors => errors;

    public string Folder => LogFolder.Resolve(logbook);

    public ProfileFolder Profiles() => ProfileFolder.BesideProgram(Folder);

    public ProfileKeeper Keeper() => new(Folder, Path.Combine(AppContext.BaseDirectory, "profiles"));

    public ProfileWriter Writer() => new(Folder, Profiles());

    /// <summary>The logbook's option as it was given, to be typed again; empty: it was not.</summary>
    public string LogbookGiven => logbook is null ? "" : logbook.Contains(' ', StringComparison.Ordinal) ? $" --logbook \"{logbook}\"" : $" --logbook {logbook}";

    public Journal OpenJournal()
    {
        try
        {
            var journal = Journal.Open(new FolderDisk(Folder), StatusOf);
            LastOpened.Write(Folder, time.GetLocalNow());
            return journal;
        }
        catch (LogbookException e) when (DiskTrouble.IsInUse(e) && LastOpened.By(Folder) is { } who)
        {
            throw new LogbookException(e.Message.Replace("another brewdeck has", $"another brewdeck ({who}) has", StringComparison.Ordinal), e.InnerException);
        }
    }

    /// <summary>For a command that only reads: it may run beside an open deck.</summary>
    public ILogReader OpenReader()
    {
        var reader = ILogReader.Open(() => new FolderDisk(Folder), StatusOf);
        foreach (var notice in reader.Notices)
            new ErrorLines(errors).Say(notice);
        return reader;
    }

    public static RunStatus StatusOf(IReadOnlyList<RunEvent> events) => StatusFold.Of(events);

    public LogCommands LogCommands(UnitSystem units) => new(() => new FolderDisk(Folder), StatusOf, output, errors) { Notation = NotationOf(units) };

    public MoveCommands MoveCommands() => new(Folder, StatusOf, output, errors);

    public static Notation NotationOf(UnitSystem units) => new(units, TimeZoneInfo.Local);

    public Workplace BrewedBy(string name) => new(logbook, time, output, errors) { Brewer = name };

    /// <summary>Runs a command; what is wrong with a file or the logbook becomes one line on the error stream.</summary>
    public int Guard(Func<int> command)
    {
        try
        {
            return command();
        }
        catch (ProfileException e)
        {
            return Say(e.Message, ExitCode.BadInput);
        }
        catch (LogbookException e)
        {
            return Say(e.Message, ExitCode.LogbookTrouble);
        }
        catch (UsageException e)
        {
            return Say(e.Message, ExitCode.Usage);
        }
    }

    public int Say(string line, int code)
    {
        errors.WriteLine($"brewdeck: {line}");
        return code;
    }
}

/// <summary>An option that cannot be used; the message says what would be right.</summary>
internal sealed class UsageException(string message) : Exception(message);
