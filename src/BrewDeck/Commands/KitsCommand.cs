using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck kits</c>: one recipe on every brewhouse and on each number of its circuits.</summary>
internal static class KitsCommand
{
    private static string[] Heading(Notation notation) =>
        ["brewhouse", "circuits", "fermenter", "day", "hands", "most on a circuit, kW", "nearest limit", $"margins of the vessels, {notation.VolumeUnit}"];

    public static int Run(Workplace place, DayOptions day, bool markdown, Notation notation) => place.Guard(() =>
    {
        var profiles = place.Profiles();
        var recipe = profiles.Recipe(profiles.FindRecipe(day.Recipe));
        var rows = profiles.Brewhouses().Select(profiles.Brewhouse).SelectMany(h => Rows(h, recipe, day.Choices(), notation)).Prepend(Heading(notation)).ToArray();
        if (markdown)
            Markdown(place.Output, rows);
        else
            Plain(place.Output, rows);
        return ExitCode.Done;
    });

    private static IEnumerable<string[]> Rows(Brewhouse house, Recipe recipe, DayChoices choices, Notation notation) =>
        Enumerable.Range(1, house.Circuits.Length).Select(n => Row(house, n, Planner.Draw(house, recipe, choices with { Circuits = n }), notation));

    private static string[] Row(Brewhouse house, int circuits, PlanResult result, Notation notation) => result switch
    {
        PlanResult.Drawn { Plan: var plan } =>
        [
            house.Name, $"{circuits}", notation.Volume(plan.Totals.FermenterL), Durations.Short(plan.Totals.DayS),
            Durations.Short(plan.Totals.HandsS), Peaks(plan),
            ClosestLimit.Of(plan.Limits.RemoveAll(IsLoad)) is { } limit ? LimitWords.Of(limit, notation, house) : "", Margins(plan, notation),
        ],
        PlanResult.Refused refused =>
            [house.Name, $"{circuits}", "", "cannot be brewed", "", "", RefusalWords.Of(refused.Refusals[0], notation), ""],
        _ => [house.Name],
    };

    private static string Peaks(Plan plan)
    {
        var wiring = PlantSetting.Of(plan.Brewhouse, plan.Choices).Wiring;
        return string.Join(", ", wiring.Circuits.Select((c, i) => $"{c.Id} {Kilowatts(wiring.PeakW(i))} of {Kilowatts(c.ContinuousW)}"));
    }

    /// <summary>What is left in each vessel when it is fullest.</summary>
    private static string Margins(Plan plan, Notation notation) => string.Join(", ", plan.Limits
        .Where(l => l.Unit == "L" && l.AtMost)
        .Select(l => (Place: LimitName.PlaceOf(l.Name).Replace('_', ' '), l.Margin))
        .GroupBy(l => l.Place)
        .Select(g => $"{g.Key} {notation.Number(notation.InVolumeUnit(g.Min(l => l.Margin)), "0.0")}"));

    private static string Kilowatts(double watts) => (watts / 1000).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Loads have a column of their own.</summary>
    private static bool IsLoad(Limit limit) => limit.Unit == "kW";

    private static void Markdown(TextWriter output, string[][] rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            output.WriteLine($"| {string.Join(" | ", rows[i])} |");
            if (i == 0)
                output.WriteLine($"|{string.Concat(rows[i].Select(_ => " --- |"))}");
        }
    }

    private static void Plain(TextWriter output, string[][] rows)
    {
        var widths = Enumerable.Range(0, rows[0].Length - 1).Select(c => rows.Max(r => r[c].Length)).ToArray();
        foreach (var row in rows)
            output.WriteLine(string.Concat(row.Select((cell, c) => c < widths.Length ? cell.PadRight(widths[c] + 2) : cell)));
    }
}
