using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;

namespace BrewDeck.Terminal.Panes;

/// <summary>Lines at a place of a view.</summary>
/// <param name="Lines">As wide as the place at most.</param>
/// <param name="Where">In cells of the view; an empty one is not seen.</param>
/// <param name="Surface">What they stand on.</param>
/// <param name="Chosen">The first line of the chosen row; -1: none.</param>
/// <param name="ChosenRows">How many lines it takes.</param>
internal sealed record Patch(ImmutableArray<Line> Lines, Rectangle Where, Surface Surface = Surface.Ground, int Chosen = -1, int ChosenRows = 1)
{
    public bool Equals(Patch? other) => other is not null && Where == other.Where && Surface == other.Surface
        && Chosen == other.Chosen && ChosenRows == other.ChosenRows && Compose.Lines.Same(Lines, other.Lines);

    public override int GetHashCode() => Where.GetHashCode();

    /// <summary>What a line of it stands on.</summary>
    public Surface SurfaceOf(int line) => Chosen >= 0 && line >= Chosen && line < Chosen + ChosenRows ? Surface.Chosen : Surface;
}
