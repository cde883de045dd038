using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// What a kettle volume read while wort runs off says: not that wort came from nowhere, but that the bed has let through more or
/// less than thought. The run-off since it was last looked at is run again at the flow that gives the reading, so that tun, tank and
/// kettle still add up.
/// </summary>
internal static class RunOffFlow
{
    /// <summary>Times the brewhouse's usual flow: beyond these it is the reading that is wrong, or the bed is stuck.</summary>
    private const double Slowest = 0.25;

    private const double Fastest = 4;

    /// <summary>A volume this near says nothing about the flow; litres.</summary>
    private const double NearL = 0.05;

    /// <summary>Only over a time as long as this is a flow worth keeping for what is left; seconds.</summary>
    private const double TellingS = 600;

    /// <param name="before">The plant as it was when the run-off was last looked at.</param>
    /// <param name="cut">The same at the moment of the reading.</param>
    /// <returns>Null when the reading is about something else, or no such flow would give it.</returns>
    public static LivePlant? Refit(LivePlant before, LivePlant cut, Reading reading, double nowS)
    {
        var index = cut.Setting.IndexOf(cut.Setting.Brewhouse.Kettle.Id);
        var runOff = before.Running.FirstOrDefault(s => s.Left.Kind is StepKind.Lauter or StepKind.RunOff);
        if (runOff is null || reading.Kind != ReadingKind.Volume || cut.Setting.IndexOf(reading.Vessel) != index)
            return null;
        var read = Contents.CoolL(Assimilate.Volume(cut.Plant.Vessels[index], reading, waterOnly: false));
        if (Math.Abs(read - KettleL(cut, index)) < NearL)
            return cut;
        if (Factor(before, index, read, nowS) is not { } factor)
            return null;
        var refitted = WithFlow(before, factor).CutAt(nowS);
        return nowS - runOff.SinceS >= TellingS ? refitted : refitted with { Setting = cut.Setting };
    }

    /// <summary>By bisection: the more flows the more stands in the kettle.</summary>
    private static double? Factor(LivePlant before, int kettle, double readL, double nowS)
    {
        double At(double factor) => KettleL(WithFlow(before, factor).CutAt(nowS), kettle);
        double low = Slowest, high = Fastest;
        if (readL < At(low) - NearL || readL > At(high) + NearL)
            return null;
        for (var i = 0; i < 24; i++)
        {
            var middle = 0.5 * (low + high);
            if (At(middle) < readL)
                low = middle;
            else
                high = middle;
        }
        return 0.5 * (low + high);
    }

    private static double KettleL(LivePlant live, int kettle) => Contents.CoolL(live.Plant.Vessels[kettle]);

    private static LivePlant WithFlow(LivePlant live, double factor)
    {
        var (habits, usual) = (live.Setting.Habits, live.Setting.Brewhouse.Habits.RunoffLPerMin);
        var flow = Math.Clamp(habits.RunoffLPerMin * factor, Slowest * usual, Fastest * usual);
        return live with { Setting = live.Setting with { Habits = habits with { RunoffLPerMin = flow } } };
    }
}
