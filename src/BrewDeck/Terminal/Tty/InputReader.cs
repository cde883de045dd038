using System.Runtime.InteropServices;
using System.Text;

namespace BrewDeck.Terminal.Tty;

/// <summary>Blocks on the terminal in a thread of its own and hands on what is typed, a burst at a time.</summary>
internal sealed class InputReader(Action<ReadOnlySpan<char>> take, Doorbell doorbell)
{
    private readonly Decoder _utf8 = new UTF8Encoding(false).GetDecoder();

    public void Start() =>
        new Thread(Run) { IsBackground = true, Name = "terminal input" }.Start();

    private void Run()
    {
        Span<byte> bytes = stackalloc byte[4096];
        Span<char> chars = stackalloc char[4096 + 4];
        while (true)
        {
            var count = Libc.Read(Libc.Input, bytes, (nuint)bytes.Length);
            if (count < 0 && Marshal.GetLastPInvokeError() is Libc.InterruptedCall or Libc.TryAgain) continue;
            if (count <= 0) break;
            take(chars[.._utf8.GetChars(bytes[..(int)count], chars, flush: false)]);
            doorbell.Say(Doorbell.News.Typed);
        }

        doorbell.Say(Doorbell.News.HungUp);
    }
}
