namespace BrewDeck.Core.Rehearsing;

/// <summary>
/// How far a day is off its plan, in gravity points: a point counts like 2 % of the volume, 3 IBU, 1 K that the mash is off, 2 K that the
/// wort is off when it is pitched, or 10 minutes.
/// A choice, so that answers can be put in an order; each figure is told beside it.
/// </summary>
public static class DayLoss
{
    /// <summary>What counts as much as a gravity point: a share of the volume, bitterness, K of the mash, K of the pitching, seconds.</summary>
    public const double VolumeShare = 0.02, Ibu = 3, MashK = 1, PitchK = 2, LateS = 600;

    private const double NotPitched = 100;

    public static double Of(DayResult day, DayResult plan, bool pitched) => (pitched ? 0 : NotPitched)
        + 1000 * Math.Abs(day.OriginalGravitySg - plan.OriginalGravitySg)
        + Math.Abs(day.FermenterL - plan.FermenterL) / (VolumeShare * plan.FermenterL)
        + Math.Abs(day.BitternessIbu - plan.BitternessIbu) / Ibu
        + day.MashOffK / MashK
        + (pitched ? Math.Abs(day.PitchC - plan.PitchC) / PitchK : 0)
        + Math.Max(0, day.FinishS - plan.FinishS) / LateS;
}
