using System.Globalization;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Commands;

/// <param name="Mends">The stand-in brewer takes remedies.</param>
/// <param name="HiddenPowerPercent">Heat of every vessel beyond what is drawn, percent.</param>
/// <param name="Remedies">Each off-plan day with the best remedy and without.</param>
/// <param name="HiddenYieldPoints">Mash yield beyond what is drawn, percent points.</param>
internal sealed record CalibrateOptions(int Seed, int Count, bool Mends, double HiddenPowerPercent, double HiddenYieldPoints, bool Remedies);

/// <summary><c>brewdeck calibrate</c>: how honest the bands of the outlook are, measured on rehearsed days.</summary>
internal static class CalibrateCommand
{
    /// <summary>Any fixed moment will do: nothing of the plant depends on it.</summary>
    private const long StartMs = 1_780_000_000_000;

    private const long DayMs = 86_400_000;

    public static int Run(Workplace place, DayOptions day, CalibrateOptions options, bool json) => place.Guard(() =>
    {
        if (options.Count < 1)
            throw new UsageException($"--count: {options.Count} is too few; write 1 or more");
        if (day.Draw(place.Profiles()) is not PlanResult.Drawn { Plan: var plan })
            return PlanCommand.Run(place, day, json ? PlanFormat.Json : PlanFormat.Text);
        if (options.Remedies)
            return RemedyTrialCommand.Run(place, plan, options, StartMs, json);
        var calibration = new Calibration();
        foreach (var rehearsed in ManyDays.Of(options.Count, i => Play(plan, options, options.Seed + i)))
            calibration.Add(rehearsed);
        foreach (var line in json ? [CalibrationJson.Of(calibration, plan, options)] : Text(calibration, plan))
            place.Output.WriteLine(line);
        return calibration.Aborted == 0 ? ExitCode.Done : ExitCode.Refused;
    });

    private static RehearsalResult Play(Plan plan, CalibrateOptions options, int seed) => RehearsalRun.Of(
        Truth(plan, options, seed), new PaperBook(new BatchOpened(OpenedMs(seed), plan, Workplace.Version, Rehearsed: true)), OpenedMs(seed), new Manner(options.Mends));

    /// <summary>Each day has a date of its own, from which the members of its outlook are drawn.</summary>
    private static long OpenedMs(int seed) => StartMs + seed * DayMs;

    internal static HiddenTruth Truth(Plan plan, CalibrateOptions options, int seed)
    {
        var drawn = HiddenTruth.Draw(plan.Brewhouse, plan.Choices, seed);
        return drawn with
        {
            Tanks = [.. drawn.Tanks.Select(t => t with { PowerFactor = t.PowerFactor * (1 + options.HiddenPowerPercent / 100) })],
            ConversionYield = Math.Clamp(drawn.ConversionYield + options.HiddenYieldPoints / 100, 0, 1),
        };
    }

    private static IEnumerable<string> Text(Calibration calibration, Plan plan)
    {
        yield return $"{plan.Recipe.Name} on {plan.Brewhouse.Name}: {calibration.Days} days, {calibration.Aborted} aborted";
        yield return "figure             at            inside   band width   truth - middle   chi-squared";
        foreach (var (at, figure, cell) in calibration.Cells)
        {
            var (unit, factor) = UnitOf(figure);
            yield return string.Create(CultureInfo.InvariantCulture,
                $"{Name(figure),-18} {at,-12} {100 * cell.Inside,6:0.0} % {factor * cell.Width,8:0.00} {unit,-6}{factor * cell.Off,8:0.00} {unit,-6}{cell.ChiSquared,8:0.0}{(cell.ChiSquared > CalibrationCell.ChiSquaredBound ? " uneven" : "")}");
        }
        yield return string.Create(CultureInfo.InvariantCulture, $"ranks are even when chi-squared is at most {CalibrationCell.ChiSquaredBound:0.0} (1 %, {CalibrationCell.Bins} bins)");
    }

    public static string Name(OutlookFigure figure) => SnakeName.Of(figure);

    public static (string Unit, double Factor) UnitOf(OutlookFigure figure) => figure switch
    {
        OutlookFigure.OriginalGravity => ("points", 1000),
        OutlookFigure.FermenterVolume => ("L", 1),
        OutlookFigure.Bitterness => ("IBU", 1),
        _ => ("min", 1 / 60_000.0),
    };
}
