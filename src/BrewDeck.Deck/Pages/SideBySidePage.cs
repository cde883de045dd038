using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>
/// Two to five batches beside each other, a figure a row. Enter takes out a row that does not matter: it goes to the end of the list
/// without its figures, where Enter puts it back.
/// </summary>
internal sealed class SideBySidePage : ListPage
{
    public const int Fewest = 2, Most = 5;
    private const int ColumnWidth = 10;

    private readonly ImmutableArray<BatchHead> _heads;
    private readonly ImmutableArray<Row> _figures;
    private readonly HashSet<int> _out = [];
    private ImmutableArray<int> _order;

    private SideBySidePage(Shell shell, ImmutableArray<BatchHead> heads)
        : base(shell)
    {
        _heads = heads;
        _figures = [.. Rows([.. heads.Select(h => RunFold.RecordOf(shell.Ports.Store.Read(h.Number)))]).Where(r => r.Cells.Skip(1).Any(c => c.Length > 0))];
        Order();
    }

    protected override int Count => _order.Length;

    /// <param name="heads">The marked ones.</param>
    public static void Enter(Shell shell, ImmutableArray<BatchHead> heads)
    {
        if (heads.Length < Fewest)
            shell.Say(shell.Notation.Text($"Mark {Fewest} to {Most} batches with m; then c sets them side by side."), Tone.Warning);
        else
            shell.Try(() => shell.Push(new SideBySidePage(shell, heads)));
    }

    protected override void Choose(int row, DateTimeOffset now)
    {
        var figure = _order[row];
        if (_out.Remove(figure))
            Shell.Say(Shell.Notation.Text($"{_figures[figure].Cells[0]} is back."));
        else if (_out.Count < Count - 1)
        {
            _out.Add(figure);
            Shell.Say(Shell.Notation.Text($"{_figures[figure].Cells[0]} is out; enter on it at the end of the list puts it back."));
        }

        Order();
    }

    private void Order() => _order = [.. Enumerable.Range(0, _figures.Length).OrderBy(_out.Contains)];

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text("Batches side by side"),
        Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
        [new Column("", 0), .. _heads.Select(h => new Column(Shell.Notation.Text($"no. {h.Number}"), ColumnWidth, Right: true))],
        [.. _order.Select(i => _out.Contains(i) ? new Row([_figures[i].Cells[0], .. _heads.Select(_ => "")], Tone.Muted) : _figures[i])],
        Selected,
        [.. _heads.Select(h => Line.Of(Shell.Notation.Text($"{h.Number}: {h.Recipe} on {h.Brewhouse}, {Shell.Notation.Date(h.OpenedMs)}{(h.Rehearsed ? Shell.Notation.Text(", rehearsal") : "")}")))],
        KeyMap.Hints(Context, Shell.Notation));

    private IEnumerable<Row> Rows(RunState[] states)
    {
        var n = Shell.Notation;
        Row Of(string name, Func<RunState, string?> value) => new([name, .. states.Select(s => s.Plan is null ? "" : value(s) ?? "")]);
        yield return Of(Shell.Notation.Text("State"), s => Names.Status(s.Status, Shell.Notation));
        yield return Of(Shell.Notation.Text("Planned gravity"), s => n.Gravity(s.Plan!.Totals.OriginalGravitySg));
        yield return Of(Shell.Notation.Text("Measured gravity"), s => s.Ferment.MeasuredOriginalSg is { } og ? n.Gravity(og) : null);
        yield return Of(Shell.Notation.Text("Last gravity of the beer"), s => FermentFigures.Of(s.Ferment) is { } f ? n.Gravity(f.GravitySg.P50) : null);
        yield return Of(Shell.Notation.Text("Alcohol, % vol"), s => FermentFigures.Of(s.Ferment) is { } f ? Shell.Notation.Number(f.AbvPercent.P50, "0.0") : null);
        yield return Of(Shell.Notation.Text("Planned into the fermenter"), s => n.Volume(s.Plan!.Totals.FermenterL));
        yield return Of(Shell.Notation.Text("Bitterness planned, IBU"), s => Shell.Notation.Number(s.Plan!.Totals.BitternessIbu, "0"));
        yield return Of(Shell.Notation.Text("Grist"), s => n.Mass(s.Plan!.Recipe.Grist.Sum(g => g.MassKg)));
        yield return Of(Shell.Notation.Text("Planned day"), s => Durations.Short(s.Plan!.Totals.DayS));
        yield return Of(Shell.Notation.Text("Remedies"), s => Shell.Notation.Number(s.Remedies.Length, "0"));
        yield return Of(Shell.Notation.Text("Readings"), s => Shell.Notation.Number(s.Readings.Length, "0"));
        foreach (var figure in BatchFigures.All)
            yield return Of(TrendWords.Name(figure, n), s => figure.Of(s) is { } value && double.IsFinite(value) ? TrendWords.Say(value, figure, Shell.Notation) : null);
        yield return Of(Shell.Notation.Text("Rating"), s => s.Ferment.Tastings.LastOrDefault(t => t.Rating is not null)?.Rating is { } rating ? Shell.Notation.Number(rating, "0") : null);
    }
}
