using System.Text.RegularExpressions;

namespace BrewDeck.Profiles;

/// <summary>
/// A recipe file as blocks of lines: what stands before the first table, then each table with the comments right above it. Only for
/// files in the usual way, a key a line; what comes of it is always read back.
/// </summary>
internal sealed partial class RecipeBlocks
{
    private readonly List<Block> _blocks;

    private RecipeBlocks(List<Block> blocks) => _blocks = blocks;

    /// <param name="Kind">Name of the table; empty: the head of the file.</param>
    internal sealed record Block(string Kind, List<string> Lines)
    {
        /// <summary>The value of a key as written; null when it is not there.</summary>
        public string? Value(string key) => Lines.Select(l => KeyLine().Match(l)).FirstOrDefault(m => m.Success && m.Groups["key"].Value == key)?.Groups["value"].Value;

        public IEnumerable<string> Keys => Lines.Select(l => KeyLine().Match(l)).Where(m => m.Success).Select(m => m.Groups["key"].Value);

        /// <summary>Writes, changes or takes out one key; the comment behind a changed value stays.</summary>
        public void Set(string key, string? value)
        {
            var at = Lines.FindIndex(l => KeyLine().Match(l) is { Success: true } m && m.Groups["key"].Value == key);
            if (at >= 0 && value is null)
                Lines.RemoveAt(at);
            else if (at >= 0)
                Lines[at] = KeyLine().Replace(Lines[at], m => m.Groups["lead"].Value + value + m.Groups["tail"].Value);
            else if (value is not null)
                Lines.Insert(Lines.FindLastIndex(l => KeyLine().IsMatch(l) || TableLine().IsMatch(l)) + 1, $"{key} = {value}");
        }

        public Block WithoutComments() =>
            new(Kind, [.. Lines.Where(l => !l.TrimStart().StartsWith('#')).Select(l => KeyLine().Replace(l, m => m.Groups["lead"].Value + m.Groups["value"].Value))]);
    }

    public static RecipeBlocks Of(string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').ToList();
        var blocks = new List<Block> { new("", []) };
        foreach (var line in lines)
        {
            if (TableLine().Match(line) is { Success: true } table)
                blocks.Add(new(table.Groups["name"].Value, TakeCommentsAbove(blocks[^1].Lines)));
            blocks[^1].Lines.Add(line);
        }
        return new(blocks);
    }

    public Block Head => _blocks[0];

    public List<Block> Many(string kind) => [.. _blocks.Where(b => b.Kind == kind && b != Head)];

    /// <summary>Puts other blocks in the place of all of a kind: where the first one stood, else before the yeast.</summary>
    public void Replace(string kind, IReadOnlyList<Block> with)
    {
        var at = _blocks.FindIndex(1, b => b.Kind == kind);
        if (at < 0)
            at = _blocks.FindIndex(1, b => b.Kind == "yeast") is >= 0 and var yeast ? yeast : _blocks.Count;
        _blocks.RemoveAll(b => b.Kind == kind && b != Head);
        _blocks.InsertRange(at, with);
    }

    public string Text(string ending)
    {
        foreach (var block in _blocks.SkipLast(1).Where(b => b.Lines.Count > 0 && b.Lines[^1].Trim().Length > 0))
            block.Lines.Add("");
        return string.Join(ending, _blocks.SelectMany(b => b.Lines)).TrimEnd() + ending;
    }

    private static List<string> TakeCommentsAbove(List<string> lines)
    {
        var from = lines.Count;
        while (from > 0 && lines[from - 1].TrimStart().StartsWith('#'))
            from--;
        var taken = lines[from..];
        lines.RemoveRange(from, lines.Count - from);
        return taken;
    }

    [GeneratedRegex(@"^(?<lead>\s*(?<key>[a-z_]+)\s*=\s*)(?<value>""(?:[^""\\]|\\.)*""|'[^']*'|[^#""'\s][^#]*?)(?<tail>\s*(?:#.*)?)$", RegexOptions.ExplicitCapture)]
    private static partial Regex KeyLine();

    [GeneratedRegex(@"^\s*\[\[?(?<name>[a-z_.]+)\]\]?\s*(#.*)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex TableLine();
}
