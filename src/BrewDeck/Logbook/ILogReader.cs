using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>What the reading commands need of a logbook.</summary>
internal interface ILogReader : IBatchReader, IDisposable
{
    /// <exception cref="LogbookException">The batch cannot be read.</exception>
    IReadOnlyList<TapeLine> Lines(int batch);

    /// <summary>The followed figures of batches, in the order of <see cref="Deck.Trends.BatchFigures.All"/>.</summary>
    /// <exception cref="LogbookException">A batch cannot be read.</exception>
    IReadOnlyList<double?[]> FiguresOf(IReadOnlyList<BatchHead> heads);

    /// <summary>The logbook, or beside a deck that has it open, what is on the tapes by now.</summary>
    /// <param name="disk">Called for each try.</param>
    /// <param name="statusOf">The fold's word on where a run stands.</param>
    /// <exception cref="LogbookException">The logbook cannot be read.</exception>
    static ILogReader Open(Func<LogbookDisk> disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf)
    {
        try
        {
            return Journal.Open(disk(), statusOf);
        }
        catch (LogbookException e) when (DiskTrouble.IsInUse(e))
        {
            return new TapesAlone(disk(), statusOf);
        }
    }
}
