using System.Collections.Immutable;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Reckoning;

/// <summary>One sum of the reckoner: what goes in, what comes out, by which formula, from where, and how far it holds.</summary>
/// <param name="Name">As typed on the command line, lower case with hyphens.</param>
/// <param name="Range">Where the formula is valid.</param>
/// <param name="Reckon">Gives one number for each of <paramref name="Outputs"/> and then of <see cref="Beside"/>, in their units.</param>
/// <param name="Caution">Where the work can hurt somebody; empty: nothing beyond the usual.</param>
public sealed record Sum(
    string Name,
    Phrase Title,
    ImmutableArray<SumInput> Inputs,
    ImmutableArray<SumOutput> Outputs,
    Phrase Formula,
    Phrase Source,
    Phrase Range,
    Func<SumValues, double[]> Reckon,
    Phrase Caution = default)
{
    /// <summary>Inputs of which the first cannot be more than the second.</summary>
    public ImmutableArray<(string Lower, string Upper)> Orders { get; init; } = [];

    /// <summary>Why the inputs together cannot be; null: they can.</summary>
    public Func<SumValues, Notation, SumDoubt?> Doubt { get; init; } = (_, _) => null;

    /// <summary>What other published rules make of the same inputs, each named by its label: for printed figures, and for those who must match a table.</summary>
    public ImmutableArray<SumOutput> Beside { get; init; } = [];
}

/// <param name="Key">The input at fault.</param>
/// <param name="Why">With what would mend it.</param>
public sealed record SumDoubt(string Key, string Why);

/// <summary>A number that a sum gives.</summary>
/// <param name="Name">Stable name, snake_case with its unit.</param>
/// <param name="Unit">As records write it.</param>
/// <param name="Format">Digits; of L, kg, g, °C and m the brewer's own units decide.</param>
public sealed record SumOutput(string Name, Phrase Label, string Unit, string Format = "0.0");

/// <summary>Something that a sum asks for.</summary>
/// <param name="Name">As typed on the command line, lower case with hyphens.</param>
/// <param name="Default">Text taken when nothing is given; null: it must be given.</param>
/// <param name="Example">Text for the help.</param>
public abstract record SumInput(string Name, Phrase Label, string? Default, string Example)
{
    /// <param name="Unit">Of a bare number, and of <paramref name="Least"/> and <paramref name="Most"/> and the value reckoned with.</param>
    public sealed record Quantity(
        string Name, Phrase Label, Dimension Dimension, string Unit, double Least, double Most, string Example, string? Default = null)
        : SumInput(Name, Label, Default, Example);

    /// <summary>One of a few words; the value reckoned with is its place in the list.</summary>
    public sealed record Choice(string Name, Phrase Label, ImmutableArray<string> Options)
        : SumInput(Name, Label, Options[0], Options[0]);
}

/// <summary>What was read for the inputs of a sum, by their names.</summary>
public sealed class SumValues(IReadOnlyDictionary<string, double> values)
{
    public double this[string name] => values[name];

    /// <summary>The place of the chosen word.</summary>
    public int Choice(string name) => (int)values[name];
}
