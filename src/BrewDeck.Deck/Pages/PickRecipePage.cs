using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Which recipe today.</summary>
internal sealed class PickRecipePage(Shell shell, Brewhouse brewhouse, IReadOnlyList<ProfileEntry> entries) : ProfilePage<Recipe>(shell, entries)
{
    protected override string Title => $"Which recipe on {brewhouse.Name}?";

    public static void Enter(Shell shell, Brewhouse brewhouse) => shell.Try(() =>
    {
        var entries = shell.Ports.Profiles.Recipes();
        if (entries.Count == 0)
            shell.Say("There is no recipe file in the profiles folder.", Tone.Warning);
        else
            shell.Push(new PickRecipePage(shell, brewhouse, entries));
    });

    protected override Recipe Load(ProfileEntry entry) => Shell.Ports.Profiles.Recipe(entry);

    protected override void Chosen(Recipe recipe) => Shell.Push(new ChoicesPage(Shell, brewhouse, recipe));

    protected override ImmutableArray<Line> Details(Recipe recipe) => RecipeWords.Of(recipe, Shell.Notation);
}
