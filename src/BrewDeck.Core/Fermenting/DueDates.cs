using System.Collections.Immutable;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Fermenting;

/// <summary>
/// What is still to be done with a batch after pitching, and when. Without a word from the brewer: a first gravity after five days and
/// then every three until it is steady, packaging by the kind of fermentation (<see cref="PackagingDays"/>), dry hops so that their contact
/// time ends with packaging (common practice, no source).
/// </summary>
public static class DueDates
{
    private const long DayMs = 86_400_000;

    private const int FirstCheckDays = 5;

    private const int NextCheckDays = 3;

    /// <summary>Yeast that is pitched colder makes a lager, °C.</summary>
    private const double LagerBelowC = 15;

    /// <summary>Above it a beer is strong, SG.</summary>
    private const double StrongSg = 1.070;

    private const double UsualContactDays = 3;

    /// <summary>In the order of their dates; nothing once as good as all the beer is packaged, nothing before it is pitched.</summary>
    public static ImmutableArray<DueItem> Of(FermentState state)
    {
        if (state.PitchedMs is not { } pitched || state.IsPackaged)
            return [];
        var packaging = Set(state, DueKind.Packaging, "") ?? pitched + PackagingDays(state) * DayMs;
        var due = ImmutableArray.CreateBuilder<DueItem>();
        if (FermentFigures.Of(state) is not { Steady: true })
            due.Add(new(DueKind.GravityCheck, "", Set(state, DueKind.GravityCheck, "", LastGravityMs(state)) ?? NextCheckMs(state, pitched)));
        foreach (var (name, days) in Additions(state))
        {
            if (state.Additions.All(a => a.Addition.Name != name))
                due.Add(new(DueKind.Addition, name, Set(state, DueKind.Addition, name) ?? packaging - (long)(days * DayMs)));
        }
        due.Add(new(DueKind.Packaging, "", packaging));
        return [.. due.OrderBy(d => d.DueMs)];
    }

    /// <summary>Days from pitching: a lager matures cold for weeks, a strong ale longer than another; common practice, no source.</summary>
    private static int PackagingDays(FermentState state) =>
        state.Recipe?.Yeast.PitchC < LagerBelowC ? 42 : state.OriginalSg > StrongSg ? 28 : 14;

    /// <summary>The recipe's dry hops, and whatever the brewer has set a date for.</summary>
    private static IEnumerable<(string Name, double ContactDays)> Additions(FermentState state)
    {
        var hops = (state.Recipe?.Hops ?? []).Where(h => h.Use == HopUse.DryHop)
            .Select(h => (h.Name, h.Minutes > 0 ? h.Minutes / 1440 : UsualContactDays)).ToList();
        var others = state.Dates.Where(d => d.Kind == DueKind.Addition).Select(d => (d.Name, UsualContactDays));
        return hops.Concat(others).DistinctBy(a => a.Item1);
    }

    private static long NextCheckMs(FermentState state, long pitched) => LastGravityMs(state) is { } last
        ? Math.Max(last + NextCheckDays * DayMs, pitched + FirstCheckDays * DayMs)
        : pitched + FirstCheckDays * DayMs;

    private static long? LastGravityMs(FermentState state) =>
        state.Readings.LastOrDefault(r => r.Reading.Figure == FermenterFigure.Gravity)?.AtMs;

    /// <summary>A date set by the brewer; one for a check that has been made since is spent.</summary>
    private static long? Set(FermentState state, DueKind kind, string name, long? doneMs = null) =>
        state.Dates.FirstOrDefault(d => d.Kind == kind && d.Name == name) is { } item && !(doneMs >= item.DueMs) ? item.DueMs : null;
}
