using System.CommandLine;

namespace BrewDeck.Commands.Shipping;

/// <summary>The command table as paths and what each takes: the manual page and the completions are made from it.</summary>
internal static class CommandTree
{
    /// <summary>A command and those under it, each with its whole path such as "brewdeck log show"; hidden ones are left out.</summary>
    public static IEnumerable<(string Path, Command Command)> Of(RootCommand root) => Under(Name, root);

    public const string Name = "brewdeck";

    /// <summary>Its own options and those that hold for every command under the root.</summary>
    public static IEnumerable<Option> Options(Command command, RootCommand root) =>
        command.Options.Concat(command == root ? [] : root.Options.Where(o => o.Recursive)).Where(o => !o.Hidden);

    private static IEnumerable<(string Path, Command Command)> Under(string path, Command command) =>
        command.Subcommands.Where(c => !c.Hidden).SelectMany(c => Under($"{path} {c.Name}", c)).Prepend((path, command));
}
