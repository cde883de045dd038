using System.Text;
using BrewDeck.SystemTests.Host;
using BrewDeck.Terminal;
using Microsoft.Win32.SafeHandles;

var ending = TerminalHost.Run(new DemoSession(), TimeProvider.System);

// not the console: the first thing written there switches the keypad and the cursor keys over and leaves them so
using var output = new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write);
output.Write(Encoding.UTF8.GetBytes($"ended: {ending}\n"));
