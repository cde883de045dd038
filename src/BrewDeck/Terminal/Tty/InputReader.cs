using System.Runtime.InteropServices;
using System.Text;

namespace BrewDeck.Terminal.Tty;

/// <summary>
/// Waits for the terminal in a thread of its own and hands on what is typed, a burst at a time. It ends with its loop: one that was left behind by
/// the first of two decks took every second key of the second. What nobody has read by then is the next reader's.
/// </summary>
internal sealed class InputReader(Action<ReadOnlySpan<char>> take, Doorbell doorbell) : IDisposable
{
    /// <summary>A reader that is stuck (another program took what was there to read) must not keep the program from its end.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(200);

    private readonly Decoder _utf8 = new UTF8Encoding(false).GetDecoder();
    private readonly int _stop = Libc.NewEvent(0, Libc.CloseOnExec);
    private Thread? _thread;

    public void Start()
    {
        _thread = new Thread(Run) { IsBackground = true, Name = "terminal input" };
        _thread.Start();
    }

    public void Dispose()
    {
        Span<byte> one = stackalloc byte[sizeof(ulong)];
        BitConverter.TryWriteBytes(one, 1UL);
        Libc.Write(_stop, one, sizeof(ulong));
        if (_thread?.Join(Patience) != false) Libc.Close(_stop);
    }

    private void Run()
    {
        Span<byte> bytes = stackalloc byte[4096];
        Span<char> chars = stackalloc char[4096 + 4];
        while (true)
        {
            if (Stopped()) return;
            var count = Libc.Read(Libc.Input, bytes, (nuint)bytes.Length);
            if (count < 0 && Marshal.GetLastPInvokeError() is Libc.InterruptedCall or Libc.TryAgain) continue;
            if (count <= 0) break;
            take(chars[.._utf8.GetChars(bytes[..(int)count], chars, flush: false)]);
            doorbell.Say(Doorbell.News.Typed);
        }

        doorbell.Say(Doorbell.News.HungUp);
    }

    /// <summary>Waits until there is something to read, or nothing more is to be read.</summary>
    private bool Stopped()
    {
        Span<Libc.PollItem> items =
        [
            new() { Descriptor = Libc.Input, Wanted = Libc.Readable },
            new() { Descriptor = _stop, Wanted = Libc.Readable },
        ];
        while (Libc.Poll(ref items[0], (nuint)items.Length, Libc.Forever) < 0 && Marshal.GetLastPInvokeError() is Libc.InterruptedCall or Libc.TryAgain)
            continue;
        return items[1].Seen != 0;
    }
}
