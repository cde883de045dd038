using System.Collections.Immutable;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Screens;

/// <summary>What a screen shows, worded and rounded; the terminal copies it into views.</summary>
/// <param name="Title">Top left.</param>
/// <param name="Corner">Top right: batch, clock.</param>
/// <param name="Keys">Bottom line: keys that work here.</param>
/// <param name="Notice">One line above the keys: what just happened, or why something was refused; null: nothing.</param>
/// <param name="Overlay">Asks for something on top of the screen; null: nothing is asked.</param>
public abstract record Screen(string Title, string Corner, ImmutableArray<KeyHint> Keys, Line? Notice, Overlay? Overlay)
{
    /// <summary>For the few words that the layout makes itself.</summary>
    public Notation Notation { get; init; } = Notation.Metric;
}

public sealed record KeyHint(string Key, string Does);

/// <summary>Rows to choose from, with the details of the chosen one beside or below.</summary>
/// <param name="Selected">Index of the chosen row; -1 when there is none.</param>
public sealed record ListScreen(
    string Title,
    string Corner,
    ImmutableArray<Column> Columns,
    ImmutableArray<Row> Rows,
    int Selected,
    ImmutableArray<Line> Details,
    ImmutableArray<KeyHint> Keys,
    Line? Notice = null,
    Overlay? Overlay = null) : Screen(Title, Corner, Keys, Notice, Overlay);

/// <param name="Width">Cells wanted; 0: takes what is left.</param>
public sealed record Column(string Header, int Width, bool Right = false);

public sealed record Row(ImmutableArray<string> Cells, Tone Tone = Tone.Normal);

/// <summary>Text to read, scrolled by lines.</summary>
/// <param name="Offset">First line shown; the terminal keeps it within the text.</param>
public sealed record TextScreen(
    string Title,
    string Corner,
    ImmutableArray<Line> Lines,
    int Offset,
    ImmutableArray<KeyHint> Keys,
    Line? Notice = null,
    Overlay? Overlay = null) : Screen(Title, Corner, Keys, Notice, Overlay);

/// <summary>Asks for something while the screen below stays visible.</summary>
public abstract record Overlay(string Question);

/// <summary>A line to type.</summary>
/// <param name="Initial">Text to begin with; the digit that opened it.</param>
/// <param name="Hint">What is expected and how it is understood so far.</param>
/// <param name="Fault">Why what was typed cannot be taken; null: nothing wrong.</param>
public sealed record EntryOverlay(string Question, string Initial, Line Hint, Line? Fault) : Overlay(Question)
{
    /// <summary>The text to begin with is what stands there now: what is typed first takes its place, an arrow keeps it.</summary>
    public bool Replaces { get; init; }
}

/// <summary>A choice by arrows and Enter.</summary>
public sealed record ChoiceOverlay(string Question, ImmutableArray<Line> Lines, ImmutableArray<Row> Options, int Selected)
    : Overlay(Question);
