namespace BrewDeck.SystemTests.Logbook;

/// <summary>A folder of its own for one test, gone after it.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("brewdeck-test-").FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
