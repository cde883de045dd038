using BrewDeck.SystemTests.Host;
using BrewDeck.Terminal;

var ending = TerminalHost.Run(new DemoSession(), TimeProvider.System);

// not Console.Out: its first use on a terminal switches the keypad and the cursor keys over and leaves them so
using var output = new StreamWriter(Console.OpenStandardOutput());
output.WriteLine($"ended: {ending}");
