using System.Globalization;
using System.Text.Json;
using BrewDeck.Deck;

namespace BrewDeck.Rehearsals;

/// <summary>Which exercises were tried and passed: <c>exercises.jsonl</c> in the data folder, one line of JSON a try.</summary>
internal sealed class ExerciseBook : IExerciseBook
{
    public const string FileName = "exercises.jsonl";

    private readonly string _path;

    private readonly HashSet<int> _passed = [];

    /// <exception cref="LogbookException">The file cannot be read.</exception>
    public ExerciseBook(string folder)
    {
        _path = Path.Combine(folder, FileName);
        Guard(() => Read(File.Exists(_path) ? File.ReadAllLines(_path) : []));
    }

    public bool HasPassed(int number) => _passed.Contains(number);

    public void Keep(int number, int batch, bool passed, DateTimeOffset now) => Guard(() =>
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_path)!);
        using var file = new FileStream(_path, FileMode.Append, FileAccess.Write);
        file.Write(System.Text.Encoding.ASCII.GetBytes(Line(number, batch, passed, now)));
        file.Flush(flushToDisk: true);
        if (passed)
            _passed.Add(number);
    });

    private static string Line(int number, int batch, bool passed, DateTimeOffset now) => string.Create(
        CultureInfo.InvariantCulture,
        $"{{\"exercise\":{number},\"batch\":{batch},\"passed\":{(passed ? "true" : "false")},\"at_utc\":\"{now.UtcDateTime:yyyy-MM-dd'T'HH:mm:ss'Z'}\"}}\n");

    private void Read(string[] lines)
    {
        foreach (var line in lines)
        {
            if (Passed(line) is { } number)
                _passed.Add(number);
        }
    }

    /// <summary>Number of an exercise that a line says was passed. A line that a power cut tore counts as no try.</summary>
    private static int? Passed(string line)
    {
        try
        {
            using var json = JsonDocument.Parse(line);
            return json.RootElement.GetProperty("passed").GetBoolean() ? json.RootElement.GetProperty("exercise").GetInt32() : null;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private void Guard(Action act)
    {
        try
        {
            act();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LogbookException($"{_path}: cannot be used: {e.Message}", e);
        }
    }
}
