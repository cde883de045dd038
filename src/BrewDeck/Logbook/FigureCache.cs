using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Trends;

namespace BrewDeck.Logbook;

/// <summary>
/// What is asked of thousands of batches at once, beside the tapes, so that it takes one small file: the figures that trends follow, and
/// when something is due next. The journal fills it while it has a batch's events in its hands; a batch that has more events than when it
/// was looked at is looked at again; the file may be deleted at any time.
/// </summary>
internal sealed class FigureCache
{
    public const string Name = "figures.json";

    /// <summary>Goes up when a figure is reckoned otherwise under its old name: what older versions kept is looked at again.</summary>
    public const int Sums = 4;

    private static readonly string[] Names = [.. BatchFigures.All.Select(f => f.Name)];

    private readonly LogbookDisk _disk;
    private readonly Dictionary<int, CachedFigures> _known;
    private bool _changed;

    public FigureCache(LogbookDisk disk)
    {
        _disk = disk;
        _known = Read(disk.ReadAll(Name)).DistinctBy(c => c.Batch).ToDictionary(c => c.Batch);
    }

    /// <param name="events">Asked for only when the batch is not known as it is now.</param>
    /// <exception cref="LogbookException">The batch cannot be read.</exception>
    public CachedFigures Of(BatchHead head, Func<IReadOnlyList<RunEvent>> events)
    {
        if (_known.GetValueOrDefault(head.Number) is { } known && known.OpenedMs == head.OpenedMs && known.Events == head.Events)
            return known;
        _changed = true;
        return _known[head.Number] = Of(head, events());
    }

    public void Save()
    {
        if (!_changed)
            return;
        var file = new FigureFile(Sums, Names, [.. _known.Values.OrderBy(c => c.Batch)]);
        _disk.Put(Name, JsonSerializer.SerializeToUtf8Bytes(file, FigureJson.Default.FigureFile));
        _changed = false;
    }

    private static CachedFigures Of(BatchHead head, IReadOnlyList<RunEvent> events)
    {
        try
        {
            var state = RunFold.RecordOf(events);
            var dues = DueDates.Of(state.Ferment);
            return new(head.Number, head.OpenedMs, head.Events, BatchFigures.Of(state), dues.IsEmpty ? null : dues.Min(d => d.DueMs));
        }
        // a tape that is whole can hold a plan that no planner drew: what the model then throws is anything, and it has no figures
        catch (Exception e) when (e is not LogbookException)
        {
            return new(head.Number, head.OpenedMs, head.Events, new double?[Names.Length], null);
        }
    }

    private static CachedFigures[] Read(byte[] text)
    {
        try
        {
            return text.Length > 0 && JsonSerializer.Deserialize(text, FigureJson.Default.FigureFile) is { Sums: Sums } file && file.Names.SequenceEqual(Names)
                && file.Batches.All(b => b.Values.Length == Names.Length)
                ? file.Batches
                : [];
        }
        catch (JsonException) // made again
        {
            return [];
        }
    }
}

/// <param name="Sums">See <see cref="FigureCache.Sums"/>.</param>
/// <param name="Names">Of the figures, in the order of the values: a version with other figures looks at all batches again.</param>
internal sealed record FigureFile(int Sums, string[] Names, CachedFigures[] Batches);

/// <param name="Events">When it was looked at.</param>
/// <param name="Values">In the order of <see cref="BatchFigures.All"/>.</param>
/// <param name="NextDueMs">Unix ms of what is to be done next after the day; null: nothing.</param>
internal sealed record CachedFigures(int Batch, long OpenedMs, int Events, double?[] Values, long? NextDueMs);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(FigureFile))]
internal sealed partial class FigureJson : JsonSerializerContext;
