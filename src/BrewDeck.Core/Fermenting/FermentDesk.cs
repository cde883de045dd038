using BrewDeck.Core.Running;

namespace BrewDeck.Core.Fermenting;

/// <summary>Decides what is taken after pitching; what cannot be is refused by a code.</summary>
internal static class FermentDesk
{
    private const int LongestText = 500;

    /// <summary>A hydrometer and a refractometer in the same beer differ by no more, SG: twice the refractometer's standard deviation.</summary>
    private const double RiseSg = 0.003;

    public static Decision Decide(RunState state, RunCommand.After command, long nowMs)
    {
        if (state.Ferment.PitchedMs is null && state.Status != RunStatus.Complete)
            return new Decision.Refused("not_pitched");
        var code = command switch
        {
            RunCommand.After.ReadFermenter read => Refusal(state.Ferment, read.Reading),
            RunCommand.After.Add add => add.Addition.Name.Trim().Length == 0 || !(add.Addition.Amount > 0) ? "addition_incomplete" : null,
            RunCommand.After.SetDate set => set.Item.Kind == DueKind.Addition && set.Item.Name.Trim().Length == 0 ? "addition_incomplete" : null,
            RunCommand.After.Package package => Refusal(package.Packaging),
            RunCommand.After.Taste taste => Refusal(taste),
            _ => "unknown_command",
        };
        if (code is null && command is RunCommand.After.ReadFermenter { Confirmed: false, Reading: { Figure: FermenterFigure.Gravity } gravity } && Above(state.Ferment, gravity) is { } last)
            return new Decision.Rises(last);
        return code is null ? RunDesk.Act(Event(command, nowMs)) : new Decision.Refused(code);
    }

    /// <summary>The last gravity, if this one is above it by more than two instruments differ; null: it is not. The attenuation falls with every rise.</summary>
    private static double? Above(FermentState state, FermenterReading gravity) =>
        state.Readings.LastOrDefault(r => r.Reading.Figure == FermenterFigure.Gravity)?.Reading.Value is { } last && gravity.Value > last + RiseSg ? last : null;

    private static RunEvent Event(RunCommand.After command, long nowMs) => command switch
    {
        RunCommand.After.ReadFermenter c => new FermenterRead(nowMs, c.Reading),
        RunCommand.After.Add c => new AdditionMade(nowMs, c.Addition),
        RunCommand.After.SetDate c => new DateSet(nowMs, c.Item),
        RunCommand.After.Package c => new BeerPackaged(nowMs, c.Packaging),
        RunCommand.After.Taste c => new BeerTasted(nowMs, c.Text.Trim(), c.Rating),
        _ => throw new ArgumentOutOfRangeException(nameof(command)),
    };

    private static string? Refusal(FermentState state, FermenterReading reading) => reading.Figure switch
    {
        FermenterFigure.Gravity when !(reading.Value is >= 0.98 and <= 1.2) => "reading_impossible",
        // beer never gains extract by itself
        FermenterFigure.Gravity when reading.Value > state.OriginalSg + 0.005 => "gravity_above_original",
        FermenterFigure.Temperature when !(reading.Value is >= -5 and <= 50) => "reading_impossible",
        FermenterFigure.Ph when !(reading.Value is >= 2 and <= 8) => "reading_impossible",
        _ => null,
    };

    private static string? Refusal(Packaging packaging)
    {
        if (!(packaging.VolumeL is > 0 and <= 20_000))
            return "packaging_volume";
        if (!(packaging.Co2Volumes is >= 0.5 and <= 5))
            return "packaging_co2";
        return packaging.TempC is >= -2 and <= 40 ? null : "packaging_temperature";
    }

    private static string? Refusal(RunCommand.After.Taste taste)
    {
        if (taste.Text.Trim().Length is 0 or > LongestText)
            return "empty_note";
        return taste.Rating is null or (>= 1 and <= 5) ? null : "rating_range";
    }
}
