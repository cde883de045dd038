using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The few words that belong to the layout, not to a screen; and the shapes that go with a colour.</summary>
internal static class Labels
{
    public const string Next = "next";
    public const string Then = "then";
    public const string Outlook = "outlook";
    public const string Log = "log";

    /// <summary>How wide <see cref="Next"/> and <see cref="Then"/> stand.</summary>
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

    /// <summary>Where the orders stand whole that had no room on the deck.</summary>
    public const string AllOrders = ": p shows all";

    public static string More(int lines) => $"{Lines.Cut} {lines} more";
}
