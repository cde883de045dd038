using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>The recipes, to be read and worked on; only who brews one is asked on which brewhouse.</summary>
/// <param name="house">The first of the list.</param>
internal sealed class RecipesPage(Shell shell, Brewhouse house) : RecipeListPage(shell, house)
{
    public override KeyContext Context => KeyContext.List | KeyContext.Recipes;

    protected override string Title => Shell.Notation.Text($"Recipes, reckoned for {House.Name}");

    public static void Enter(Shell shell) => shell.Try(() =>
    {
        if (shell.Ports.Profiles.Brewhouses().Select(b => Readable(shell, b)).FirstOrDefault(b => b is not null) is not { } house)
            shell.Say(shell.Notation.Text("There is no brewhouse file in the profiles folder."), Tone.Warning);
        else
            Open(shell, () => new RecipesPage(shell, house));
    });

    protected override void Chosen(Recipe recipe) => PickBrewhousePage.Enter(Shell, recipe);

    private static Brewhouse? Readable(Shell shell, ProfileEntry entry)
    {
        try
        {
            return shell.Ports.Profiles.Brewhouse(entry);
        }
        catch (ProfileException)
        {
            return null;
        }
    }
}
