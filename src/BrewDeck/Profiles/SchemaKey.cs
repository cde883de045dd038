using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>One key of a file: how it is read, checked, written and described.</summary>
/// <param name="Name">As in the file, snake_case.</param>
/// <param name="Meaning">One line for the description and for comments in written files.</param>
/// <param name="Required">Refused when missing.</param>
internal abstract record SchemaKey(string Name, string Meaning, bool Required)
{
    /// <param name="Unit">Unit of the value handed on, and of a bare number.</param>
    /// <param name="Least">In <paramref name="Unit"/>.</param>
    /// <param name="Most">In <paramref name="Unit"/>.</param>
    /// <param name="Example">As a brewer would write it.</param>
    /// <param name="Default">In <paramref name="Unit"/>; null: left out.</param>
    internal sealed record Quantity(
        string Name, Dimension Dimension, string Unit, double Least, double Most, string Example, string Meaning,
            bool Required = true, double? Default = null)
        : SchemaKey(Name, Meaning, Required);

    /// <summary>From one quantity to another, or one for both.</summary>
    /// <param name="End">How each end is read.</param>
    internal sealed record Span(Quantity End) : SchemaKey(End.Name, End.Meaning, End.Required);

    internal sealed record Text(string Name, string Example, string Meaning, bool Required = true, int Longest = 200)
        : SchemaKey(Name, Meaning, Required);

    /// <summary>One of a few words, or a list of them.</summary>
    internal sealed record Choice(string Name, string[] Words, string Meaning, string? Default = null,
        bool Many = false)
        : SchemaKey(Name, Meaning, Default is null);

    /// <summary>A list of texts.</summary>
    internal sealed record Texts(string Name, string[] Example, string Meaning) : SchemaKey(Name, Meaning, false);

    /// <summary>A number with one of a few units that stay as written.</summary>
    internal sealed record Amount(string Name, string[] Units, double Most, string Meaning)
        : SchemaKey(Name, Meaning, true);

    /// <summary>A table, or as many as wanted in double brackets.</summary>
    /// <param name="Least">0, 1, or how many must stand there.</param>
    /// <param name="Many">Double brackets.</param>
    internal sealed record Section(string Name, SchemaKey[] Keys, string Meaning, int Least = 1, bool Many = true)
        : SchemaKey(Name, Meaning, Least > 0);
}
