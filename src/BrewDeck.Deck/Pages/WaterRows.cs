using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.WaterMaking;

namespace BrewDeck.Deck.Pages;

/// <summary>The rows of the day's choices that concern the water; where no waters are kept, the one that makes some.</summary>
internal static class WaterRows
{
    public static ImmutableArray<DayRow> For(Shell shell, Recipe recipe)
    {
        var profiles = shell.Ports.Profiles;
        DayRow[] own = shell.Ports.Writer is { } writer ? [OwnWater(shell, writer)] : [];
        if (Kept(shell, profiles.Waters).Count == 0)
            return [.. own];
        var otherwise = recipe.Water is null ? shell.Notation.Text("as it comes") : shell.Notation.Text("as the recipe says");
        return
        [
            new DayRow.Turns(shell.Notation.Text("Water"), c => c.Water?.Source.Name ?? shell.Notation.Text("treated as usual"), Turning(
                shell, profiles.Waters, c => c.Water?.Source.Name, (c, e) => c with { Water = e is null ? null : profiles.Water(e) })),
            .. own,
            new DayRow.Turns(shell.Notation.Text("Water target"), c => c.WaterTarget?.Name ?? otherwise, Turning(
                shell, profiles.WaterTargets, c => c.WaterTarget?.Name, (c, e) => c with { WaterTarget = e is null ? null : profiles.WaterTarget(e) })),
        ];
    }

    /// <summary>An analysis is typed: of the water that is chosen, or of a new one.</summary>
    private static DayRow OwnWater(Shell shell, IProfileWriter writer) => new DayRow.Opens(
        shell.Notation.Text("Water analysis"),
        c => c.Water is null ? shell.Notation.Text("type your own") : shell.Notation.Text("look, change"),
        (choices, set) => shell.Push(new WaterPage(
            shell, writer, choices.Water ?? WaterFields.Blank, choices.Water is { } water ? Kept(shell, shell.Ports.Profiles.Waters).FirstOrDefault(e => e.Name == water.Source.Name) : null,
            w => set(choices with { Water = w }))));

    private static IReadOnlyList<ProfileEntry> Kept(Shell shell, Func<IReadOnlyList<ProfileEntry>> list)
    {
        IReadOnlyList<ProfileEntry> found = [];
        shell.Try(() => found = list());
        return found;
    }

    /// <summary>To the next file and at last to none; one that cannot be used is told of and passed over.</summary>
    private static Func<DayChoices, DayChoices> Turning(
        Shell shell, Func<IReadOnlyList<ProfileEntry>> list, Func<DayChoices, string?> name, Func<DayChoices, ProfileEntry?, DayChoices> with) =>
        choices =>
        {
            var (turned, entries) = (choices, Kept(shell, list));
            var at = name(choices) is { } current ? entries.TakeWhile(e => e.Name != current).Count() : -1;
            do
                at++;
            while (!shell.Try(() => turned = with(choices, at < entries.Count ? entries[at] : null)));
            return turned;
        };
}
