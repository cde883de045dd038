using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>A brewhouse, a recipe that it may be able to brew, and the choices of a day.</summary>
internal sealed record Day(Brewhouse House, Recipe Recipe, DayChoices Choices)
{
    public PlanResult Draw() => Planner.Draw(House, Recipe, Choices);

    public Plan? Plan() => Draw() is PlanResult.Drawn drawn ? drawn.Plan : null;

    /// <summary>What a failed law needs to be understood.</summary>
    public override string ToString() => string.Join("\n", [
        $"{Choices.BatchL:0.#} L, {Choices.Sparge}, {Choices.AltitudeM:0} m, source {Choices.SourceWaterC:0.#}, room {Choices.AmbientC:0.#}",
        $"wanted {Recipe.OriginalGravitySg:0.0000} {Recipe.BitternessIbu:0.#} IBU, boil {Recipe.BoilMin} min",
        .. Recipe.Grist.Select(g => g.ToString()), .. Recipe.Rests.Select(r => r.ToString()), .. Recipe.Hops.Select(h => h.ToString()),
        .. House.Vessels.Select(v => v.ToString()), House.Chiller.ToString(), House.Habits.ToString()]);
}

/// <summary>A day that can be brewed, with its plan.</summary>
internal sealed record PlannedDay(Day Day, Plan Plan)
{
    public override string ToString() => Day.ToString();
}

internal static class AnyDay
{
    /// <summary>Not every one can be brewed.</summary>
    public static readonly Gen<Day> All =
        from house in AnyBrewhouse.All
        from recipe in house.Habits.MashHeating == MashHeating.Direct ? AnyRecipe.StepMash : AnyRecipe.SingleRest
        from choices in AnyChoices.All
        from share in Gen.Double[0.35, 0.6]
        select new Day(house, recipe, choices with { BatchL = share * house.Kettle.WorkingL });

    public static readonly Gen<PlannedDay> Brewable =
        All.Select(d => (Day: d, Plan: d.Plan())).Where(p => p.Plan is not null).Select(p => new PlannedDay(p.Day, p.Plan!));
}
