using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Waters;

namespace BrewDeck.Deck;

/// <summary>Where batches are kept.</summary>
public interface IBatchStore
{
    /// <summary>Newest first.</summary>
    IReadOnlyList<BatchHead> List();

    /// <summary>Opens a batch; returns its number once the event is on disk.</summary>
    /// <exception cref="LogbookException">It could not be kept: nothing has happened.</exception>
    int Open(BatchOpened opened);

    /// <summary>Returns once the event is on disk.</summary>
    /// <exception cref="LogbookException">It could not be kept: nothing has happened.</exception>
    void Append(int batch, RunEvent happened);

    /// <summary>What the brewer should know about the store, each one line, oldest first; it grows while the program runs.</summary>
    IReadOnlyList<string> Notices => [];

    /// <summary>All events of a batch in order.</summary>
    /// <exception cref="LogbookException">There is no such batch, or its record is damaged.</exception>
    IReadOnlyList<RunEvent> Read(int batch);
}

/// <summary>The logbook cannot do what was asked. The message is one line that says what, and what would be right.</summary>
public sealed class LogbookException(string message, Exception? cause = null) : Exception(message, cause);

/// <param name="Number">Counts up from 1.</param>
/// <param name="OpenedMs">Unix ms.</param>
/// <param name="Events">Number of events.</param>
public sealed record BatchHead(int Number, string Recipe, string Brewhouse, long OpenedMs, int Events, RunStatus Status, bool Rehearsed);

/// <summary>What the brewer owns and wants to brew.</summary>
public interface IProfiles
{
    IReadOnlyList<ProfileEntry> Brewhouses();

    IReadOnlyList<ProfileEntry> Recipes();

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    Brewhouse Brewhouse(ProfileEntry entry);

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    Recipe Recipe(ProfileEntry entry);

    /// <summary>A malt or sugar of the catalogue by its name, its mass 0; null when it is not in it, or there is none.</summary>
    GristLine? GristOnHand(string name) => null;

    /// <summary>A hop of the catalogue by its name; null when it is not in it.</summary>
    HopOnHand? HopOnHand(string name) => null;

    /// <summary>None unless the brewer keeps some.</summary>
    IReadOnlyList<ProfileEntry> Waters() => [];

    IReadOnlyList<ProfileEntry> WaterTargets() => [];

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    WaterSupply Water(ProfileEntry entry) => throw new ProfileException($"{entry.Path}: no waters are kept here");

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    WaterTarget WaterTarget(ProfileEntry entry) => throw new ProfileException($"{entry.Path}: no water targets are kept here");
}

/// <summary>Takes accepted lessons into the brewhouse's file.</summary>
public interface IProfileKeeper
{
    /// <summary>Changes the one number with a dated note; comments stay, and the old version stays beside it.</summary>
    /// <param name="now">Local time, for the date of the note.</param>
    /// <returns>The file as it is now: the brewer's own, also where a bundled one was read before.</returns>
    /// <exception cref="ProfileException">It could not be changed: nothing has happened.</exception>
    ProfileEntry Accept(ProfileEntry entry, Lesson lesson, DateTimeOffset now);
}

/// <param name="Path">Where it was found.</param>
public sealed record ProfileEntry(string Name, string Path);

/// <summary>A file that cannot be used. The message reads <c>FILE:LINE: what, and what would be right</c>.</summary>
public sealed class ProfileException(string message) : Exception(message);

/// <summary>How a rehearsal runs; present only while one does.</summary>
public interface IRehearsalControls
{
    /// <summary>Seconds of the day in one second of the wall, at least 1.</summary>
    double Speed { get; set; }

    bool Paused { get; set; }

    /// <summary>The brewer does the work; the stand-in only plays the vessels.</summary>
    bool HandsOn { get; set; }

    /// <summary>What the day is dealt, kept with a batch that is opened.</summary>
    RehearsalCard? Card => null;
}
