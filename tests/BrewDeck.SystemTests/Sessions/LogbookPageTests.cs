using System.Text;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Trends;
using BrewDeck.SystemTests.Reports;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Nine batches, made of what one rehearsed day brought into the fermenter, looked through by keys.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class LogbookPageTests
{
    private const int Count = 9;
    private static readonly DateTimeOffset Later = new(2027, 1, 10, 9, 0, 0, TimeSpan.Zero);
    private static readonly Dictionary<int, double?[]> Figures = [];
    private readonly Session _session;
    private DateTimeOffset _now = Later;

    public LogbookPageTests(RehearsedLogbook logbook)
    {
        var store = new Shelf([.. Enumerable.Range(1, Count).Select(i => Variant(logbook.Events(), i))]);
        _session = new Session(new SessionPorts(store, new NoProfiles()) { Figures = heads => [.. heads.Select(h => FiguresOf(h.Number, store))] }, new SessionSettings { ProgramVersion = "test" }, Later);
        while (((ListScreen)_session.Screen).Rows[((ListScreen)_session.Screen).Selected].Cells[0] != "Batches")
            Named(KeyName.Down);
        Named(KeyName.Enter);
    }

    private ListScreen List => Assert.IsType<ListScreen>(_session.Screen);

    private string Listed => string.Join(' ', List.Rows.Select(r => r.Cells[0].TrimStart('*', ' ')));

    [Fact]
    public void A_search_finds_with_every_letter_and_esc_takes_it_back()
    {
        Letters("s");
        Typed("porter");
        Assert.Equal("9 6 3", Listed);
        Typed("porter 2026-06-08");
        Assert.Equal("9", Listed);
        Named(KeyName.Escape);
        Assert.Equal("9 8 7 6 5 4 3 2 1", Listed);
        Letters("s");
        _session.Receive(new Input.Submitted("porter"), _now);
        Assert.Equal("9 6 3", Listed);
        Assert.Equal("3 of 9 batches", List.Corner);
    }

    [Fact]
    public void Each_key_of_the_list_of_batches()
    {
        foreach (var binding in KeyMap.Table.Where(b => b.Where == KeyContext.Batches))
        {
            foreach (var stroke in binding.Strokes)
                Try(binding.Command, stroke);
        }
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Batches_side_by_side_and_their_trends_look_as_they_did(int columns, int rows)
    {
        _session.Receive(new Input.Resized(columns, rows), _now);
        var seen = new StringBuilder();
        void Keep(string what) => seen.Append("=== ").Append(what).Append('\n').Append(StillScreen.Of(_session.Screen, columns, rows).ToText());
        Letters("m");
        Named(KeyName.Down);
        Letters("m");
        Named(KeyName.End);
        Letters("m");
        Keep("marked");
        Letters("c");
        Keep("side by side");
        Letters("q");
        Letters("t");
        Keep("trends");
        SessionGoldens.Same($"logbook-{columns}x{rows}", seen.ToString());
    }

    [Fact]
    public void Six_batches_side_by_side_are_too_many_and_one_is_too_few()
    {
        Letters("m");
        Letters("c");
        Assert.StartsWith("Mark 2 to 5", _session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        for (var i = 0; i < 5; i++)
        {
            Named(KeyName.Down);
            Letters("m");
        }
        Assert.StartsWith("At most 5 batches", _session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        Letters("c");
        Assert.Equal(6, List.Columns.Length);
    }

    [Fact]
    public void A_row_that_is_taken_out_can_be_put_back_where_it_was()
    {
        Letters("m");
        Named(KeyName.Down);
        Letters("m");
        Letters("c");
        var before = RowsOfList();
        Named(KeyName.Down);
        Named(KeyName.Enter);
        Assert.Equal([before[0], .. before.Skip(2), before[1].Split('|')[0] + "||"], RowsOfList());
        Named(KeyName.End);
        Named(KeyName.Enter);
        Assert.Equal(before, RowsOfList());
        for (var i = 0; i < 40; i++)
        {
            Named(KeyName.Home);
            Named(KeyName.Enter);
        }
        Assert.Contains(RowsOfList(), row => !row.EndsWith("||", StringComparison.Ordinal));
    }

    private List<string> RowsOfList() => [.. List.Rows.Select(r => string.Join('|', r.Cells))];

    private void Try(Command command, KeyStroke stroke)
    {
        var before = Listed;
        Strike(stroke);
        switch (command)
        {
            case Command.Search:
                Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
                Named(KeyName.Escape);
                break;
            case Command.Mark:
                Assert.StartsWith("* ", List.Rows[List.Selected].Cells[0], StringComparison.Ordinal);
                break;
            case Command.SideBySide:
                Assert.StartsWith("Mark 2 to 5", _session.Screen.Notice!.ToString(), StringComparison.Ordinal);
                break;
            case Command.Trends:
                Assert.StartsWith("Trends over 9", Assert.IsType<ChartScreen>(_session.Screen).Title, StringComparison.Ordinal);
                Letters("q");
                break;
            case Command.Sort:
                Assert.Equal("1 2 3 4 5 6 7 8 9", Listed);
                Strike(stroke);
                Assert.Equal("8 7 5 4 2 1 9 6 3", Listed);
                Strike(stroke);
                Strike(stroke);
                Strike(stroke);
                break;
            case Command.Rehearsed:
                Assert.Equal("8 6 4 2", Listed);
                Strike(stroke);
                Assert.Equal("9 7 5 3 1", Listed);
                Strike(stroke);
                break;
            case Command.SameRecipe:
                Assert.Equal("9 6 3", Listed);
                Strike(stroke);
                break;
            case Command.SameBrewhouse:
                Assert.Equal("9 8 7 6 5", Listed);
                Strike(stroke);
                break;
            default:
                Assert.Fail($"{command} has no story");
                break;
        }
        Assert.Equal(before, Listed);
    }

    /// <summary>Its own day, recipe and brewhouse; every other one counts as really brewed; a little more or less in the fermenter.</summary>
    private static List<RunEvent> Variant(IReadOnlyList<RunEvent> day, int number)
    {
        var laterMs = number * 86_400_000L;
        return [.. day.Where(Counts).Select(e => Variant(e, number) with { AtMs = e.AtMs + laterMs })];
    }

    /// <summary>What lists and figures look at; the rest of the day would only be folded again and again.</summary>
    private static bool Counts(RunEvent happened) =>
        happened is BatchOpened or ReadingTaken { Reading.Vessel: Places.Fermenter };

    private static RunEvent Variant(RunEvent happened, int number) => happened switch
    {
        BatchOpened opened => opened with
        {
            Rehearsed = number % 2 == 1,
            Card = null,
            Plan = opened.Plan with
            {
                Recipe = opened.Plan.Recipe with { Name = number % 3 == 0 ? "Pier Porter" : "Amber" },
                Brewhouse = opened.Plan.Brewhouse with { Name = number < 5 ? "Old shed" : "New shed" },
            },
        },
        ReadingTaken { Reading: { Kind: ReadingKind.Volume, Vessel: Places.Fermenter } reading } taken =>
            taken with { Reading = reading with { Value = reading.Value + number % 4 * 0.2 } },
        _ => happened,
    };

    /// <summary>Each batch is folded once for all stories, which run one after the other.</summary>
    private static double?[] FiguresOf(int number, Shelf store) =>
        Figures.TryGetValue(number, out var known) ? known : Figures[number] = BatchFigures.Of(RunFold.RecordOf(store.Read(number)));

    private void Letters(string letter) => Strike(KeyStroke.Of(letter[0]));

    private void Named(KeyName name) => Strike(new KeyStroke(name));

    private void Typed(string text) => _session.Receive(new Input.Typed(text), _now);

    private void Strike(KeyStroke stroke)
    {
        _now = _now.AddSeconds(2);
        _session.Receive(new Input.Key(stroke), _now);
    }

    /// <summary>Batches to be read and nothing else.</summary>
    private sealed class Shelf(IReadOnlyList<IReadOnlyList<RunEvent>> batches) : IBatchStore
    {
        public IReadOnlyList<BatchHead> List() => [.. batches.Select(Head).Reverse()];

        public int Open(BatchOpened opened) => throw new NotSupportedException();

        public void Append(int batch, RunEvent happened) => throw new NotSupportedException();

        public IReadOnlyList<RunEvent> Read(int batch) => batches[batch - 1];

        private static BatchHead Head(IReadOnlyList<RunEvent> events, int index)
        {
            var opened = (BatchOpened)events[0];
            return new(index + 1, opened.Plan.Recipe.Name, opened.Plan.Brewhouse.Name, opened.AtMs, events.Count, RunStatus.Complete, opened.Rehearsed);
        }
    }

    private sealed class NoProfiles : IProfiles
    {
        public IReadOnlyList<ProfileEntry> Brewhouses() => [];

        public IReadOnlyList<ProfileEntry> Recipes() => [];

        public BrewDeck.Core.Brewhouses.Brewhouse Brewhouse(ProfileEntry entry) => throw new NotSupportedException();

        public BrewDeck.Core.Recipes.Recipe Recipe(ProfileEntry entry) => throw new NotSupportedException();
    }
}
