using System.Runtime.InteropServices;
using System.Text;

namespace BrewDeck.Terminal.Tty;

/// <summary>Writes to the terminal, whole; silent once closed or when the terminal is gone.</summary>
internal sealed class TtyWriter
{
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(200);

    private readonly Lock _gate = new();
    private volatile bool _closed;

    public void Write(string text)
    {
        lock (_gate)
        {
            if (!_closed) WriteAll(Encoding.UTF8.GetBytes(text));
        }
    }

    /// <summary>
    /// Writes the last words and closes. Waits only a moment for a writer that is stuck on a terminal that takes nothing
    /// (Ctrl-S, a dead link), so that a signal still ends the program.
    /// </summary>
    public void Close(string lastWords)
    {
        if (!_gate.TryEnter(Patience))
        {
            _closed = true;
            return;
        }

        try
        {
            if (!_closed) WriteAll(Encoding.UTF8.GetBytes(lastWords));
            _closed = true;
        }
        finally
        {
            _gate.Exit();
        }
    }

    private void WriteAll(ReadOnlySpan<byte> bytes)
    {
        while (!bytes.IsEmpty && !_closed)
        {
            var written = Libc.Write(Libc.Output, bytes, (nuint)bytes.Length);
            if (written > 0)
                bytes = bytes[(int)written..];
            else if (!MayTryAgain(Marshal.GetLastPInvokeError()))
                return;
        }
    }

    private static bool MayTryAgain(int error)
    {
        if (error == Libc.InterruptedCall) return true;
        if (error != Libc.TryAgain) return false;
        var item = new Libc.PollItem { Descriptor = Libc.Output, Wanted = Libc.Writable };
        Libc.Poll(ref item, 1, 1000);
        return true;
    }
}
