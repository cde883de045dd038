using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Which recipe today.</summary>
internal sealed class PickRecipePage(Shell shell, Brewhouse brewhouse) : ProfilePage<Recipe>(shell, shell.Ports.Profiles.Recipes)
{
    private readonly RecipeKeys _keys = new(shell, brewhouse);

    public override KeyContext Context => Shell.Ports.Writer is null ? KeyContext.List : KeyContext.List | KeyContext.Recipes;

    protected override string Title => Shell.Notation.Text($"Which recipe on {brewhouse.Name}?");

    public static void Enter(Shell shell, Brewhouse brewhouse) => shell.Try(() =>
    {
        var entries = shell.Ports.Profiles.Recipes();
        if (entries.Count == 0)
            shell.Say(shell.Notation.Text("There is no recipe file in the profiles folder."), Tone.Warning);
        else
            shell.Push(new PickRecipePage(shell, brewhouse));
    });

    protected override Recipe Load(ProfileEntry entry) => Shell.Ports.Profiles.Recipe(entry);

    protected override void Chosen(Recipe recipe) => Shell.Push(new ChoicesPage(Shell, brewhouse, recipe));

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (!_keys.Handle(command, Entries[Selected], Peek(Selected)))
            base.Handle(command, stroke, now);
    }

    protected override ImmutableArray<Line> Details(Recipe recipe) => RecipeWords.Of(recipe, Shell.Notation);
}
