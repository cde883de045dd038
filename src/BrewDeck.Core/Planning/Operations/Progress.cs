namespace BrewDeck.Core.Planning.Operations;

/// <summary>How far a step came.</summary>
/// <param name="ElapsedS">Seconds that it took, or the seconds it was given when it is not done.</param>
/// <param name="Left">What is left of it; null when it is done.</param>
/// <param name="TargetC">Temperature aimed at, °C.</param>
/// <param name="VolumeL">Volume moved or reached, litres at 20 °C.</param>
internal readonly record struct Progress(double ElapsedS, StepSpec? Left, double? TargetC = null, double? VolumeL = null)
{
    public static Progress ByClock(StepSpec spec, double limitS)
    {
        var seconds = Math.Clamp(60 * (spec.Minutes ?? 0), 0, limitS);
        return new(seconds, AfterMinutes(spec, seconds));
    }

    private static StepSpec? AfterMinutes(StepSpec spec, double seconds)
    {
        var left = (spec.Minutes ?? 0) - seconds / 60;
        return left <= 1e-9 ? null : spec with { Minutes = left };
    }
}
