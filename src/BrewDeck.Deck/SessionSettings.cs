using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>What the session is told once, at its start.</summary>
public sealed record SessionSettings
{
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>The language of the screens.</summary>
    public Tongue Tongue { get; init; } = Tongue.English;

    /// <summary>For local clock times.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>Written into each batch.</summary>
    public string ProgramVersion { get; init; } = "";

    /// <summary>Who brews, for the record; null: not said.</summary>
    public string? Brewer { get; init; }

    /// <summary>Kinds of reading that are taken from the probe without a key, by rule; empty: none.</summary>
    public ImmutableArray<ReadingKind> TakenByRule { get; init; } = [];

    /// <summary>At the start an open batch is taken up; a day without a screen is always a batch of its own.</summary>
    public bool TakesUp { get; init; } = true;

    /// <summary>What was asked for at the start and does not count where a rehearsal is taken up again; names of options.</summary>
    public ImmutableArray<string> Unheeded { get; init; } = [];

    /// <summary>The same key within this time counts once.</summary>
    public TimeSpan DoubleStrike { get; init; } = TimeSpan.FromMilliseconds(400);

    /// <summary>After a step change the big key is left alone for this long.</summary>
    public TimeSpan LeaveAlone { get; init; } = TimeSpan.FromMilliseconds(1200);

    /// <summary>At the start, an open batch is gone on with straight away when its last act is not older than this.</summary>
    public TimeSpan Recent { get; init; } = TimeSpan.FromHours(36);
}

/// <summary>The ports of a session.</summary>
/// <param name="Rehearsal">Null on a real day.</param>
/// <param name="Keeper">Null: accepted lessons cannot be written.</param>
/// <param name="Writer">Null: no profiles can be made.</param>
public sealed record SessionPorts(
    IBatchStore Store, IProfiles Profiles, IRehearsalControls? Rehearsal = null, IProfileKeeper? Keeper = null, IProfileWriter? Writer = null)
{
    /// <summary>Looks back at a rehearsed batch by its events; gives null for one that was not rehearsed.</summary>
    public Func<IReadOnlyList<RunEvent>, Debrief?>? Debrief { get; init; }

    /// <summary>The followed figures of batches, in the order of <see cref="Trends.BatchFigures.All"/>; null: read from their events each time.</summary>
    public Func<IReadOnlyList<BatchHead>, IReadOnlyList<double?[]>>? Figures { get; init; }

    /// <summary>When something is to be done next for each batch, Unix ms, null for nothing; null: read from their events.</summary>
    public Func<IReadOnlyList<BatchHead>, IReadOnlyList<long?>>? NextDues { get; init; }

    /// <summary>Null: there are no exercises here.</summary>
    public IExerciseBook? Exercises { get; init; }
}
