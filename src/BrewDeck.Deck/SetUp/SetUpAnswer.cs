using System.Collections.Immutable;

namespace BrewDeck.Deck.SetUp;

/// <summary>Where an answer comes from; the file says it beside the number.</summary>
public enum AnswerSource
{
    /// <summary>The value offered, as is common practice.</summary>
    Usual,

    Typed,

    /// <summary>By a trial with water.</summary>
    Measured,
}

/// <param name="Text">In metric units with the unit written, whatever was typed.</param>
public sealed record SetUpAnswer(string Text, AnswerSource Source);

/// <summary>The answers of a set-up by the names of their questions, and their lines in the draft on disk.</summary>
internal static class SetUpAnswers
{
    public static ImmutableDictionary<string, SetUpAnswer> Empty { get; } = ImmutableDictionary.Create<string, SetUpAnswer>(StringComparer.Ordinal);

    public static IReadOnlyList<string> Lines(ImmutableDictionary<string, SetUpAnswer> answers) =>
        [.. answers.OrderBy(a => a.Key, StringComparer.Ordinal).Select(a => $"{a.Key} {a.Value.Source} {a.Value.Text}")];

    /// <summary>A line that is no answer is left out: then its question is asked again.</summary>
    public static ImmutableDictionary<string, SetUpAnswer> Of(IEnumerable<string> lines)
    {
        var answers = Empty;
        foreach (var line in lines)
        {
            if (line.Split(' ', 3) is [var id, var source, var text] && Enum.TryParse<AnswerSource>(source, out var known))
                answers = answers.SetItem(id, new(text, known));
        }
        return answers;
    }
}
