using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using Humanizer;

namespace BrewDeck.Deck.Pages;

/// <summary>All batches, newest first.</summary>
internal sealed class BatchesPage : ListPage
{
    private readonly IReadOnlyList<BatchHead> _batches;

    public BatchesPage(Shell shell)
        : base(shell)
    {
        IReadOnlyList<BatchHead> batches = [];
        shell.Try(() => batches = shell.Ports.Store.List());
        _batches = batches;
    }

    protected override int Count => _batches.Count;

    protected override void Choose(int row, DateTimeOffset now) => Shell.Push(new BatchPage(Shell, _batches[row].Number));

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        "Batches",
        "batch".ToQuantity(_batches.Count),
        [new Column("no.", 4, Right: true), new Column("opened", 16), new Column("recipe", 0), new Column("state", 8)],
        [.. _batches.Select(b => new Row([
            Notation.Number(b.Number, "0"),
            Shell.Notation.Date(b.OpenedMs),
            b.Recipe + (b.Rehearsed ? " (rehearsal)" : ""),
            Names.Status(b.Status)]))],
        _batches.Count == 0 ? -1 : Selected,
        _batches.Count == 0
            ? [Line.Of("No batch has been brewed yet.")]
            : [Line.Of($"On {_batches[Selected].Brewhouse}, {"act".ToQuantity(_batches[Selected].Events)} in its log.")],
        KeyMap.Hints(Context));
}
