namespace BrewDeck.Terminal.Toolkit;

/// <summary>
/// While this lives, nothing is on the PATH. The toolkit runs <c>which xclip</c> in a shell at its start (10 to 20 ms);
/// it finds no shell then and goes on without a clipboard. It only looks when it stands on a terminal.
/// </summary>
internal readonly struct NoClipboardProbe : IDisposable
{
    private readonly string? _path;

    public NoClipboardProbe()
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected) return;
        _path = Environment.GetEnvironmentVariable("PATH");
        Environment.SetEnvironmentVariable("PATH", "");
    }

    public void Dispose()
    {
        if (_path is not null) Environment.SetEnvironmentVariable("PATH", _path);
    }
}
