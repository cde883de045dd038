using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>What the reading commands need of a logbook.</summary>
internal interface ILogReader : IDisposable
{
    /// <summary>What the brewer should know, one line each.</summary>
    IReadOnlyList<string> Notices { get; }

    /// <summary>Newest first.</summary>
    IReadOnlyList<BatchHead> List();

    /// <exception cref="LogbookException">The batch cannot be read.</exception>
    IReadOnlyList<RunEvent> Read(int batch);

    /// <exception cref="LogbookException">The batch cannot be read.</exception>
    IReadOnlyList<TapeLine> Lines(int batch);
}
