using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Pages;

/// <summary>One row of the day's choices.</summary>
internal abstract record DayRow(string Label, Func<DayChoices, string> Show)
{
    /// <summary>Nothing to choose: Enter goes on to the plan.</summary>
    internal sealed record GoOn() : DayRow("", _ => "");

    /// <summary>Enter turns to the next value.</summary>
    internal sealed record Turns(string Label, Func<DayChoices, string> Show, Func<DayChoices, DayChoices> Next) : DayRow(Label, Show)
    {
        /// <summary>The choices at a digit; null: that digit chooses nothing here.</summary>
        public Func<DayChoices, int, DayChoices?> Digit { get; init; } = (_, _) => null;
    }

    /// <summary>Enter opens a page of its own.</summary>
    /// <param name="Open">With the choices as they stand, and what takes the changed ones.</param>
    internal sealed record Opens(string Label, Func<DayChoices, string> Show, Action<DayChoices, Action<DayChoices>> Open) : DayRow(Label, Show);

    /// <summary>A value is typed.</summary>
    internal sealed record Typed(string Label, Func<DayChoices, string> Show, string Hint, Reader Read) : DayRow(Label, Show);

    /// <summary>The choices with what was typed; null when it cannot be taken, with the reason.</summary>
    internal delegate DayChoices? Reader(DayChoices choices, string text, DateTimeOffset now, out string reason);
}
