using System.Collections.Immutable;
using BrewDeck.Core.Running;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>A book in memory.</summary>
public sealed class PaperBook : IRunBook
{
    private readonly List<RunEvent> _events;

    public PaperBook(BatchOpened opened)
        : this([opened])
    {
    }

    /// <summary>Goes on from a record; its first event opened the batch.</summary>
    public PaperBook(IEnumerable<RunEvent> events)
    {
        _events = [.. events];
        State = RunFold.Of(_events);
    }

    public IReadOnlyList<RunEvent> Events => _events;

    public RunState State { get; private set; }

    public Decision Submit(RunCommand command, long nowMs)
    {
        var decision = RunDesk.Decide(State, command, nowMs);
        if (decision is Decision.Accepted { Events: { IsEmpty: false } events })
            Keep(events);
        return decision;
    }

    private void Keep(ImmutableArray<RunEvent> events)
    {
        foreach (var happened in events)
        {
            _events.Add(happened);
            State = happened is Undone ? RunFold.Of(_events) : RunFold.Then(State, happened);
        }
    }
}
