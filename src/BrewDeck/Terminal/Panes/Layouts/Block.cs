using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Panes.Layouts;

/// <summary>The parts of the running deck.</summary>
internal enum Block
{
    Big,
    BigLabel,
    Headline,
    Sentences,
    Hands,
    Alarms,
    Cautions,
    Next,
    Background,
    Vessels,
    Circuits,
    Outlook,
    Strip,
    Log,
}

/// <summary>A part, laid out: where, and its lines at that width.</summary>
internal sealed record Placed(Block Block, Rectangle Where, ImmutableArray<Line> Lines);
