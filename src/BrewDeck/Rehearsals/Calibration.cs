using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>Counts how often the bands of the outlook held what came out, and where among the members it lay.</summary>
internal sealed class Calibration
{
    private readonly Dictionary<(string At, OutlookFigure Figure), CalibrationCell> _cells = [];

    /// <summary>Days counted.</summary>
    public int Days { get; private set; }

    /// <summary>Days that did not end with pitched wort: not counted.</summary>
    public int Aborted { get; private set; }

    /// <summary>In the order of the day, figure by figure.</summary>
    public IEnumerable<(string At, OutlookFigure Figure, CalibrationCell Cell)> Cells =>
        _cells.OrderBy(c => c.Key.Figure).Select(c => (c.Key.At, c.Key.Figure, c.Value));

    public void Add(RehearsalResult day)
    {
        if (day.Ended != RehearsalResult.Pitched)
        {
            Aborted++;
            return;
        }
        Days++;
        foreach (var outlook in day.Outlooks)
        {
            foreach (var figure in Enum.GetValues<OutlookFigure>())
                Add(day, outlook, figure);
        }
    }

    private void Add(RehearsalResult day, RehearsalOutlook outlook, OutlookFigure figure)
    {
        if (!_cells.TryGetValue((outlook.At, figure), out var cell))
            _cells[(outlook.At, figure)] = cell = new CalibrationCell();
        var (truth, shown) = Pair(day, outlook.Outlook, figure);
        cell.Add(truth, shown, OutlookRanks.Of(outlook.State, outlook.Outlook, figure, truth));
    }

    private static (double Truth, Figure Shown) Pair(RehearsalResult day, Outlook outlook, OutlookFigure figure) => figure switch
    {
        OutlookFigure.OriginalGravity => (day.Truth.OriginalGravitySg, outlook.OriginalGravitySg),
        OutlookFigure.FermenterVolume => (day.Truth.FermenterL, outlook.FermenterL),
        OutlookFigure.Bitterness => (day.Truth.BitternessIbu, outlook.BitternessIbu),
        _ => (day.Outlooks[0].NowMs + 1000 * day.Truth.FinishS, outlook.FinishMs),
    };
}
