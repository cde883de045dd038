using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Finds how far a choice must move for a limit to hold, by planning the day again with it: a rule of three would forget what does
/// not grow with the batch (trub, dead spaces, evaporation), and its advice would be refused again.
/// </summary>
internal sealed class MendSearch(Brewhouse house, Recipe recipe, DayChoices choices)
{
    /// <summary>A mash of common practice lies between these, L/kg.</summary>
    private const double Thickest = 1.8, Thinnest = 6;

    /// <summary>Batches are told to this many litres, thicknesses to so many L/kg, temperatures to so many °C.</summary>
    private const double LitreStep = 0.1, ThicknessStep = 0.05, TempStep = 0.5;

    private const int Rounds = 8;

    public Mend? SmallerBatch(Limit limit, Batch batch) => Batch(MendCode.SmallerBatch, limit, batch.Recipe.BatchL, 0.5, 0.9);

    public Mend? LargerBatch(Limit limit, Batch batch) => Batch(MendCode.LargerBatch, limit, batch.Recipe.BatchL, batch.Recipe.BatchL * 4, 1.1);

    public Mend? ThickerMash(Limit limit) => Thickness(MendCode.ThickerMash, limit, Thickest);

    public Mend? ThinnerMash(Limit limit) => Thickness(MendCode.ThinnerMash, limit, Thinnest);

    /// <summary>Tap water no colder than it comes out of the ground.</summary>
    public Mend? ColderWater(Limit limit, double sourceC) => Told(
        MendCode.ColderWater, "°C", Nearest(c => Margin(limit, recipe, choices with { SourceWaterC = c }), limit.Margin, sourceC, 2, 0.8, TempStep));

    /// <summary>Where all the liquor goes into the mash, a sparge takes some of it out again.</summary>
    public Mend? Sparge(Limit limit) =>
        choices.Sparge == SpargeMethod.None && house.CanSparge && Margin(limit, recipe, choices with { Sparge = SpargeMethod.Fly }) >= 0
            ? new(MendCode.FlySparge, 0, "")
            : null;

    private Mend? Batch(string code, Limit limit, double batchL, double bound, double guess) =>
        Told(code, "L", Nearest(l => Margin(limit, recipe, choices with { BatchL = l }), limit.Margin, batchL, bound, guess, LitreStep));

    private Mend? Thickness(string code, Limit limit, double bound)
    {
        if (choices.Sparge == SpargeMethod.None)
            return null;
        var usual = recipe.MashThicknessLPerKg ?? house.Habits.MashThicknessLPerKg;
        double At(double thickness) => Margin(limit, recipe with { MashThicknessLPerKg = thickness }, choices);
        return Told(code, "L/kg", Nearest(At, limit.Margin, usual, bound, bound < usual ? 0.9 : 1.1, ThicknessStep));
    }

    private static Mend? Told(string code, string unit, double? value) => value is { } found ? new(code, found, unit) : null;

    /// <summary>What is left of a limit when the day is planned otherwise; a limit that no longer applies holds.</summary>
    private double Margin(Limit limit, Recipe otherRecipe, DayChoices otherChoices) =>
        Planner.LimitsOf(house, otherRecipe, otherChoices).FirstOrDefault(l => l.Name == limit.Name)?.Margin ?? 0;

    /// <summary>
    /// The value next to where it stands at which the margin is no longer negative: secants, then steps that people can set. A margin that grows no
    /// further once the limit holds (a chiller is throttled to its target) has no secant there: halves then.
    /// </summary>
    private static double? Nearest(Func<double, double> margin, double marginAtFrom, double from, double bound, double guess, double step)
    {
        var away = Math.Sign(bound - from);
        if (away == 0)
            return null;
        double last = from, atLast = marginAtFrom, x = Within(from * guess, from, bound), fails = from;
        double? holds = null;
        for (var i = 0; i < Rounds && Math.Abs(x - last) > 0.2 * step; i++)
        {
            var at = margin(x);
            if (at >= 0)
                holds = x;
            else
                fails = x;
            var secant = at == atLast ? bound : x - at * (x - last) / (at - atLast);
            var next = holds is { } held && (secant - fails) * (secant - held) >= 0 && at != 0 ? 0.5 * (fails + held) : secant;
            (last, atLast, x) = (x, at, Within(next, from, bound));
        }
        return Stepped(margin, x, bound, away * step);
    }

    private static double? Stepped(Func<double, double> margin, double x, double bound, double step)
    {
        var n = Math.Ceiling(x / step - 1e-6);
        for (var i = 0; i < 4; i++)
        {
            var value = Math.Round((n + i) * step, 2);
            if ((value - bound) * Math.Sign(step) > 0)
                return null;
            if (margin(value) >= 0)
                return value;
        }
        return null;
    }

    private static double Within(double x, double a, double b) => Math.Clamp(x, Math.Min(a, b), Math.Max(a, b));
}
