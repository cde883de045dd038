namespace BrewDeck.Core.Rehearsing;

/// <summary>
/// How far a day is off its plan, in gravity points: a point counts like 2 % of the volume, 3 IBU, 1 K that the mash is off, or 10 minutes.
/// A choice, so that answers can be put in an order; each figure is told beside it.
/// </summary>
public static class DayLoss
{
    private const double NotPitched = 100;

    public static double Of(DayResult day, DayResult plan, bool pitched) => (pitched ? 0 : NotPitched)
        + 1000 * Math.Abs(day.OriginalGravitySg - plan.OriginalGravitySg)
        + Math.Abs(day.FermenterL - plan.FermenterL) / (0.02 * plan.FermenterL)
        + Math.Abs(day.BitternessIbu - plan.BitternessIbu) / 3
        + day.MashOffK
        + Math.Max(0, day.FinishS - plan.FinishS) / 600;
}
