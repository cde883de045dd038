using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>
/// What the database knows of a batch without its events: what the list shows, and how far it has followed the tape. Written in
/// one transaction with the events that it counts, so that the two never disagree.
/// </summary>
/// <param name="Hash">Of the last event in the database.</param>
/// <param name="TapeBytes">Length of the tape up to that event: a tape of another length is read again at the next opening.</param>
internal sealed record BatchHeader(BatchHead Head, byte[] Hash, long TapeBytes)
{
    public int Number => Head.Number;

    public static BatchHeader Of(int number, BatchOpened opened, RunStatus status, TapeLine last, long tapeBytes) => new(
        new BatchHead(
            number, opened.Plan.Recipe.Name, opened.Plan.Brewhouse.Name, opened.AtMs, last.Seq + 1, status, opened.Rehearsed),
        last.Hash,
        tapeBytes);
}
