using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck.Training;
using BrewDeck.Profiles;
using BrewDeck.Simulator.Mishaps;

namespace BrewDeck.Rehearsals;

/// <summary>The day of an exercise: its plan and what it is dealt.</summary>
internal static class ExerciseDay
{
    /// <exception cref="UsageException">There is no exercise of that number, or its day cannot be drawn from the brewer's own profiles.</exception>
    public static (Plan Plan, RehearsalCard Card) Draw(int number, ProfileFolder profiles)
    {
        if (Exercises.Find(number) is not { } exercise)
            throw new UsageException($"--exercise: {number} is not known; write 1 to {Exercises.All.Length}");
        if (new DayOptions { Brewhouse = exercise.Brewhouse, Recipe = exercise.Recipe }.Draw(profiles) is not PlanResult.Drawn { Plan: var plan })
            throw new UsageException($"--exercise: {exercise.Recipe} cannot be brewed on {exercise.Brewhouse} as your own profiles have them; rename your own files");
        return (plan, new RehearsalCard(exercise.Seed, MishapPlaces.Placed(plan, exercise.Mishaps), number));
    }
}
