using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Core.Waters;

namespace BrewDeck.Deck;

/// <summary>The batches that are kept, to be read.</summary>
public interface IBatchReader
{
    /// <summary>Newest first, see <see cref="BatchHead.NewestFirst"/>.</summary>
    IReadOnlyList<BatchHead> List();

    /// <summary>What the brewer should know about the store, each one line, oldest first; it grows while the program runs.</summary>
    IReadOnlyList<string> Notices => [];

    /// <summary>All events of a batch in order.</summary>
    /// <exception cref="LogbookException">There is no such batch, or its record is damaged.</exception>
    IReadOnlyList<RunEvent> Read(int batch);
}

/// <summary>Where batches are kept.</summary>
public interface IBatchStore : IBatchReader
{
    /// <summary>Opens a batch; returns its number once the event is on disk.</summary>
    /// <exception cref="LogbookException">It could not be kept: nothing has happened.</exception>
    int Open(BatchOpened opened);

    /// <summary>Returns once the event is on disk.</summary>
    /// <exception cref="LogbookException">It could not be kept: nothing has happened.</exception>
    void Append(int batch, RunEvent happened);
}

/// <summary>The logbook cannot do what was asked. The message is one line that says what, and what would be right.</summary>
public sealed class LogbookException(string message, Exception? cause = null) : Exception(message, cause);

/// <param name="Number">Counts up from 1.</param>
/// <param name="OpenedMs">Unix ms.</param>
/// <param name="Events">Number of events.</param>
public sealed record BatchHead(int Number, string Recipe, string Brewhouse, long OpenedMs, int Events, RunStatus Status, bool Rehearsed)
{
    /// <summary>By the day they were opened, as the lists show it; a number says only when a batch came into this logbook.</summary>
    public static IEnumerable<BatchHead> NewestFirst(IEnumerable<BatchHead> heads) => heads.OrderByDescending(h => h.OpenedMs).ThenByDescending(h => h.Number);
}

/// <summary>What the brewer owns and wants to brew.</summary>
public interface IProfiles
{
    IReadOnlyList<ProfileEntry> Brewhouses();

    IReadOnlyList<ProfileEntry> Recipes();

    /// <summary>Files among the brewer's recipes that are none until they are converted: their names.</summary>
    IReadOnlyList<string> RecipesToConvert() => [];

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    Brewhouse Brewhouse(ProfileEntry entry);

    /// <exception cref="ProfileException">The file cannot be used; its message is the one clear line.</exception>
    Recipe Recipe(ProfileEntry entry);

    /// <summary>A malt or sugar of the catalogue by its name, its mass 0; null when it is not in it, or there is none.</summary>
    GristLine? GristOnHand(string name) => null;

    /// <summary>A hop of the catalogue by its name; null when it is not in it.</summary>
    HopOnHand? HopOnHand(string name) => null;

    /// <summary>Malts, sugars and extracts of the catalogue, their masses 0.</summary>
    /// <exception cref="ProfileException">The catalogue cannot be used.</exception>
    IReadOnlyList<GristLine> CatalogueGrist() => [];

    IReadOnlyList<HopOnHand> CatalogueHops() => [];

    IReadOnlyList<Yeast> CatalogueYeasts() => [];

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

/// <summary>Writes profiles that were made in the program, and keeps what is half made.</summary>
public interface IProfileWriter
{
    /// <summary>Writes a new brewhouse into the brewer's own folder.</summary>
    /// <param name="notes">Where a number comes from, by vessel or table and key, such as <c>kettle.dead_space</c> or <c>habits.evaporation</c>.</param>
    /// <param name="now">Local time, for the date in the file.</param>
    /// <exception cref="ProfileException">It could not be written, or does not read back: nothing has happened.</exception>
    ProfileEntry Write(Brewhouse brewhouse, IReadOnlyDictionary<string, string> notes, DateTimeOffset now);

    /// <summary>Writes a recipe: comments of its file stay where they stand, and the old version stays beside it.</summary>
    /// <param name="entry">The file that is changed; of a bundled one an own copy is made, which counts before it. Null: a new file.</param>
    /// <param name="now">Local time, for the name of the old version.</param>
    /// <returns>The file as it is now.</returns>
    /// <exception cref="ProfileException">It could not be written, or does not read back: nothing has happened.</exception>
    ProfileEntry Write(Recipe recipe, ProfileEntry? entry, DateTimeOffset now);

    /// <summary>Writes a water: the old version stays beside it.</summary>
    /// <param name="entry">The file that is changed; of a bundled one an own copy is made, which counts before it. Null: a new file.</param>
    /// <param name="now">Local time, for the name of the old version.</param>
    /// <returns>The file as it is now.</returns>
    /// <exception cref="ProfileException">It could not be written, or does not read back: nothing has happened.</exception>
    ProfileEntry Write(WaterSupply water, ProfileEntry? entry, DateTimeOffset now);

    /// <summary>The lines kept under a name; empty when there are none.</summary>
    IReadOnlyList<string> Draft(string name);

    /// <summary>Keeps lines under a name on disk; none: forgets them.</summary>
    /// <exception cref="ProfileException">They could not be kept.</exception>
    void KeepDraft(string name, IReadOnlyList<string> lines);
}

/// <param name="Path">Where it was found.</param>
public sealed record ProfileEntry(string Name, string Path);

/// <summary>A file that cannot be used. The message reads <c>FILE:LINE: what, and what would be right</c>.</summary>
public sealed class ProfileException(string message) : Exception(message)
{
    /// <summary>What is wrong, without the file and the line that the message begins with.</summary>
    public string What { get; init; } = message;
}
