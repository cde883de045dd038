using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Fermenting;

/// <summary>Gravity, attenuation and alcohol of a batch by its last reading, with 80 % bands.</summary>
/// <param name="Steady">Two gravities two days apart or more agree within 0.001: it has fermented out.</param>
public sealed record FermentFigures(Figure GravitySg, Figure AttenuationFraction, Figure AbvPercent, bool Steady)
{
    /// <summary>Standard deviation of a hydrometer read with care, and of a refractometer's correlation in beer: common practice, no source.</summary>
    private const double HydrometerSd = 0.0006;

    private const double RefractometerSd = 0.0016;

    /// <summary>Of an original gravity that was planned and not measured.</summary>
    private const double PlannedSd = 0.002;

    /// <summary>An 80 % band of a normal distribution reaches so many standard deviations either way.</summary>
    private const double Band80 = 1.2816;

    private const double SteadySg = 0.001;

    private const double SteadyMs = 2 * 86_400_000.0;

    /// <returns>Null before the first gravity.</returns>
    public static FermentFigures? Of(FermentState state)
    {
        var gravities = state.Readings.Where(r => r.Reading.Figure == FermenterFigure.Gravity).ToList();
        if (gravities.Count == 0)
            return null;
        double og = state.OriginalSg, fg = gravities[^1].Reading.Value;
        double ogSd = state.MeasuredOriginalSg is null ? PlannedSd : HydrometerSd;
        double fgSd = gravities[^1].Reading.Brix is null ? HydrometerSd : RefractometerSd;
        return new(
            new(fg, fg - Band80 * fgSd, fg + Band80 * fgSd),
            Banded(Attenuation, og, ogSd, fg, fgSd),
            Banded(Abv, og, ogSd, fg, fgSd),
            IsSteady(gravities));
    }

    /// <summary>What a refractometer shows in beer, as apparent gravity.</summary>
    /// <param name="brix">°Bx as read.</param>
    public static double ByRefractometerSg(double originalSg, double brix) => Refractometer.FinalGravityCubicSg(
        SugarSolution.PlatoFromSg(originalSg), brix / Refractometer.UsualWortCorrectionFactor);

    private static bool IsSteady(List<TakenFermenterReading> gravities) => gravities.Any(g =>
        gravities[^1].AtMs - g.AtMs >= SteadyMs && Math.Abs(g.Reading.Value - gravities[^1].Reading.Value) <= SteadySg + 1e-9);

    private static double Attenuation(double og, double fg) =>
        Fermentation.ApparentAttenuation(SugarSolution.PlatoFromSg(og), SugarSolution.PlatoFromSg(fg));

    private static double Abv(double og, double fg) => Fermentation.Abv(SugarSolution.PlatoFromSg(og), SugarSolution.PlatoFromSg(fg));

    /// <summary>First-order propagation: both errors are small against the curve.</summary>
    private static Figure Banded(Func<double, double, double> of, double og, double ogSd, double fg, double fgSd)
    {
        var value = of(og, fg);
        double byOg = of(og + ogSd, fg) - value, byFg = of(og, fg + fgSd) - value;
        var half = Band80 * Math.Sqrt(byOg * byOg + byFg * byFg);
        return new(value, value - half, value + half);
    }
}
