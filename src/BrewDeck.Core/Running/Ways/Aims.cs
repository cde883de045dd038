using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>A figure of the end of the day against the plan.</summary>
/// <param name="Noticed">A difference that a brewer notices, same unit.</param>
internal readonly record struct Aim(double Figure, double Plan, double Noticed)
{
    public double By => Figure - Plan;

    public bool Near => Math.Abs(By) < Noticed;

    public double Misses => Math.Abs(By) / Noticed;
}

/// <summary>
/// Of the plant as it stands, like the plan's own figures: the middle of a band leans to where the spread is wider.
/// </summary>
internal sealed record Aims(Aim Gravity, Aim Volume, Aim Bitterness)
{
    private const double NearSg = 0.0015, NearestL = 0.6, NearestIbu = 2;

    /// <summary>The same for a large batch or a bitter beer; share of it.</summary>
    private const double NearLShare = 0.015, NearIbuShare = 0.08;

    public static Aims Of(Weigh weigh, Forecast forecast)
    {
        var (totals, end) = (weigh.Plan.Totals, forecast.Rest.IsEmpty ? forecast.Now : forecast.Rest[^1].After);
        var fermenter = end.Vessels[weigh.Live.Setting.FermenterIndex];
        return new(
            new(SugarSolution.SgFromPlato(fermenter.Plato), totals.OriginalGravitySg, NearSg),
            new(Contents.CoolL(fermenter), totals.FermenterL, NoticedL(totals.FermenterL)),
            new(WortFigures.BitternessIbu(weigh.Live.Setting, end), totals.BitternessIbu, NoticedIbu(totals.BitternessIbu)));
    }

    /// <summary>Whether a figure of the wort has left its plan, <see cref="Shift.Before"/>, by more than nobody notices; any other figure has.</summary>
    public static bool IsNoticed(Shift shift) => Math.Abs(shift.After - shift.Before) >= shift.Figure switch
    {
        "original_gravity_sg" => NearSg,
        "fermenter_l" => NoticedL(shift.Before),
        "bitterness_ibu" => NoticedIbu(shift.Before),
        _ => 0,
    };

    private static double NoticedL(double plan) => Math.Max(NearestL, NearLShare * plan);

    private static double NoticedIbu(double plan) => Math.Max(NearestIbu, NearIbuShare * plan);
}
