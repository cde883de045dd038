using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using BrewDeck.Terminal.Tty;

namespace BrewDeck.Probes;

/// <summary>
/// An open file, FIFO or serial device that is read without waiting. Opened by the C library: .NET's own opening waits for
/// the writer of a FIFO, and may make a serial device our controlling terminal.
/// </summary>
[SupportedOSPlatform("linux")]
internal sealed partial class ProbeSource : IDisposable
{
    // Linux numbers of O_NONBLOCK, O_NOCTTY, O_CLOEXEC (O_RDONLY is 0) and of SEEK_CUR, SEEK_END
    private const int Opening = 0x800 | 0x100 | 0x80000;
    private const int FromHere = 1;
    private const int FromEnd = 2;

    private readonly int _descriptor;

    private ProbeSource(int descriptor) => _descriptor = descriptor;

    /// <returns>Null: it is not there, or may not be read.</returns>
    public static ProbeSource? Open(string path) => OpenFile(path, Opening) is var descriptor and >= 0 ? new ProbeSource(descriptor) : null;

    /// <summary>Bytes before the next one that is read; null for a FIFO or device, which keep none.</summary>
    public long? Position => Seek(_descriptor, 0, FromHere) is var at and >= 0 ? at : null;

    /// <summary>Passes over what stands in a file: nobody knows how old it is.</summary>
    /// <returns>True: the last line there is unfinished.</returns>
    public bool SkipToEnd()
    {
        if (Seek(_descriptor, -1, FromEnd) < 0)
        {
            _ = Seek(_descriptor, 0, FromEnd);
            return false;
        }
        Span<byte> last = stackalloc byte[1];
        return Read(last) == 1 && last[0] != (byte)'\n';
    }

    /// <returns>Bytes read; 0: nothing there for now; null: it cannot be read any more.</returns>
    public int? Read(Span<byte> into)
    {
        while (true)
        {
            var count = Libc.Read(_descriptor, into, (nuint)into.Length);
            if (count >= 0)
                return (int)count;
            switch (Marshal.GetLastPInvokeError())
            {
                case Libc.InterruptedCall:
                    continue;
                case Libc.TryAgain:
                    return 0;
                default:
                    return null;
            }
        }
    }

    public void Dispose() => _ = Close(_descriptor);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int OpenFile(string path, int flags);

    [LibraryImport("libc", EntryPoint = "lseek")]
    private static partial long Seek(int descriptor, long offset, int from);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);
}
