namespace BrewDeck.Terminal.Tty;

/// <summary>The line discipline of the terminal: raw while the program draws, as it was found otherwise.</summary>
internal sealed class RawMode
{
    private readonly byte[] _found = new byte[Libc.TermiosRoom];
    private readonly bool _known;

    public RawMode() => _known = Libc.GetAttributes(Libc.Input, _found) == 0;

    public void Enter()
    {
        if (!_known) return;
        var raw = (byte[])_found.Clone();
        Libc.MakeRaw(raw);
        Libc.SetAttributes(Libc.Input, 0, raw);
    }

    public void Leave()
    {
        if (_known) Libc.SetAttributes(Libc.Input, 0, _found);
    }
}
