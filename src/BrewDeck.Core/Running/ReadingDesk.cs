using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Asks again for the implausible, refuses the impossible, and tells what a reading moved.</summary>
internal static class ReadingDesk
{
    /// <summary>Yeast minds what a mash does not: farther off the fermenter is asked about again, K; common practice, no source.</summary>
    private const double NearFermenterK = 6;

    /// <summary>So far off here, and so near to what another vessel shows, a temperature is likely of that one; K, common practice, no source.</summary>
    private const double FarK = 3, SameK = 1.5;

    /// <summary>With less in it nobody reads a temperature, kg.</summary>
    private const double ReadableKg = 1;

    /// <summary>Farther from what is expected no usual mash is, SG; common practice, no source.</summary>
    private const double FarSg = 0.025;

    /// <summary>Of hot wort a gravity is asked about sooner, SG: a hydrometer at 40 °C shows 0.006 too little and at 50 °C 0.010.</summary>
    private const double NearHotSg = 0.008;

    /// <summary>Warmer wort must be cooled, or told with its temperature, before a hydrometer is right to 0.006; °C.</summary>
    private const double HotC = 40;

    /// <summary>No vessel holds more of what its profile says that it does; a stated capacity is a round number.</summary>
    private const double Brim = 1.05;

    public static Decision Decide(RunState state, RunCommand.Take take, long nowMs)
    {
        var reading = take.Reading;
        if (Impossible(state, reading) is { } code)
            return new Decision.Refused(code);
        if (!take.Confirmed && Doubt(state, reading, nowMs) is { } doubt)
            return doubt;
        var told = new ReadingTaken(nowMs, reading, []);
        var after = RunFold.Then(state, told);
        var moved = Shifts.Between(Forecasts.At(state, nowMs), Forecasts.At(after, nowMs));
        return RunDesk.Act(told with { Moved = moved, Expected = after.Readings[^1].Expected });
    }

    /// <summary>Whether a reading would be taken without asking.</summary>
    public static bool Believes(RunState state, Reading reading, long nowMs) =>
        Impossible(state, reading) is null && Doubt(state, reading, nowMs) is null;

    /// <summary>What is asked about a possible reading first; null: nothing.</summary>
    private static Decision? Doubt(RunState state, Reading reading, long nowMs)
    {
        var (low, high) = Plausible(state, reading, nowMs);
        var fits = Elsewhere(state, reading, nowMs);
        return reading.Value < low || reading.Value > high || fits.Length > 0
            ? new Decision.AskAgain(reading, low, high) { Fits = fits, HotSample = reading.Value < low && IsOfHotWort(state.Live!.CutAt(state.SecondsAt(nowMs)), reading) }
            : Quarrels.Of(state, reading, nowMs);
    }

    /// <summary>Bounds within which a reading is taken without asking, in the canonical unit of its kind.</summary>
    private static (double Low, double High) Plausible(RunState state, Reading reading, long nowMs)
    {
        var live = state.Live!.CutAt(state.SecondsAt(nowMs));
        var expected = Expectations.Of(live.Setting, live.Plant, reading.Kind, reading.Vessel);
        return reading.Kind switch
        {
            ReadingKind.Temperature when reading.Vessel == Places.Fermenter => (Math.Max(0, expected - NearFermenterK), expected + NearFermenterK),
            ReadingKind.Temperature => (Math.Max(0, expected - 12), Math.Min(105, expected + 12)),
            ReadingKind.Volume => (Math.Max(0, expected - WideL(expected)), Highest(state, live, reading, expected)),
            ReadingKind.Gravity when IsOfHotWort(live, reading) => (Math.Max(0.99, expected - NearHotSg), expected + NearHotSg),
            ReadingKind.Gravity => (Math.Max(0.99, expected - FarSg), expected + FarSg),
            ReadingKind.Ph => (4.2, 6.5),
            _ => (0, 500),
        };
    }

    /// <summary>A gravity of hot wort of which nothing was said of the sample.</summary>
    private static bool IsOfHotWort(LivePlant live, Reading reading) =>
        reading.Kind == ReadingKind.Gravity && live.Setting.IndexOf(reading.Vessel) is >= 0 and var index && live.Plant.Vessels[index].TempC > HotC
        && !reading.TellsItsSample;

    /// <summary>Another vessel that shows just what was typed, where this one is expected to be far from it; empty: none.</summary>
    private static string Elsewhere(RunState state, Reading reading, long nowMs)
    {
        var here = state.Live!.Setting.IndexOf(reading.Vessel);
        if (reading.Kind != ReadingKind.Temperature || here < 0)
            return "";
        var live = state.Live.CutAt(state.SecondsAt(nowMs));
        if (Math.Abs(reading.Value - live.Plant.Vessels[here].TempC) < FarK)
            return "";
        bool Shows(string vessel) => live.Setting.IndexOf(vessel) is var there && there != here
            && live.Plant.Vessels[there].LiquidKg > ReadableKg && Math.Abs(reading.Value - live.Plant.Vessels[there].TempC) < SameK;
        return live.Setting.Brewhouse.Vessels.Select(v => v.Id).Append(Places.Fermenter).FirstOrDefault(Shows) ?? "";
    }

    /// <summary>A tap may fill faster than the model, or have begun before anybody said so.</summary>
    private static double Highest(RunState state, LivePlant live, Reading reading, double expected) =>
        Filling.In(state, reading.Vessel) is { } fill && Filling.EndL(live, fill) is var end && end > expected
            ? end + WideL(end)
            : expected + WideL(expected);

    /// <summary>A level so far from what is expected is none that instruments or a usual day make, litres; common practice, no source.</summary>
    public static double WideL(double expectedL) => Math.Max(4, 0.2 * expectedL);

    /// <summary>Why a reading is not taken, whatever the brewer says; null: it may be.</summary>
    private static string? Impossible(RunState state, Reading reading) =>
        !Known(state, reading) ? DecisionCode.NoSuchPlace
        : !Possible(reading) ? DecisionCode.ReadingImpossible
        : reading.Kind == ReadingKind.Volume && reading.Value > Brim * CapacityL(state.Live!.Setting.Brewhouse, reading.Vessel) ? DecisionCode.OverTheBrim
        : null;

    private static double CapacityL(Brewhouse house, string vessel) =>
        vessel == Places.Fermenter ? house.Fermenter.CapacityL : house[vessel].CapacityL;

    private static bool Known(RunState state, Reading reading) =>
        state.Live!.Setting.IndexOf(reading.Vessel) >= 0
        || (reading.Kind is ReadingKind.Temperature or ReadingKind.Ph && reading.Vessel is Places.Grain or Places.Source or Places.Room)
        || (reading.Kind == ReadingKind.Weight && reading.Vessel == Places.Grain);

    private static bool Possible(Reading reading) => double.IsFinite(reading.Value) && reading.Kind switch
    {
        ReadingKind.Temperature => reading.Value is >= -20 and <= 110,
        ReadingKind.Volume => reading.Value is >= 0 and <= 20_000,
        ReadingKind.Gravity => reading.Value is >= 0.98 and <= 1.2,
        ReadingKind.Ph => reading.Value is >= 1 and <= 13,
        _ => reading.Value is >= 0 and <= 20_000,
    };
}
