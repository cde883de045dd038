using System.Collections.Immutable;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>The key table as text.</summary>
public static class HelpText
{
    private static readonly ImmutableArray<(KeyContext Where, Phrase Heading)> Places =
    [
        (KeyContext.Deck, "On the deck, while a batch runs"),
        (KeyContext.Rehearsal, "In a rehearsal, beside these"),
        (KeyContext.Entry, "While something is typed"),
        (KeyContext.Kinds, "While a reading is typed, beside these"),
        (KeyContext.Choice, "When something is asked"),
        (KeyContext.List, "In lists"),
        (KeyContext.Choices, "In the day's choices"),
        (KeyContext.Sum, "In a sum of the reckoner"),
        (KeyContext.SetUp, "While a brewhouse is set up"),
        (KeyContext.Recipes, "Where recipes are chosen, beside those of lists"),
        (KeyContext.Recipe, "In a recipe being made"),
        (KeyContext.Scaling, "When a recipe moves to another brewhouse"),
        (KeyContext.Plan, "On the plan"),
        (KeyContext.Refused, "On a plan that cannot be brewed"),
        (KeyContext.Batch, "On a batch's page"),
        (KeyContext.Closed, "On the page of a batch that is over"),
        (KeyContext.AfterDay, "On a batch after the day, beside those of lists"),
        (KeyContext.Lessons, "In the lessons, beside those of lists"),
        (KeyContext.Batches, "In the list of batches, beside those of lists"),
        (KeyContext.Charts, "On the charts"),
        (KeyContext.Text, "In other texts"),
    ];

    private static readonly ImmutableArray<Phrase> Manners =
    [
        "One knuckle is enough: no two keys at once, no key held, small or large letters.",
        "The same key struck twice within a moment counts once. After a step change the big key rests for a moment, so that a late knuckle does not start the next step.",
        "Levels and temperatures in the vessels are reckoned from what you have read and done: a reading puts them right.",
        "Every act can be taken back; nothing is given up without a typed word.",
        "What the words of the trade mean stands at the end: the key end goes there.",
    ];

    public static ImmutableArray<Line> Lines(bool rehearsal, Notation notation) =>
    [
        .. Manners.Select(m => Line.Of(notation.Text(m))),
        .. Places.Where(p => rehearsal || p.Where != KeyContext.Rehearsal).SelectMany(p => Part(p, notation)),
        .. TradeWords.Lines(notation),
    ];

    private static IEnumerable<Line> Part((KeyContext Where, Phrase Heading) place, Notation notation) =>
    [
        Line.Of(""),
        Line.Of(notation.Text(place.Heading), Tone.Strong),
        .. KeyMap.Table
            .Where(b => b.Where.HasFlag(place.Where))
            .Select(b => new Line([new Span($"  {notation.Name(b.Shown),-11}", Tone.Strong), new Span(notation.Text(b.Help))])),
    ];
}
