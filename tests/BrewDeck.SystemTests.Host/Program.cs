using System.Text;
using BrewDeck;
using BrewDeck.Commands;
using BrewDeck.SystemTests.Host;
using BrewDeck.Terminal;
using Microsoft.Win32.SafeHandles;

if (args is ["days", var folder])
{
    using var said = new StreamWriter(new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write));
    new KillableDays(folder, said).Run();
}

var notes = args is [var own] ? own : Path.Combine(Path.GetTempPath(), "no-notes-wanted");
return new FaultGuard(() => notes, TimeProvider.System, StandardStreams.Errors()).Run(() =>
{
    var ending = TerminalHost.Run(new DemoSession(), TimeProvider.System);

    // not the console: the first thing written there switches the keypad and the cursor keys over and leaves them so
    using var output = new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write);
    output.Write(Encoding.UTF8.GetBytes($"ended: {ending}\n"));
    return 0;
});
