using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Trends;

namespace BrewDeck.Logbook;

/// <summary>
/// The figures of each batch beside the tapes, so that trends over thousands of batches read one small file. A batch that has more events
/// than when it was looked at is looked at again; the file may be deleted at any time.
/// </summary>
internal sealed class FigureCache
{
    public const string Name = "figures.json";

    private readonly LogbookDisk _disk;
    private readonly Dictionary<int, CachedFigures> _known;
    private bool _changed;

    public FigureCache(LogbookDisk disk)
    {
        _disk = disk;
        _known = Read(disk.ReadAll(Name)).DistinctBy(c => c.Batch).ToDictionary(c => c.Batch);
    }

    /// <summary>Of batches, as cached; what was looked at anew is kept.</summary>
    /// <exception cref="LogbookException">A batch cannot be read, or the cache not written.</exception>
    public static IReadOnlyList<double?[]> Read(LogbookDisk disk, IBatchStore store, IReadOnlyList<BatchHead> heads)
    {
        var cache = new FigureCache(disk);
        IReadOnlyList<double?[]> values = [.. heads.Select(head => cache.Of(head, store))];
        DiskTrouble.Explain(disk.Path, cache.Save);
        return values;
    }

    /// <summary>In the order of <see cref="BatchFigures.All"/>.</summary>
    /// <exception cref="LogbookException">The batch cannot be read.</exception>
    public double?[] Of(BatchHead head, IBatchStore store)
    {
        if (_known.GetValueOrDefault(head.Number) is { } known && known.OpenedMs == head.OpenedMs && known.Events == head.Events
            && known.Values.Length == BatchFigures.All.Length)
            return known.Values;
        var values = BatchFigures.Of(RunFold.Of(store.Read(head.Number)));
        _known[head.Number] = new(head.Number, head.OpenedMs, head.Events, values);
        _changed = true;
        return values;
    }

    public void Save()
    {
        if (_changed)
            _disk.Put(Name, JsonSerializer.SerializeToUtf8Bytes(_known.Values.OrderBy(c => c.Batch).ToArray(), FigureJson.Default.CachedFiguresArray));
    }

    private static CachedFigures[] Read(byte[] text)
    {
        try
        {
            return text.Length == 0 ? [] : JsonSerializer.Deserialize(text, FigureJson.Default.CachedFiguresArray) ?? [];
        }
        catch (JsonException) // made again
        {
            return [];
        }
    }
}

/// <param name="Events">When it was looked at.</param>
internal sealed record CachedFigures(int Batch, long OpenedMs, int Events, double?[] Values);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(CachedFigures[]))]
internal sealed partial class FigureJson : JsonSerializerContext;
