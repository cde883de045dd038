using BrewDeck.Core.Running;

namespace BrewDeck.Core.Rehearsing;

/// <summary>What was done about a mishap: by hand, or by a remedy of the run sheet; leaving it is an act too.</summary>
public readonly record struct Answer(HandAct? Act, RemedyKind? Remedy)
{
    public static Answer Leave { get; } = new(HandAct.LeaveIt, null);

    public static Answer Of(HandAct act) => new(act, null);

    public static Answer Of(RemedyKind remedy) => remedy == RemedyKind.LeaveIt ? Leave : new(null, remedy);
}
