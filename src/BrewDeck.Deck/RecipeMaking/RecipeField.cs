using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>One thing of a recipe that can be changed.</summary>
/// <param name="Label">In the choice of what to change.</param>
internal abstract record RecipeField(string Label)
{
    /// <summary>A line is typed.</summary>
    /// <param name="Hint">Such as ...</param>
    internal sealed record Line(string Label, string Question, string Hint, RecipeReader Read) : RecipeField(Label)
    {
        /// <summary>What stands there already, to be changed letter by letter; empty: typed anew.</summary>
        public string Initial { get; init; } = "";
    }

    /// <summary>Done at once: turned to the next word, or taken out.</summary>
    internal sealed record Turn(string Label, Func<Recipe, Recipe> Next, bool TakesOut = false) : RecipeField(Label);
}

/// <summary>The recipe with what was typed; null when it cannot be taken, with the reason.</summary>
internal delegate Recipe? RecipeReader(Recipe recipe, string text, Notation notation, out string fault);

/// <summary>A row of a recipe as shown; several fields are asked for by name, the first one is what a digit begins.</summary>
internal sealed record RecipeRow(string Name, string Amount, string More, params RecipeField[] Fields)
{
    /// <summary>Adds something of the catalogue instead of changing a field.</summary>
    public RecipeAdds? Adds { get; init; }
}

internal enum RecipeAdds
{
    Grist,
    Rest,
    Hop,
    Other,
    Yeast,
}
