using System.Text;
using Microsoft.Win32.SafeHandles;

namespace BrewDeck;

/// <summary>
/// Where lines are printed. On a terminal not by way of the console class: the first thing written there sends the sequences that
/// switch the keypad and the cursor keys over (ESC [?1h, ESC =), and after the deck has given the terminal back they stay.
/// </summary>
internal static class StandardStreams
{
    public static TextWriter Output() => Console.IsOutputRedirected || OperatingSystem.IsWindows() ? Console.Out : Plain(1);

    public static TextWriter Errors() => Console.IsErrorRedirected || OperatingSystem.IsWindows() ? Console.Error : Plain(2);

    private static StreamWriter Plain(int descriptor) => new(
        new FileStream(new SafeFileHandle(descriptor, ownsHandle: false), FileAccess.Write, bufferSize: 0),
        new UTF8Encoding(encoderShouldEmitUTF8Identifier: false))
    {
        AutoFlush = true,
    };
}
