using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Which brewhouse today.</summary>
/// <param name="recipe">Chosen already; null: asked next.</param>
internal sealed class PickBrewhousePage(Shell shell, Recipe? recipe) : ProfilePage<Brewhouse>(shell, shell.Ports.Profiles.Brewhouses)
{
    protected override string Title => Shell.Notation.Text("Which brewhouse?");

    /// <summary>With one brewhouse there is nothing to choose.</summary>
    public static void Enter(Shell shell, Recipe? recipe = null) => shell.Try(() =>
    {
        var entries = shell.Ports.Profiles.Brewhouses();
        if (entries.Count == 0)
            shell.Say(shell.Notation.Text("There is no brewhouse file in the profiles folder."), Tone.Warning);
        else if (entries.Count == 1)
            Next(shell, shell.Ports.Profiles.Brewhouse(entries[0]), recipe);
        else
            shell.Push(new PickBrewhousePage(shell, recipe));
    });

    protected override Brewhouse Load(ProfileEntry entry) => Shell.Ports.Profiles.Brewhouse(entry);

    protected override void Chosen(Brewhouse brewhouse) => Next(Shell, brewhouse, recipe);

    private static void Next(Shell shell, Brewhouse brewhouse, Recipe? recipe)
    {
        if (recipe is null)
            PickRecipePage.Enter(shell, brewhouse);
        else
            shell.Push(new ChoicesPage(shell, brewhouse, recipe));
    }

    protected override ImmutableArray<Line> Details(Brewhouse brewhouse) => BrewhouseWords.Of(brewhouse, Shell.Notation);
}
