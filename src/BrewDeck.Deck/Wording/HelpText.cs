using System.Collections.Immutable;
using System.Numerics;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>The key table as text.</summary>
public static class HelpText
{
    private static readonly ImmutableArray<(KeyContext Where, Phrase Heading)> Places =
    [
        (KeyContext.Deck, "On the deck, while a batch runs"),
        (KeyContext.Rehearsal, "In a rehearsal, besides these"),
        (KeyContext.Entry, "While something is typed"),
        (KeyContext.Kinds, "While a reading is typed, besides these"),
        (KeyContext.Choice, "When something is asked"),
        (KeyContext.List, "In lists"),
        (KeyContext.Choices, "In the day's choices"),
        (KeyContext.Sum, "In a sum of the reckoner"),
        (KeyContext.SetUp, "While a brewhouse is set up"),
        (KeyContext.Recipes, "Where recipes are chosen, besides those of lists"),
        (KeyContext.Recipe, "In a recipe being made"),
        (KeyContext.Water, "In a water being made"),
        (KeyContext.Scaling, "When a recipe moves to another brewhouse"),
        (KeyContext.Plan, "On the plan"),
        (KeyContext.Refused, "On a plan that cannot be brewed"),
        (KeyContext.Batch, "On a batch's page"),
        (KeyContext.Closed, "On the page of a batch that is over"),
        (KeyContext.AfterDay, "On a batch after the day, besides those of lists"),
        (KeyContext.Lessons, "In the lessons, besides those of lists"),
        (KeyContext.Batches, "In the list of batches, besides those of lists"),
        (KeyContext.Charts, "On the charts"),
        (KeyContext.Naming, "Where a name is wanted"),
        (KeyContext.Brief, "Before an exercise"),
        (KeyContext.Text, "In other texts"),
    ];

    private static readonly ImmutableArray<Phrase> Manners =
    [
        "One knuckle is enough: no two keys at once, no key held, small or large letters.",
        "The same key struck twice within a moment counts once. After a step change the big key rests for a moment, so that a late knuckle does not start the next step.",
        "Levels and temperatures in the vessels are reckoned from what you have read and done: a reading puts them right.",
        "The plan is what the day gives when all goes as meant. The outlook on the deck is what such days usually give, with the usual slips of hands and instruments: it begins a little off plan.",
        "Every act can be taken back; nothing is given up without a typed word.",
        "The words of the trade are explained at the end: the key end goes there.",
    ];

    /// <param name="here">Where the help was asked for: those keys stand first, all of them.</param>
    public static ImmutableArray<Line> Lines(bool rehearsal, Notation notation, KeyContext here = KeyContext.None) =>
    [
        .. here == KeyContext.None ? [] : Part("Here", KeyMap.Table.Where(b => (b.Where & here) != 0), notation).Skip(1).Append(Line.Of("")),
        .. Manners.Select(m => Line.Of(notation.Text(m))),
        .. Part("On most pages", KeyMap.Table.Where(IsCommon).DistinctBy(b => (b.Shown, b.Help.Message)), notation),
        .. Places.Where(p => rehearsal || p.Where != KeyContext.Rehearsal)
            .SelectMany(p => Part(p.Heading, KeyMap.Table.Where(b => b.Where.HasFlag(p.Where) && !IsCommon(b)), notation)),
        .. TradeWords.Lines(notation),
    ];

    /// <summary>Many places have it: said of each of them it would bury what is their own.</summary>
    private static bool IsCommon(KeyBinding binding) => BitOperations.PopCount((uint)binding.Where) > 4;

    private static IEnumerable<Line> Part(Phrase heading, IEnumerable<KeyBinding> bindings, Notation notation)
    {
        var rows = bindings.Select(b => new Line([new Span($"  {notation.Name(b.Shown),-11}", Tone.Strong), new Span(notation.Text(b.Help))])).ToList();
        return rows.Count == 0 ? [] : [Line.Of(""), Line.Of(notation.Text(heading), Tone.Strong), .. rows];
    }
}
