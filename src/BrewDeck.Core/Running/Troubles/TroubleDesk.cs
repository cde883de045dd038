namespace BrewDeck.Core.Running.Troubles;

/// <summary>Takes reports of what goes wrong; what stands still because of it is put on hold in the same act.</summary>
internal static class TroubleDesk
{
    public static Decision Report(RunState state, Trouble trouble, long nowMs)
    {
        if (!Possible.At(state).Contains(trouble))
            return new Decision.Refused(DecisionCode.TroubleNotPossible);
        var told = new TroubleReported(nowMs, trouble);
        return StandsStill(trouble) ? RunDesk.Act(told, new StepHeld(nowMs, trouble.About, Reason(trouble.Kind))) : RunDesk.Act(told);
    }

    public static Decision Clear(RunState state, Trouble trouble, long nowMs)
    {
        if (!Possible.Standing(state).Contains(trouble))
            return new Decision.Refused(DecisionCode.TroubleNotStanding);
        var over = new TroubleCleared(nowMs, trouble);
        return StandsStill(trouble) && state.Step(trouble.About)?.Status == RunStatus.Held
            ? RunDesk.Act(over, new StepResumed(nowMs, trouble.About))
            : RunDesk.Act(over);
    }

    private static bool StandsStill(Trouble trouble) => trouble.Kind is TroubleKind.RunoffStuck or TroubleKind.BoilInterrupted;

    private static string Reason(TroubleKind kind) => kind == TroubleKind.RunoffStuck ? "run-off stuck" : "boil interrupted";
}
