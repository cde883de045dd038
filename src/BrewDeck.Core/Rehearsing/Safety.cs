namespace BrewDeck.Core.Rehearsing;

/// <summary>What may hurt someone, whatever it does for the beer.</summary>
public static class Safety
{
    /// <summary>
    /// False for power on a plug that is still wet, and for a kettle that is left to boil over. Whatever else a mishap leaves behind costs
    /// beer or time.
    /// </summary>
    public static bool Allows(MishapKind mishap, Answer answer) => !IsUnsafe(answer.Act ?? HandAct.LeaveIt, mishap) || answer.Remedy is not null;

    /// <summary>An act that is never right, whatever it is about.</summary>
    public static bool IsUnsafe(HandAct act) => act == HandAct.ResetBreaker;

    private static bool IsUnsafe(HandAct act, MishapKind mishap) => IsUnsafe(act) || (mishap == MishapKind.BoilOver && act == HandAct.LeaveIt);
}
