using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;


namespace BrewDeck.Deck.Pages;

/// <summary>The rows of the day's choices that concern the water; none where no waters are kept.</summary>
internal static class WaterRows
{
    public static ImmutableArray<DayRow> For(Shell shell, Recipe recipe)
    {
        var profiles = shell.Ports.Profiles;
        IReadOnlyList<ProfileEntry> waters = [], targets = [];
        shell.Try(() => (waters, targets) = (profiles.Waters(), profiles.WaterTargets()));
        if (waters.Count == 0)
            return [];
        var otherwise = recipe.Water is null ? shell.Notation.Text("as it comes") : shell.Notation.Text("as the recipe says");
        return
        [
            new DayRow.Turns(shell.Notation.Text("Water"), c => c.Water?.Source.Name ?? shell.Notation.Text("treated as usual"), Turning(
                shell, waters, c => c.Water?.Source.Name, (c, e) => c with { Water = e is null ? null : profiles.Water(e) })),
            new DayRow.Turns(shell.Notation.Text("Water target"), c => c.WaterTarget?.Name ?? otherwise, Turning(
                shell, targets, c => c.WaterTarget?.Name, (c, e) => c with { WaterTarget = e is null ? null : profiles.WaterTarget(e) })),
        ];
    }

    /// <summary>To the next file and at last to none; one that cannot be used is told of and passed over.</summary>
    private static Func<DayChoices, DayChoices> Turning(
        Shell shell, IReadOnlyList<ProfileEntry> entries, Func<DayChoices, string?> name, Func<DayChoices, ProfileEntry?, DayChoices> with) =>
        choices =>
        {
            var turned = choices;
            var at = name(choices) is { } current ? entries.TakeWhile(e => e.Name != current).Count() : -1;
            do
                at++;
            while (!shell.Try(() => turned = with(choices, at < entries.Count ? entries[at] : null)));
            return turned;
        };
}
