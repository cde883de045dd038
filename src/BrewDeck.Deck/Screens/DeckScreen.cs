using System.Collections.Immutable;

namespace BrewDeck.Deck.Screens;

/// <summary>The running brew day: what to do with the hands, and when.</summary>
/// <param name="Big">Countdown or clock for large digits, such as <c>23:41</c>.</param>
/// <param name="BigLabel">What the digits say: left, over time, needed in.</param>
/// <param name="Headline">The step and its target: readable from the far vessel.</param>
/// <param name="Sentences">What the hands do, short sentences.</param>
/// <param name="CautionLines">The usual cautions of this step.</param>
/// <param name="Hands">When the hands are needed next.</param>
/// <param name="Next">The next steps.</param>
/// <param name="Background">Steps that run by themselves.</param>
public sealed record DeckScreen(
    string Title,
    string Corner,
    string Big,
    string BigLabel,
    Tone BigTone,
    Line Headline,
    ImmutableArray<Line> Sentences,
    ImmutableArray<Line> CautionLines,
    Line Hands,
    ImmutableArray<NextStep> Next,
    ImmutableArray<Line> Background,
    ImmutableArray<Gauge> Vessels,
    ImmutableArray<Gauge> Circuits,
    ImmutableArray<OutlookItem> Outlook,
    ImmutableArray<StripPart> Strip,
    double StripNow,
    ImmutableArray<Line> Log,
    ImmutableArray<KeyHint> Keys,
    Line? Notice = null,
    Overlay? Overlay = null) : Screen(Title, Corner, Keys, Notice, Overlay)
{
    /// <summary>Alarms that stand and are not shelved: how soon, what is wrong, what comes of it, what to do. The most urgent first.</summary>
    public ImmutableArray<Line> Alarms { get; init; } = [];

    /// <summary>The sentences are a list that is worked through: before one of its lines is left out, the large digits are.</summary>
    public bool ListsFirst { get; init; }

    /// <summary>In a rehearsal: what can be seen and heard at the plant.</summary>
    public ImmutableArray<Line> Plant { get; init; } = [];
}

/// <param name="Clock">Local time of day at which it begins.</param>
public sealed record NextStep(string Clock, string Text, string Length);

/// <summary>A vessel or a circuit: how full, and in words.</summary>
/// <param name="Fraction">0..1.</param>
public sealed record Gauge(string Name, double Fraction, string Text, Tone Tone)
{
    /// <summary>A name that is shorter and still tells it from the others, for where there is no room; empty: there is none.</summary>
    public string Brief { get; init; } = "";
}

/// <param name="Band">80 % band; empty when unknown.</param>
public sealed record OutlookItem(string Label, string Value, string Band, Tone Tone);

/// <summary>A part of the day's timetable.</summary>
/// <param name="From">0..1 of the day.</param>
/// <param name="To">0..1 of the day.</param>
public sealed record StripPart(string Label, double From, double To);
