using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The logbook: all batches, searched, filtered and sorted; a few side by side, or their trends.</summary>
internal sealed class BatchesPage : ListPage
{
    private readonly IReadOnlyList<BatchHead> _batches;
    private readonly HashSet<int> _marked = [];
    private BatchQuery _query = new();
    private ImmutableArray<BatchHead> _found;
    private ImmutableArray<Row> _rows;

    public BatchesPage(Shell shell)
        : base(shell)
    {
        IReadOnlyList<BatchHead> batches = [];
        shell.Try(() => batches = shell.Ports.Store.List());
        _batches = batches;
        Find(_query);
    }

    public override KeyContext Context => KeyContext.List | KeyContext.Batches;

    protected override int Count => _found.Length;

    private BatchHead? Chosen => Selected < Count ? _found[Selected] : null;

    protected override void Choose(int row, DateTimeOffset now) => Shell.Push(new BatchPage(Shell, _found[row].Number));

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Search:
                Ask(new SearchAsk(this, Shell.Notation.Text("Search: number, day, recipe, brewhouse, state"), _query.Search, text => Find(_query with { Search = text }), () => Counts.Of(Count, _batches.Count, Shell.Notation)));
                break;
            case Command.Rehearsed:
                Find(_query with { Share = Next(_query.Share) });
                break;
            case Command.SameRecipe:
                Find(_query with { Recipe = _query.Recipe is null ? Chosen?.Recipe : null });
                break;
            case Command.SameBrewhouse:
                Find(_query with { Brewhouse = _query.Brewhouse is null ? Chosen?.Brewhouse : null });
                break;
            case Command.Sort:
                Find(_query with { Order = Next(_query.Order) });
                break;
            case Command.Mark when Chosen is { } head:
                Mark(head);
                break;
            case Command.SideBySide:
                SideBySidePage.Enter(Shell, [.. _batches.Where(b => _marked.Contains(b.Number)).OrderBy(b => b.Number)]);
                break;
            case Command.Trends:
                TrendsPages.Enter(Shell, _found);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text("Batches"),
        Count == _batches.Count ? Counts.Batches(Count, Shell.Notation) : Counts.Of(Count, _batches.Count, Shell.Notation),
        [new Column(Shell.Notation.Text("no."), 6, Right: true), new Column(Shell.Notation.Text("opened"), 16), new Column(Shell.Notation.Text("recipe"), 0), new Column(Shell.Notation.Text("state"), 8)],
        _rows,
        Count == 0 ? -1 : Selected,
        [.. Details()],
        KeyMap.Hints(Context, Shell.Notation));

    private IEnumerable<Line> Details()
    {
        if (_batches.Count == 0)
            yield return Line.Of(Shell.Notation.Text("No batch has been brewed yet."));
        else if (Chosen is { } head)
            yield return Line.Of(head.Events == 1 ? Shell.Notation.Text($"On {head.Brewhouse}, 1 act in its log.") : Shell.Notation.Text($"On {head.Brewhouse}, {head.Events} acts in its log."));
        else
            yield return Line.Of(Shell.Notation.Text("No batch is like that: r, e and h let others in again, s searches anew."));
        if (_batches.Count > 0)
            yield return Line.Of(BatchWords.Of(_query, Shell.Notation), Tone.Muted);
        if (_marked.Count > 0)
            yield return Line.Of(Marked());
    }

    // a mark holds while a search hides its batch
    private string Marked()
    {
        var marked = string.Join(", ", _marked.Order());
        var hidden = string.Join(", ", _marked.Where(m => _found.All(b => b.Number != m)).Order());
        return hidden.Length == 0 ? Shell.Notation.Text($"Marked: {marked}.") : Shell.Notation.Text($"Marked: {marked}; not in this list: {hidden}.");
    }

    private void Mark(BatchHead head)
    {
        if (!_marked.Remove(head.Number) && _marked.Count < SideBySidePage.Most)
            _marked.Add(head.Number);
        else if (_marked.Count == SideBySidePage.Most)
            Shell.Say(Shell.Notation.Text($"At most {SideBySidePage.Most} batches side by side; m on a marked one lets it go."), Tone.Warning);
        Compose();
    }

    private void Find(BatchQuery query)
    {
        _query = query;
        _found = query.Of(_batches, Shell.Notation);
        Compose();
        Select(Selected);
    }

    // kept between keys: moving about in thousands makes no rows
    private void Compose() => _rows = [.. _found.Select(b => new Row([
        (_marked.Contains(b.Number) ? "* " : "") + Shell.Notation.Number(b.Number, "0"),
        Shell.Notation.Date(b.OpenedMs),
        b.Recipe + (b.Rehearsed ? Shell.Notation.Text(" (rehearsal)") : ""),
        Names.Status(b.Status, Shell.Notation)]))];

    private static T Next<T>(T value)
        where T : struct, Enum
    {
        var all = Enum.GetValues<T>();
        return all[(Array.IndexOf(all, value) + 1) % all.Length];
    }
}
