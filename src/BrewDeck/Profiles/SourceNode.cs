using System.Globalization;

namespace BrewDeck.Profiles;

/// <summary>
/// One part of a foreign document. It remembers whether it was carried over, so that all the rest can be reported.
/// </summary>
/// <param name="parent">Null for the root.</param>
/// <param name="name">Member or element name; empty in a list.</param>
/// <param name="line">Counts from 1.</param>
/// <param name="text">Of a leaf; null for what has parts.</param>
internal sealed class SourceNode(SourceNode? parent, string name, int line, string? text)
{
    public string Name { get; } = name;

    public int Line => line;

    public string? Text { get; set; } = text;

    /// <summary>Its step in the path: escaped name, position, or name with position.</summary>
    public string Label { get; set; } = name;

    /// <summary>JSON pointer or XML path, on one line.</summary>
    public string Path => ProfileError.OneLine(WholePath, 200);

    private string WholePath => parent is null ? (Label.Length > 0 ? "/" + Label : "") : $"{parent.WholePath}/{Label}";

    public List<SourceNode> Parts { get; } = [];

    /// <summary>True for a JSON number; XML has text only.</summary>
    public bool IsNumber { get; init; }

    public bool Taken { get; private set; }

    public SourceNode? this[string name] => Parts.FirstOrDefault(p => p.Name == name);

    /// <summary>Carried over, with all its parts.</summary>
    public SourceNode Take()
    {
        Taken = true;
        foreach (var part in Parts)
            part.Take();
        return this;
    }

    /// <summary>The text of a part, taken; null when it is missing or empty.</summary>
    public string? TakeText(string name) =>
        this[name] is { Text: { Length: > 0 } text } part && part.Take() == part ? text : null;

    /// <summary>The items of a list part; empty when it is missing.</summary>
    public IReadOnlyList<SourceNode> Items(string name) => this[name]?.Parts ?? [];

    /// <summary>A number, in the invariant culture.</summary>
    public double? Number => Text is not null
        && double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        && double.IsFinite(value) ? value : null;

    /// <summary>Whatever was not carried over, the largest whole parts first.</summary>
    public IEnumerable<SourceNode> Left()
    {
        if (Taken || IsEmpty)
            yield break;
        if (Parts.Count == 0 || !AnyTaken)
            yield return this;
        else
            foreach (var left in Parts.SelectMany(p => p.Left()))
                yield return left;
    }

    /// <summary>What stands in it, short.</summary>
    public string Shown => ProfileError.OneLine(this switch
    {
        { Text: { } text } => IsNumber ? text : $"'{text}'",
        _ when this["value"] is { Text: { } value } && this["unit"] is { Text: { } unit } => $"{value} {unit}",
        _ when this["name"] is { Text: { } name } => $"'{name}'",
        _ => string.Join(", ", Parts.Take(6).Select(p => p.Name.Length > 0 ? p.Name : p.Shown)),
    });

    private bool AnyTaken => Taken || Parts.Any(p => p.AnyTaken);

    private bool IsEmpty => string.IsNullOrWhiteSpace(Text) && Parts.All(p => p.IsEmpty);
}
