using System.CommandLine;
using System.Text;

namespace BrewDeck.Commands.Shipping;

internal enum Shell
{
    Bash,
    Zsh,
    Fish,
}

/// <summary>Completion scripts for shells. Files complete as the shell does it.</summary>
internal static class Completions
{
    public static string For(Shell shell, RootCommand root) => shell switch
    {
        Shell.Bash => Bash(root),
        Shell.Zsh => "#compdef brewdeck\nautoload -U +X bashcompinit && bashcompinit\n" + Bash(root),
        _ => Fish(root),
    };

    private static string Bash(RootCommand root)
    {
        var commands = CommandTree.Of(root).ToList();
        var script = new StringBuilder("_brewdeck() {\n  local at=brewdeck word\n  for word in \"${COMP_WORDS[@]:1:COMP_CWORD-1}\"; do\n    case \"$at $word\" in\n      ")
            .AppendJoin('|', commands.Skip(1).Select(c => $"\"{c.Path}\"")).Append(") at=\"$at $word\" ;;\n    esac\n  done\n  case \"$at\" in\n");
        foreach (var (path, command) in commands)
            script.Append("    \"").Append(path).Append("\") word=\"").AppendJoin(' ', Words(command, root)).Append("\" ;;\n");
        return script.Append("  esac\n  COMPREPLY=($(compgen -W \"$word\" -- \"${COMP_WORDS[COMP_CWORD]}\"))\n}\ncomplete -o default -F _brewdeck brewdeck\n").ToString();
    }

    private static IEnumerable<string> Words(Command command, RootCommand root) =>
        command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name).Concat(CommandTree.Options(command, root).Select(o => o.Name));

    private static string Fish(RootCommand root)
    {
        var script = new StringBuilder();
        foreach (var (path, command) in CommandTree.Of(root))
        {
            var here = When(path, command);
            foreach (var sub in command.Subcommands.Where(c => !c.Hidden))
                script.Append($"complete -c brewdeck -f -n '{here}' -a {sub.Name} -d '{Quoted(sub.Description)}'\n");
            foreach (var option in command.Options.Where(o => !o.Hidden && o.Name.StartsWith("--", StringComparison.Ordinal)))
                script.Append($"complete -c brewdeck -n '{here}' -l {option.Name[2..]} -d '{Quoted(option.Description)}'\n");
        }
        return script.ToString();
    }

    private static string When(string path, Command command)
    {
        var words = path.Split(' ')[1..];
        var further = command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name).ToList();
        var seen = words.Select(w => $"__fish_seen_subcommand_from {w}");
        var notYet = further.Count > 0 ? [$"not __fish_seen_subcommand_from {string.Join(' ', further)}"] : Array.Empty<string>();
        return seen.Concat(notYet).DefaultIfEmpty("true").Aggregate((a, b) => $"{a}; and {b}");
    }

    private static string Quoted(string? text) => (text ?? "").Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal);
}
