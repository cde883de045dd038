using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Terminal.Compose;

/// <summary>The shapes that go with a colour, and what is said of lines that there is no room for.</summary>
internal static class Labels
{
    /// <summary>How wide <see cref="LayoutWords.Next"/> and <see cref="LayoutWords.Then"/> stand.</summary>
    public const int NextWidth = 6;

    /// <summary>Two cells: a tone is never told by colour alone.</summary>
    public static string Mark(Tone tone) => tone switch
    {
        Tone.Warning => "! ",
        Tone.Alarm => "!!",
        _ => "  ",
    };

    /// <summary>A caution has its mark in every tone.</summary>
    public static Line Caution(Line line) =>
        Lines.Join(Line.Of("! ", line.Spans.IsEmpty ? Tone.Normal : line.Spans[0].Tone), line);

    /// <summary>With its mark in front where it has one.</summary>
    public static Line Marked(Line line)
    {
        var tone = line.Spans.IsEmpty ? Tone.Normal : line.Spans.Max(span => span.Tone);
        var mark = Mark(tone).TrimEnd();
        return mark == "" || line.ToString().StartsWith('!') ? line : Lines.Join(Line.Of(mark + " ", tone), line);
    }

    public static string More(int lines, Notation notation) => $"{Lines.Cut} {LayoutWords.More(lines, notation)}";
}
