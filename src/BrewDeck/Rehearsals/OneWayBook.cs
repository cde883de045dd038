using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>A day on which the first remedy for the wort is taken, or left; what is offered after it is left, and a mash is always mended.</summary>
/// <param name="takes">Whether it is taken.</param>
internal sealed class OneWayBook(BatchOpened opened, bool takes) : IRunBook
{
    private readonly PaperBook _book = new(opened);

    /// <summary>The first that was offered as the best, with what it promised; null: none has been.</summary>
    public Remedy? Offered { get; private set; }

    /// <summary>What leaving it would give, as it was said then.</summary>
    public Remedy? Left { get; private set; }

    public RunState State => _book.State;

    public Decision Submit(RunCommand command, long nowMs)
    {
        if (command is not RunCommand.Choose { Remedy: var remedy } || !IsForWort(remedy.Kind))
            return _book.Submit(command, nowMs);
        var leaveIt = Remedies.For(State, nowMs).First(r => r.Kind == RemedyKind.LeaveIt);
        var first = Offered is null;
        if (first)
            (Offered, Left) = (remedy, leaveIt);
        return _book.Submit(new RunCommand.Choose(first && takes ? remedy : leaveIt), nowMs);
    }

    private static bool IsForWort(RemedyKind kind) => kind is RemedyKind.BoilLonger or RemedyKind.BoilShorter or RemedyKind.Dilute
        or RemedyKind.AddExtract or RemedyKind.RunOffMore or RemedyKind.RunOffLess or RemedyKind.Reweigh;
}
