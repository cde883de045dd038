using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Pages;

/// <summary>What is due today or overdue in all batches that are fermenting.</summary>
internal sealed class DueToday(Shell shell)
{
    /// <summary>A batch older than this is not looked at: its beer is drunk, or nobody writes anything down.</summary>
    private const long LongestMs = 90L * 86_400_000;

    private (string Key, ImmutableArray<DueBatch> Found) _last = ("", []);

    /// <summary>Rehearsed batches only within a rehearsal. Read again only when a batch or the day has changed.</summary>
    public ImmutableArray<DueBatch> At(DateTimeOffset now)
    {
        var nowMs = now.ToUnixTimeMilliseconds();
        var today = Wording.FermentWords.Day(nowMs, shell.Notation);
        var rehearsal = shell.Ports.Rehearsal is not null;
        var heads = shell.Ports.Store.List().Where(h => h.Rehearsed == rehearsal && h.Status is not RunStatus.Aborted && nowMs - h.OpenedMs < LongestMs).ToList();
        var key = today + string.Join(",", heads.Select(h => $"{h.Number}:{h.Events}"));
        if (key != _last.Key)
            _last = (key, [.. Near(heads, today).SelectMany(h => Of(h, today)).OrderBy(d => d.Item.DueMs)]);
        return _last.Found;
    }

    /// <summary>Only what may have something due is read; what runs changes with each act and is always looked at.</summary>
    private IEnumerable<BatchHead> Near(IReadOnlyList<BatchHead> heads, string today)
    {
        if (shell.Ports.NextDues is not { } dues)
            return heads;
        var over = heads.Where(h => h.Status == RunStatus.Complete).ToList();
        var near = over.Zip(dues(over)).Where(b => b.Second is { } ms && string.CompareOrdinal(Wording.FermentWords.Day(ms, shell.Notation), today) <= 0).Select(b => b.First.Number).ToHashSet();
        return heads.Where(h => h.Status != RunStatus.Complete || near.Contains(h.Number));
    }

    private IEnumerable<DueBatch> Of(BatchHead head, string today)
    {
        var state = FermentFold.Of(shell.Ports.Store.Read(head.Number));
        return DueDates.Of(state)
            .Where(d => string.CompareOrdinal(Wording.FermentWords.Day(d.DueMs, shell.Notation), today) <= 0)
            .Select(d => new DueBatch(head, d, state));
    }
}

internal sealed record DueBatch(BatchHead Head, DueItem Item, FermentState State);
