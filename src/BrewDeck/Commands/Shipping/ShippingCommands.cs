using System.CommandLine;

namespace BrewDeck.Commands.Shipping;

/// <summary>What goes along with the program: licences, manual page and shell completion, all made from what is in it.</summary>
internal static class ShippingCommands
{
    public static IEnumerable<Command> Of(RootCommand root, TextWriter output)
    {
        yield return Printing("licences", "Lists the packages that the program is built from, with their licences.", output, _ => Licences.Text());
        yield return Printing("manual", "Prints the manual page (roff): brewdeck manual | man -l -", output, _ => ManualPage.Of(root));
        var shell = new Argument<Shell>("shell") { Description = "bash, zsh or fish." };
        var completion = Printing("completion", "Prints a completion script for a shell.", output, p => Completions.For(p.GetValue(shell), root));
        completion.Arguments.Add(shell);
        yield return completion;
    }

    private static Command Printing(string name, string does, TextWriter output, Func<ParseResult, string> text)
    {
        var command = new Command(name, does);
        command.SetAction(p =>
        {
            output.Write(text(p));
            return 0;
        });
        return command;
    }
}
