using System.Collections.Immutable;

namespace BrewDeck.Reports;

/// <summary>A part of a batch record as rows of words: the page and <c>log show</c> both draw it.</summary>
/// <param name="Columns">Empty for pairs of a name and its value.</param>
internal sealed record RecordTable(string Title, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>The column that wants room before others; empty: none.</summary>
    public string Wide { get; init; } = "";

    public static RecordTable Pairs(string title, params ImmutableArray<(string Name, string Value)> pairs) =>
        new(title, [], [.. pairs.Where(p => p.Value.Length > 0).Select(p => ImmutableArray.Create(p.Name, p.Value))]);
}
