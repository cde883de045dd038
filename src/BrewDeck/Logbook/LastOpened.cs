using System.Globalization;

namespace BrewDeck.Logbook;

/// <summary>Which process opened a logbook last, and when: who finds it in use wants to know which window to look for.</summary>
internal static class LastOpened
{
    private const string Name = "last-opened.txt";

    /// <summary>A logbook on which this cannot be written is none the worse for it.</summary>
    public static void Write(string folder, DateTimeOffset now)
    {
        try
        {
            File.WriteAllText(Path.Combine(folder, Name), string.Create(CultureInfo.InvariantCulture, $"process {Environment.ProcessId} since {now:yyyy-MM-dd HH:mm}\n"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
        }
    }

    /// <returns>"process 4711 since 2026-05-30 08:00"; null: it was not written.</returns>
    public static string? By(string folder)
    {
        try
        {
            var text = SafeText.OneLine(File.ReadAllText(Path.Combine(folder, Name)).Trim());
            return text.Length is > 0 and <= 80 ? text : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
