using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What each followed figure does over the listed batches, as a control chart.</summary>
internal static class TrendsPages
{
    /// <param name="heads">As they are listed; only those whose day is complete count.</param>
    public static void Enter(Shell shell, ImmutableArray<BatchHead> heads) => shell.Try(() =>
    {
        BatchHead[] complete = [.. BatchHead.NewestFirst(heads.Where(h => h.Status == RunStatus.Complete)).Reverse()];
        var values = shell.Ports.Figures?.Invoke(complete) ?? FigureRows.Of(shell.Ports.Store, complete);
        var drawings = Drawings([.. complete.Zip(values)], shell.Notation);
        if (drawings.IsEmpty)
            shell.Say(shell.Notation.Text("None of these batches has a complete day with figures to follow."), Tone.Warning);
        else
            shell.Push(new ChartsPage(shell, shell.Notation.Text($"Trends over {Counts.Batches(complete.Length, shell.Notation)}"), drawings));
    });

    private static ImmutableArray<Drawing> Drawings(IReadOnlyList<(BatchHead Head, double?[] Values)> rows, Notation notation) =>
    [
        .. BatchFigures.All
            .Select((figure, i) => (Figure: figure, Points: FigureRows.Points(rows, i)))
            .Where(f => f.Points.Count > 0)
            .Select(f => Of(f.Figure, f.Points, notation)),
    ];

    private static ControlDrawing Of(TrendFigure figure, List<TrendPoint> points, Notation notation)
    {
        var chart = ControlChart.Of(points);
        TrendPoint[] drawn = [.. points.Select(p => p with { Value = TrendWords.InUnit(p.Value, figure, notation) })];
        return new(TrendWords.Name(figure, notation), TrendWords.Sums(chart, points[^1].Value, figure, notation), chart is null ? "" : TrendWords.StandsOut(chart, figure, notation), figure.Format, [.. drawn], ControlChart.Of(drawn)) { Notation = notation };
    }
}
