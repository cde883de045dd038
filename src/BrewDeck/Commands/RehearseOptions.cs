using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Mishaps;

namespace BrewDeck.Commands;

/// <summary>How days are rehearsed, as given on the command line.</summary>
internal sealed record RehearseOptions
{
    public int Seed { get; init; } = 1;

    /// <summary>Headless: days with the seeds that follow.</summary>
    public int Count { get; init; } = 1;

    public bool Json { get; init; }

    /// <summary>Headless: into the logbook, marked as rehearsed; otherwise the journal works in memory.</summary>
    public bool Keep { get; init; }

    /// <summary>Headless: the hidden brewhouse that all the days are brewed on; null: one of its own for each day.</summary>
    public int? House { get; init; }

    /// <summary>Number of an exercise; null: none.</summary>
    public int? Exercise { get; init; }

    public double Speed { get; init; } = 60;

    /// <summary>By name, see <see cref="MishapText"/>.</summary>
    public string[] Mishaps { get; init; } = [];

    /// <summary>So many more are drawn.</summary>
    public int Drawn { get; init; }

    /// <summary>Names of the options given that say what day to begin.</summary>
    public ImmutableArray<string> Given { get; init; } = [];

    /// <exception cref="UsageException">A mishap is not known or has no place in the day.</exception>
    public RehearsalCard Deal(Plan plan, int seed)
    {
        if (Drawn < 0)
            throw new UsageException($"--mishaps: {Drawn} is too few; write 0 or more");
        var named = MishapText.Read(Mishaps, plan);
        var kinds = named.Select(m => m.Kind).ToHashSet();
        var more = MishapDraw.Of(plan, seed, Drawn + kinds.Count).Where(m => !kinds.Contains(m.Kind)).Take(Drawn);
        return new RehearsalCard(seed, [.. named, .. MishapPlaces.Placed(plan, more)]);
    }
}
