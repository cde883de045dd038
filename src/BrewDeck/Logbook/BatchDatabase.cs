using System.Runtime.ExceptionServices;
using System.Text;
using BrewDeck.Deck;
using LiteDB;
using LiteDB.Engine;

namespace BrewDeck.Logbook;

/// <summary>
/// The LiteDB file that follows the tapes: headers for a list that reads no events, and a second copy of every event that a
/// repair can draw on. An event's key is its batch in the upper half and its place in the lower; there is no other index, and no
/// secondary one ever: LiteDB cannot rebuild a file of more than some 2,550 documents that has one.
/// </summary>
internal sealed class BatchDatabase : IDisposable
{
    public const string DataName = "batches.db";
    public const string LogName = "batches-log.db";

    /// <summary>Of the documents in it; a higher one was written by a newer program.</summary>
    public const int Format = 1;

    private readonly string _path;
    private readonly DurableStream _data;
    private readonly DurableStream _log;
    private readonly LiteDatabase _db;
    private readonly ILiteCollection<BsonDocument> _batches;
    private readonly ILiteCollection<BsonDocument> _events;

    /// <summary>
    /// A transaction that LiteDB left open when a write failed is cleared up by its finalizer, which throws when its pages are in
    /// disorder: that would end the program long after the trouble was told. The tape is the record; nothing is lost by letting it go.
    /// </summary>
    static BatchDatabase() => ExceptionHandling.SetUnhandledExceptionHandler(
        e => e is LiteException && e.StackTrace?.Contains("TransactionService.Finalize", StringComparison.Ordinal) == true);

    private BatchDatabase(string path, DurableStream data, DurableStream log)
    {
        (_path, _data, _log) = (path, data, log);
        _db = Engine(data, log);
        _batches = _db.GetCollection("batches", BsonAutoId.Int32);
        _events = _db.GetCollection("events", BsonAutoId.Int64);
        Newer = FormatOf(_db) > Format;
    }

    /// <summary>Written by a newer program: to be read as far as that goes, and left as it is.</summary>
    public bool Newer { get; }

    /// <exception cref="LogbookException">Another program has it open, it may not be written, or it is damaged.</exception>
    public static BatchDatabase Open(LogbookDisk disk)
    {
        DiskTrouble.Explain(disk.Path, () => MakeWhenMissing(disk));
        var data = DiskTrouble.Explain(disk.Path, () => disk.Open(DataName));
        Stream? log = null;
        try
        {
            log = DiskTrouble.Explain(disk.Path, () => disk.Open(LogName));
            return new BatchDatabase(disk.Path, new DurableStream(data, log: false), new DurableStream(log, log: true));
        }
        catch (Exception e)
        {
            data.Dispose();
            log?.Dispose();
            if (e is LogbookException)
                throw;
            if (DiskTrouble.IsFull(e))
                DiskTrouble.Explain<object>(disk.Path, () => throw e);
            throw Damaged(disk.Path, e);
        }
    }

    /// <summary>All headers, by number.</summary>
    /// <exception cref="LogbookException">They cannot be read.</exception>
    public IReadOnlyList<BatchHeader> Headers()
    {
        try
        {
            return [.. _batches.FindAll().Select(ToHeader)];
        }
        catch (Exception e) // LiteDB meets damage with whatever it runs into
        {
            throw Newer ? TooNew(_path, e) : Damaged(_path, e);
        }
    }

    /// <summary>Events of one batch in the order of their places.</summary>
    public IEnumerable<TapeLine> Lines(int batch) =>
        _events.Find(Query.Between("_id", Key(batch, 0), Key(batch, int.MaxValue))).Select(ToLine);

    /// <summary>Takes in more events with the header that counts them, as one transaction; on disk when it returns.</summary>
    public void Follow(BatchHeader header, IEnumerable<TapeLine> lines)
    {
        _db.BeginTrans();
        try
        {
            foreach (var line in lines)
                _events.Insert(ToDocument(header.Number, line));
            _batches.Upsert(ToDocument(header));
            _db.Commit();
        }
        catch
        {
            _db.Rollback();
            throw;
        }
    }

    /// <summary>LiteDB does not close streams that it was given.</summary>
    public void Dispose()
    {
        try
        {
            _db.Dispose();
        }
        finally
        {
            _data.Dispose();
            _log.Dispose();
        }
    }

    /// <summary>
    /// Made whole and put in place at once: LiteDB writes the first page of a new file without waiting for it, and a power cut just
    /// then left a file that it does not open.
    /// </summary>
    private static void MakeWhenMissing(LogbookDisk disk)
    {
        if (disk.Files().GetValueOrDefault(DataName) >= DurableStream.Page)
            return; // less than a page holds nothing
        using var data = new MemoryStream();
        using (var log = new MemoryStream())
        {
            using var db = Engine(data, log);
            db.GetCollection("meta", BsonAutoId.Int32).Insert(new BsonDocument { ["_id"] = 1, ["format"] = Format });
        }

        disk.Delete(LogName); // of a database that is gone
        disk.Put(DataName, data.ToArray());
    }

    private static int FormatOf(LiteDatabase db) =>
        db.GetCollection("meta").FindById(1) is { } meta
            ? meta["format"].AsInt32
            : throw new InvalidDataException("the database does not say its format");

    private static LiteDatabase Engine(Stream data, Stream log) => new(new LiteEngine(new EngineSettings
    {
        DataStream = data,
        LogStream = log,
        Collation = new Collation("/Ordinal"), // otherwise that of the machine on which the file was made
    }));

    /// <summary>For what must not be done to a newer program's logbook.</summary>
    public static LogbookException TooNew(string folder, Exception? cause = null) => new(
        $"{folder}: written by a newer brewdeck; use that one, or give --logbook PATH", cause);

    private static LogbookException Damaged(string folder, Exception cause) => new(
        $"{Path.Combine(folder, DataName)}: the database is damaged; \"brewdeck log repair\" makes it again from the tapes", cause);

    private static long Key(int batch, int seq) => ((long)batch << 32) | (uint)seq;

    private static BsonDocument ToDocument(int batch, TapeLine line) => new()
    {
        ["_id"] = Key(batch, line.Seq),
        ["event"] = Encoding.ASCII.GetString(line.Body),
        ["hash"] = line.Hash,
    };

    private static TapeLine ToLine(BsonDocument document) => new(
        (int)(document["_id"].AsInt64 & 0xFFFF_FFFF), document["hash"].AsBinary, Encoding.UTF8.GetBytes(document["event"].AsString));

    private static BsonDocument ToDocument(BatchHeader header) => new()
    {
        ["_id"] = header.Number,
        ["recipe"] = header.Head.Recipe,
        ["brewhouse"] = header.Head.Brewhouse,
        ["opened_ms"] = header.Head.OpenedMs,
        ["events"] = header.Head.Events,
        ["status"] = BatchStatus.Name(header.Head.Status),
        ["rehearsed"] = header.Head.Rehearsed,
        ["hash"] = header.Hash,
        ["tape_bytes"] = header.TapeBytes,
    };

    private static BatchHeader ToHeader(BsonDocument document) => new(
        new BatchHead(
            document["_id"].AsInt32,
            document["recipe"].AsString,
            document["brewhouse"].AsString,
            document["opened_ms"].AsInt64,
            document["events"].AsInt32,
            BatchStatus.Of(document["status"].AsString),
            document["rehearsed"].AsBoolean),
        document["hash"].AsBinary,
        document["tape_bytes"].AsInt64);
}
