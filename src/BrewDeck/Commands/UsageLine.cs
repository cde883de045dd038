using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using BrewDeck.Commands.Shipping;
using BrewDeck.Logbook;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary>A command line that cannot be used, in one line: where, what, and what would be right. The parser itself says several, in its own words.</summary>
internal static class UsageLine
{
    /// <returns>Null when it can be used.</returns>
    public static string? Of(ParseResult parsed) => parsed.Errors.Count == 0 ? null
        : parsed.UnmatchedTokens.Count > 0 ? Unknown(parsed.CommandResult, parsed.UnmatchedTokens[0])
        : Faulty(parsed.Errors[0], parsed.CommandResult);

    private static string Unknown(CommandResult at, string token)
    {
        var command = at.Command;
        if (token.StartsWith('-'))
        {
            var option = token.Split('=', ':')[0];
            return $"{Where(at)}there is no option {Shown(option)}{Meant(option, Options(at)) ?? Few(at)}; {Help(at, "lists them")}";
        }
        return Further(command).Any()
            ? $"{Where(at)}there is no {(command is RootCommand ? "command" : Kind(at))} {Shown(token)}{Meant(token, Further(command))}; {Help(at, "lists them")}"
            : $"{Where(at)}{Shown(token)} is one word too many; {Help(at, "says what it takes")}";
    }

    private static string Faulty(ParseError error, CommandResult at) => error.SymbolResult switch
    {
        OptionResult option => Faulty(option, option.Tokens.Select(t => t.Value).ToList(), at),
        ArgumentResult { Parent: OptionResult option } argument => Faulty(option, [.. argument.Tokens.Select(t => t.Value)], at),
        ArgumentResult { Argument: var argument, Tokens: var tokens } => tokens.Count == 0
            ? $"{Where(at)}the {argument.Name} is missing; write \"{Path(at)} {argument.Name.ToUpperInvariant()}\""
            : $"{Where(at)}{Shown(tokens[0].Value)} is no {argument.Name}; write {Right(argument.ValueType, "")}",
        _ when at.Command.Options.FirstOrDefault(o => o.Required && at.GetResult(o) is null) is { } missing =>
            $"{Where(at)}{missing.Name} is missing; write {missing.Name} {missing.HelpName ?? "VALUE"}",
        _ when Further(at.Command).Any() => $"{Where(at)}say which; {Help(at, "lists them")}",
        _ when at.Command.Arguments.FirstOrDefault() is { } missing => $"{Where(at)}the {missing.Name} is missing; write \"{Path(at)} {missing.Name.ToUpperInvariant()}\"",
        _ => $"{Where(at)}cannot be used like this; {Help(at, "says what it takes")}",
    };

    private static string Faulty(OptionResult result, List<string> given, CommandResult at)
    {
        var option = result.Option;
        var right = Right(option.ValueType, option.HelpName ?? "");
        if (given.Count == 0)
            return at.GetResult(option) is { IdentifierTokenCount: 0 } or null
                ? $"{Where(at)}{option.Name} is missing; write {option.Name} {option.HelpName ?? "VALUE"}"
                : $"{option.Name}: its value is missing; write {right}";
        var known = Words(option.ValueType);
        return known.Length > 0
            ? $"{option.Name}: {Shown(given[^1])} is not known{Meant(given[^1], known)}; write {right}"
            : given.Count > 1 && !option.ValueType.IsArray ? $"{option.Name}: is given {given.Count} times; write it once"
            : $"{option.Name}: {Shown(given[^1])} cannot be used; write {right}";
    }

    private static string Right(Type type, string form)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? type.GetElementType() ?? type;
        return Words(type) is { Length: > 0 } words ? string.Join(", ", words[..^1]) + " or " + words[^1]
            : plain == typeof(int) ? "a whole number such as 3"
            : plain == typeof(double) ? "a number such as 1.5"
            : plain == typeof(bool) ? "it without a value"
            : form.Length > 0 ? form : "a value";
    }

    /// <summary>What may be written where there are only a few words, in lower case as all options are.</summary>
    private static string[] Words(Type type)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? type.GetElementType() ?? type;
        return plain.IsEnum ? [.. Enum.GetNames(plain).Select(n => n.ToLowerInvariant())] : [];
    }

    private static string? Meant(string written, IEnumerable<string> known) => NearestName.To(written, known) is { } name ? $", did you mean {name}?" : null;

    private const int MostListed = 6;

    /// <summary>Of a command with few options all of its own: none is near what was written.</summary>
    private static string Few(CommandResult at) =>
        at.Command.Options.Where(o => !o.Hidden && o is not HelpOption).Select(o => o.Name).ToList() is { Count: > 0 and <= MostListed } few ? $"; it takes {string.Join(", ", few)}" : "";

    private static IEnumerable<string> Further(Command command) => command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name);

    private static IEnumerable<string> Options(CommandResult at)
    {
        for (SymbolResult? result = at; result is CommandResult command; result = result.Parent)
        {
            foreach (var option in command.Command.Options.Where(o => !o.Hidden && (command == at || o.Recursive)))
            {
                // whoever wanted help writes nothing else that begins like it
                if (option is not HelpOption) yield return option.Name;
                foreach (var alias in option.Aliases.Where(a => a.StartsWith("--", StringComparison.Ordinal)))
                    yield return alias;
            }
        }
    }

    private static string Kind(CommandResult at) => at.Command.Name == "reckon" ? "sum" : $"\"{at.Command.Name}\" command";

    /// <summary>Empty at the root.</summary>
    private static string Where(CommandResult at) => at.Command is RootCommand ? "" : Path(at)[(CommandTree.Name.Length + 1)..] + ": ";

    private static string Path(CommandResult at) =>
        at.Command is RootCommand ? CommandTree.Name : $"{(at.Parent is CommandResult above ? Path(above) : CommandTree.Name)} {at.Command.Name}";

    private static string Help(CommandResult at, string does) => $"\"{Path(at)} --help\" {does}";

    private static string Shown(string text) => $"'{SafeText.OneLine(text)}'";
}
