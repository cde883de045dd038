using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All figures and amounts of a scaled recipe, scrolled.</summary>
internal sealed class ScaledRecipePage(Shell shell, Scaling scaling) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text($"{scaling.Old.Recipe.Name}, side by side");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => ScalingWords.Lines(scaling, Shell.Notation);
}
