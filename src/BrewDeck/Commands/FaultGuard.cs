using System.Globalization;
using System.Runtime.InteropServices;
using BrewDeck.Deck;
using BrewDeck.Logbook;

namespace BrewDeck.Commands;

/// <summary>A fault of the program itself, on any thread, becomes one line, an exit code and a note in the logbook's folder.</summary>
/// <param name="folder">Where notes go; asked only when there is one to write.</param>
internal sealed class FaultGuard(Func<string> folder, TimeProvider time, TextWriter errors)
{
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public int Run(Func<int> command)
    {
        AppDomain.CurrentDomain.UnhandledException += OnAnotherThread;
        try
        {
            return command();
        }
        catch (Exception e)
        {
            Say(Line(e));
            return ExitCode.Fault;
        }
        finally
        {
            AppDomain.CurrentDomain.UnhandledException -= OnAnotherThread;
        }
    }

    /// <summary>The line is written last of all at the exit: the deck gives the terminal back there.</summary>
    private void OnAnotherThread(object sender, UnhandledExceptionEventArgs e)
    {
        var line = Line((Exception)e.ExceptionObject);
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Say(line);
        Environment.Exit(ExitCode.Fault);
    }

    /// <summary>The terminal may be what is gone: then nobody is there to tell, and a second exception here would keep the program from ending.</summary>
    private void Say(string line)
    {
        try
        {
            errors.WriteLine(line);
        }
        catch (IOException)
        {
        }
    }

    private string Line(Exception e) =>
        $"brewdeck: a fault in the program ({SafeText.OneLine(e.Message)}); everything up to the last act is in the logbook; {WhereNoted(e)}";

    private string WhereNoted(Exception e)
    {
        try
        {
            return $"{WriteNote(e)} says more: send it to whoever looks after the program";
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or LogbookException)
        {
            return $"no note of it could be written ({SafeText.OneLine(trouble.Message)})";
        }
    }

    private string WriteNote(Exception e)
    {
        var now = time.GetUtcNow();
        var path = Path.Combine(folder(), string.Create(CultureInfo.InvariantCulture, $"crash-{now:yyyyMMdd'T'HHmmssfff'Z'}.txt"));
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerFile;
        using var note = new StreamWriter(path, options);
        note.WriteLine($"brewdeck {Workplace.Version}, {RuntimeInformation.RuntimeIdentifier}, {RuntimeInformation.FrameworkDescription}, {now:O}");
        note.WriteLine(e);
        return path;
    }
}
