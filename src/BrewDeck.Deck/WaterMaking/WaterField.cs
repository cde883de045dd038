using BrewDeck.Core.Waters;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.WaterMaking;

/// <summary>One line of a water's analysis, or of what stands on the shelf beside it.</summary>
internal abstract record WaterField(Func<Notation, string> Label, Func<WaterSupply, Notation, string> Show)
{
    /// <summary>A line is typed.</summary>
    /// <param name="Hint">What to write, or where it is read.</param>
    internal sealed record Typed(Func<Notation, string> Label, Func<WaterSupply, Notation, string> Show, Phrase Hint, WaterReader Read)
        : WaterField(Label, Show)
    {
        public string Question(Notation notation) => Names.Sentence(Label(notation)) + "?";
    }

    /// <summary>Enter turns to the next word.</summary>
    internal sealed record Turned(Func<Notation, string> Label, Func<WaterSupply, Notation, string> Show, Func<WaterSupply, WaterSupply> Next)
        : WaterField(Label, Show);
}

/// <summary>The water with what was typed; null when it cannot be taken, with the reason.</summary>
internal delegate WaterSupply? WaterReader(WaterSupply water, string text, Notation notation, out string fault);
