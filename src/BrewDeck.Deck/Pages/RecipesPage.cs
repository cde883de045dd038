using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The recipes, to be read and worked on; only who brews one is asked on which brewhouse.</summary>
/// <param name="house">What the amounts of a recipe that is made or changed are reckoned for: the first of the list.</param>
internal sealed class RecipesPage(Shell shell, Brewhouse house) : ProfilePage<Recipe>(shell, shell.Ports.Profiles.Recipes)
{
    private readonly RecipeKeys _keys = new(shell, house);

    public override KeyContext Context => KeyContext.List | KeyContext.Recipes;

    protected override string Title => Shell.Notation.Text($"Recipes, reckoned for {house.Name}");

    public static void Enter(Shell shell) => shell.Try(() =>
    {
        if (shell.Ports.Profiles.Brewhouses().Select(b => Readable(shell, b)).FirstOrDefault(b => b is not null) is not { } house)
            shell.Say(shell.Notation.Text("There is no brewhouse file in the profiles folder."), Tone.Warning);
        else if (shell.Ports.Profiles.Recipes().Count == 0)
            shell.Say(shell.Notation.Text("There is no recipe file in the profiles folder."), Tone.Warning);
        else
            shell.Push(new RecipesPage(shell, house));
    });

    protected override Recipe Load(ProfileEntry entry) => Shell.Ports.Profiles.Recipe(entry);

    protected override void Chosen(Recipe recipe) => PickBrewhousePage.Enter(Shell, recipe);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (!_keys.Handle(command, Entries[Selected], Peek(Selected)))
            base.Handle(command, stroke, now);
    }

    protected override ImmutableArray<Line> Details(Recipe recipe) => RecipeWords.Of(recipe, Shell.Notation);

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
