using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;

namespace BrewDeck.Deck.Pages;

/// <summary>Which recipe today.</summary>
internal sealed class PickRecipePage(Shell shell, Brewhouse brewhouse) : RecipeListPage(shell, brewhouse)
{
    public override KeyContext Context => Shell.Ports.Writer is null ? KeyContext.List : KeyContext.List | KeyContext.Recipes;

    protected override string Title => Shell.Notation.Text($"Which recipe on {House.Name}?");

    public static void Enter(Shell shell, Brewhouse brewhouse) => shell.Try(() => Open(shell, () => new PickRecipePage(shell, brewhouse)));

    protected override void Chosen(Recipe recipe) => Shell.Push(new ChoicesPage(Shell, House, recipe));
}
