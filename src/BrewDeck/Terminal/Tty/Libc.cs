using System.Runtime.InteropServices;

namespace BrewDeck.Terminal.Tty;

/// <summary>The calls into the C library that a terminal needs; Linux numbers.</summary>
internal static partial class Libc
{
    public const int Input = 0;
    public const int Output = 1;
    public const int InterruptedCall = 4;
    public const int TryAgain = 11;
    public const short Readable = 1;
    public const short Writable = 4;
    public const int Forever = -1;
    public const int CloseOnExec = 0x80000;
    public const int StopSignal = 20;
    public const nuint GetWindowSize = 0x5413;

    /// <summary>Larger than any termios of the systems .NET runs on (60 bytes on Linux).</summary>
    public const int TermiosRoom = 256;

    [LibraryImport("libc", EntryPoint = "read", SetLastError = true)]
    public static partial nint Read(int descriptor, Span<byte> into, nuint count);

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    public static partial nint Write(int descriptor, ReadOnlySpan<byte> from, nuint count);

    [LibraryImport("libc", EntryPoint = "eventfd", SetLastError = true)]
    public static partial int NewEvent(uint value, int flags);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    public static partial int Close(int descriptor);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    public static partial int Poll(ref PollItem item, nuint count, int timeoutMs);

    [LibraryImport("libc", EntryPoint = "ioctl", SetLastError = true)]
    public static partial int ReadWindowSize(int descriptor, nuint request, out WindowSize size);

    [LibraryImport("libc", EntryPoint = "tcgetattr", SetLastError = true)]
    public static partial int GetAttributes(int descriptor, Span<byte> termios);

    [LibraryImport("libc", EntryPoint = "tcsetattr", SetLastError = true)]
    public static partial int SetAttributes(int descriptor, int when, ReadOnlySpan<byte> termios);

    [LibraryImport("libc", EntryPoint = "cfmakeraw")]
    public static partial void MakeRaw(Span<byte> termios);

    [LibraryImport("libc", EntryPoint = "isatty")]
    public static partial int IsTerminal(int descriptor);

    [LibraryImport("libc", EntryPoint = "kill", SetLastError = true)]
    public static partial int Signal(int process, int signal);

    [StructLayout(LayoutKind.Sequential)]
    public struct WindowSize
    {
        public ushort Rows;
        public ushort Columns;
        public ushort WidthPixels;
        public ushort HeightPixels;
    }

    [StructLayout(LayoutKind.Sequential)]
    public struct PollItem
    {
        public int Descriptor;
        public short Wanted;
        public short Seen;
    }
}
