using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A list of recipes that can also be worked on there.</summary>
/// <param name="house">What the amounts of a recipe that is made or changed are reckoned for.</param>
internal abstract class RecipeListPage(Shell shell, Brewhouse house) : ProfilePage<Recipe>(shell, shell.Ports.Profiles.Recipes)
{
    private readonly RecipeKeys _keys = new(shell, house);

    protected Brewhouse House { get; } = house;

    protected static void Open(Shell shell, Func<RecipeListPage> page)
    {
        if (shell.Ports.Profiles.Recipes().Count == 0)
            shell.Say(shell.Notation.Text("There is no recipe file in the profiles folder."), Tone.Warning);
        else
            shell.Push(page());
        if (shell.Ports.Profiles.RecipesToConvert() is [var first, ..])
            shell.Say(shell.Notation.Text($"{first} is no recipe yet. In its folder: brewdeck convert {first} {Path.ChangeExtension(first, ".toml")}"));
    }

    protected override Recipe Load(ProfileEntry entry) => Shell.Ports.Profiles.Recipe(entry);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (!_keys.Handle(command, Entries[Selected], Peek(Selected)))
            base.Handle(command, stroke, now);
    }

    protected override ImmutableArray<Line> Details(Recipe recipe) => RecipeWords.Of(recipe, Shell.Notation);
}
