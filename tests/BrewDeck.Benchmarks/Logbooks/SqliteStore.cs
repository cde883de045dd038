using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using Microsoft.Data.Sqlite;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>The same lines in two tables of SQLite, one transaction a batch.</summary>
internal sealed class SqliteStore : IDisposable
{
    private const string Name = "sqlite";

    private readonly SqliteConnection _db;

    public SqliteStore(string folder)
    {
        _db = Open(folder);
        Execute("PRAGMA journal_mode = WAL");
        Execute("CREATE TABLE IF NOT EXISTS batches(number INTEGER PRIMARY KEY, recipe TEXT, brewhouse TEXT, opened_ms INTEGER, events INTEGER)");
        Execute("CREATE TABLE IF NOT EXISTS figures(batch INTEGER, name TEXT, value REAL, PRIMARY KEY(batch, name)) WITHOUT ROWID");
        Execute("CREATE TABLE IF NOT EXISTS events(batch INTEGER, seq INTEGER, hash BLOB, body TEXT, PRIMARY KEY(batch, seq)) WITHOUT ROWID");
    }

    public void Add(int number, IReadOnlyList<TapeLine> lines)
    {
        using var transaction = _db.BeginTransaction();
        var opened = (BatchOpened)lines[0].ToEvent();
        Execute("INSERT INTO batches VALUES($a, $b, $c, $d, $e)", number, opened.Plan.Recipe.Name, opened.Plan.Brewhouse.Name, opened.AtMs, lines.Count);
        using var insert = Command("INSERT INTO events VALUES($a, $b, $c, $d)", 0, 0, Array.Empty<byte>(), "");
        foreach (var line in lines)
        {
            insert.Parameters[0].Value = number;
            insert.Parameters[1].Value = line.Seq;
            insert.Parameters[2].Value = line.Hash;
            insert.Parameters[3].Value = Encoding.ASCII.GetString(line.Body);
            insert.ExecuteNonQuery();
        }

        var figures = BatchFigures.Of(RunFold.RecordOf([.. lines.Select(l => l.ToEvent())]));
        for (var i = 0; i < figures.Length; i++)
        {
            if (figures[i] is { } value)
                Execute("INSERT INTO figures VALUES($a, $b, $c)", number, BatchFigures.All[i].Name, value);
        }

        transaction.Commit();
    }

    public static void Measure(string folder)
    {
        Timing.Print(Name, "open and list", () =>
        {
            using var store = new SqliteStore(folder);
            return store.Rows("SELECT number, recipe, brewhouse, opened_ms, events FROM batches ORDER BY number DESC");
        });
        using var open = new SqliteStore(folder);
        var half = open.Rows("SELECT number FROM batches") / 2;
        var (read, shown) = (half, half);
        Timing.Print(Name, "a batch's events read", () => open.Events(read++).Count);
        Timing.Print(Name, "a batch's page, both with its words", () =>
        {
            var events = open.Events(shown++);
            return BatchText.Lines(events, RunFold.RecordOf(events), Notation.Metric).Length;
        });
        Timing.Print(Name, "search as typed", () => open.Rows("SELECT number FROM batches WHERE recipe LIKE '%porter%' AND date(opened_ms / 1000, 'unixepoch') LIKE '%2020-0%'"));
        Timing.Print(Name, "trends", open.Trends);
        Timing.PrintPeak(Name);
        Timing.PrintSizes(Name, Directory.EnumerateFiles(folder, "batches.sqlite*"));
    }

    public void Dispose()
    {
        _db.Dispose();
        SqliteConnection.ClearAllPools();
    }

    private static SqliteConnection Open(string folder)
    {
        var db = new SqliteConnection($"Data Source={Path.Combine(folder, "batches.sqlite")};Pooling=False");
        db.Open();
        return db;
    }

    private List<RunEvent> Events(int batch)
    {
        using var command = Command("SELECT body FROM events WHERE batch = $a ORDER BY seq", batch);
        using var reader = command.ExecuteReader();
        var events = new List<RunEvent>();
        while (reader.Read())
            events.Add(EventCodec.Decode(Encoding.UTF8.GetBytes(reader.GetString(0))));
        return events;
    }

    private int Trends()
    {
        var lines = 0;
        foreach (var figure in BatchFigures.All)
        {
            using var command = Command("SELECT batch, value FROM figures JOIN batches ON number = batch WHERE name = $a ORDER BY opened_ms", figure.Name);
            using var reader = command.ExecuteReader();
            var points = new List<TrendPoint>();
            while (reader.Read())
                points.Add(new(reader.GetInt32(0), reader.GetDouble(1)));
            lines += points.Count > 0 ? TrendWords.Sums(ControlChart.Of(points), points[^1].Value, figure, Notation.Metric).Length : 0;
        }

        return lines;
    }

    private int Rows(string sql)
    {
        using var command = Command(sql);
        using var reader = command.ExecuteReader();
        var count = 0;
        var row = new object[reader.FieldCount];
        while (reader.Read())
            count += reader.GetValues(row) > 0 ? 1 : 0;
        return count;
    }

    private void Execute(string sql, params object[] values)
    {
        using var command = Command(sql, values);
        command.ExecuteNonQuery();
    }

    private SqliteCommand Command(string sql, params object[] values)
    {
        var command = _db.CreateCommand();
        command.CommandText = sql;
        for (var i = 0; i < values.Length; i++)
            command.Parameters.AddWithValue("$" + (char)('a' + i), values[i]);
        return command;
    }
}
