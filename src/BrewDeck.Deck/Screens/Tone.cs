using System.Collections.Immutable;

namespace BrewDeck.Deck.Screens;

/// <summary>How a text should stand out; the terminal decides the colour, and always a word or a shape goes with it.</summary>
public enum Tone
{
    Normal,
    Muted,
    Strong,

    /// <summary>Due: the hands are wanted.</summary>
    Due,

    /// <summary>Abnormal, not dangerous.</summary>
    Warning,

    /// <summary>Abnormal and urgent, or a danger to the brewer.</summary>
    Alarm,
}

public readonly record struct Span(string Text, Tone Tone = Tone.Normal);

/// <summary>One line of text in its tones.</summary>
public sealed record Line(ImmutableArray<Span> Spans)
{
    public static Line Of(string text, Tone tone = Tone.Normal) => new([new Span(text, tone)]);

    public override string ToString() => string.Concat(Spans.Select(s => s.Text));
}
