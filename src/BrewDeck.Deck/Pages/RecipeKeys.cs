using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>New, change, copy and scale, where recipes are chosen.</summary>
internal sealed class RecipeKeys(Shell shell, Brewhouse house)
{
    /// <param name="chosen">The recipe under the cursor; null when its file cannot be read.</param>
    /// <returns>False for another command.</returns>
    public bool Handle(Command command, ProfileEntry entry, Recipe? chosen)
    {
        if (command is not (Command.New or Command.Change or Command.Copy or Command.Scale))
            return false;
        if (shell.Ports.Writer is not { } writer)
            shell.Say(shell.Notation.Text("No recipe can be written here."), Tone.Warning);
        else if (command == Command.New)
            shell.Try(() => shell.Push(new RecipePage(shell, writer, house, Blank(), null)));
        else if (chosen is null)
            shell.Say(shell.Notation.Text("This file cannot be read: mend it first."), Tone.Warning);
        else if (command == Command.Scale)
            ScalePage.Enter(shell, writer, house, chosen);
        else
            shell.Push(command == Command.Change
                ? new RecipePage(shell, writer, house, chosen, entry)
                : new RecipePage(shell, writer, house, chosen with { Name = chosen.Name + shell.Notation.Text(", copy") }, null));
        return true;
    }

    /// <summary>What a recipe is called that has not been named yet.</summary>
    internal static string Unnamed(Notation notation) => notation.Text("New recipe");

    /// <summary>One rest of an hour and an hour's boil: what most brews begin with.</summary>
    private Recipe Blank() => new()
    {
        Name = Unnamed(shell.Notation),
        BatchL = house.UsualBatchL ?? 20,
        Grist = [],
        Rests = [new("conversion", 66, 60)],
        BoilMin = 60,
        Hops = [],
        Yeast = shell.Ports.Profiles.CatalogueYeasts().FirstOrDefault() ?? new("ale yeast", 0.75, 19, 0.75),
    };
}
