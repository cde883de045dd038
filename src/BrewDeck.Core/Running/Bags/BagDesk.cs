namespace BrewDeck.Core.Running.Bags;

/// <summary>Decides whether a bag can be what the brewer says, and tells what it moves.</summary>
internal static class BagDesk
{
    /// <summary>Nobody weighs in so many times what is planned: a slip of the point.</summary>
    private const double MostTimes = 5;

    /// <summary>An ingredient that is nearly not there is still weighed: nothing at all would leave nothing to scale back.</summary>
    private const double LeastShare = 0.001;

    public static Decision Weigh(RunState state, Bag bag, long nowMs)
    {
        if (BagSheet.Find(state, bag) is not { } planned)
            return new Decision.Refused(DecisionCode.BagInAlready);
        if (!Possible(bag, planned))
            return new Decision.Refused(DecisionCode.BagImpossible);
        var told = new BagWeighed(nowMs, bag, []);
        var moved = Shifts.Between(Forecasts.At(state, nowMs), Forecasts.At(RunFold.Then(state, told), nowMs));
        return RunDesk.Act(told with { Moved = moved });
    }

    private static bool Possible(Bag bag, PlannedBag planned) =>
        Within(bag.Amount, LeastShare * planned.Amount, MostTimes * planned.Amount)
        && Within(bag.AlphaFraction, 0, 0.3) && Within(bag.MoistureFraction, 0, 0.95) && Within(bag.ExtractFraction, 0.01, 1);

    private static bool Within(double? value, double least, double most) => value is not { } given || (given >= least && given <= most);
}
