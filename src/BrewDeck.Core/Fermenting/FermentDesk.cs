using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Fermenting;

/// <summary>Decides what is taken after pitching; what cannot be is refused by a code, what hardly can be is asked again.</summary>
internal static class FermentDesk
{
    private const int LongestText = 500;

    /// <summary>A hydrometer and a refractometer in the same beer differ by no more, SG: twice the refractometer's standard deviation.</summary>
    private const double RiseSg = 0.003;

    /// <summary>No yeast ferments more than half within so many hours: common practice, no source.</summary>
    private const double SoonH = 12;

    private const double MostSoon = 0.5;

    public static Decision Decide(RunState state, RunCommand.After command, long nowMs)
    {
        if (state.Ferment.PitchedMs is null && state.Status != RunStatus.Complete)
            return new Decision.Refused(DecisionCode.NotPitched);
        var code = command switch
        {
            RunCommand.After.ReadFermenter read => Refusal(state.Ferment, read.Reading, nowMs),
            RunCommand.After.Add add => add.Addition.Name.Trim().Length == 0 || !(add.Addition.Amount > 0) ? DecisionCode.AdditionIncomplete : null,
            RunCommand.After.SetDate set => set.Item.Kind == DueKind.Addition && set.Item.Name.Trim().Length == 0 ? DecisionCode.AdditionIncomplete : null,
            RunCommand.After.Package package => PackagingRules.Refusal(package.Packaging),
            RunCommand.After.EndPackaging => state.Ferment.Lots.IsEmpty ? DecisionCode.NothingPackaged : null,
            RunCommand.After.Taste taste => Refusal(taste),
            _ => "unknown_command",
        };
        if (code is not null)
            return new Decision.Refused(code);
        return Doubt(state.Ferment, command, nowMs) ?? RunDesk.Act(Event(state.Ferment, command, nowMs));
    }

    /// <returns>What to ask before it is taken; null: nothing.</returns>
    private static Decision? Doubt(FermentState state, RunCommand.After command, long nowMs) => command switch
    {
        RunCommand.After.ReadFermenter { Confirmed: false, Reading: { Figure: FermenterFigure.Gravity } gravity } =>
            Above(state, gravity) is { } last ? new Decision.Rises(last) : Soon(state, gravity, nowMs),
        RunCommand.After.Package { Confirmed: false } package when PackagingRules.IsMoreThanThereIs(state, package.Packaging.VolumeL) => new Decision.MoreThanThereIs(state.LeftL),
        _ => null,
    };

    /// <summary>The last gravity before this one, if this one is above it by more than two instruments differ; null: it is not. The attenuation falls with every rise.</summary>
    private static double? Above(FermentState state, FermenterReading gravity) =>
        state.Readings.LastOrDefault(r => r.Reading.Figure == FermenterFigure.Gravity && !(r.AtMs > gravity.TakenMs))?.Reading.Value is { } last && gravity.Value > last + RiseSg ? last : null;

    private static Decision.TooSoon? Soon(FermentState state, FermenterReading gravity, long nowMs)
    {
        if (state.PitchedMs is not { } pitched || ((gravity.TakenMs ?? nowMs) - pitched) / 3_600_000.0 is not (< SoonH and var hours))
            return null;
        var attenuation = Fermentation.ApparentAttenuation(SugarSolution.PlatoFromSg(state.OriginalSg), SugarSolution.PlatoFromSg(gravity.Value));
        return attenuation > MostSoon ? new(attenuation, Math.Max(0, hours)) : null;
    }

    private static RunEvent Event(FermentState state, RunCommand.After command, long nowMs) => command switch
    {
        RunCommand.After.ReadFermenter c => new FermenterRead(nowMs, c.Reading),
        RunCommand.After.Add c => new AdditionMade(nowMs, c.Addition),
        RunCommand.After.SetDate c => new DateSet(nowMs, c.Item),
        RunCommand.After.Package c => new BeerPackaged(nowMs, c.Packaging) { LeftL = Math.Max(0, state.LeftL - c.Packaging.VolumeL) },
        RunCommand.After.EndPackaging => new PackagingEnded(nowMs),
        RunCommand.After.Taste c => new BeerTasted(nowMs, c.Text.Trim(), c.Rating),
        _ => throw new ArgumentOutOfRangeException(nameof(command)),
    };

    private static string? Refusal(FermentState state, FermenterReading reading, long nowMs) => reading switch
    {
        _ when reading.TakenMs > nowMs => DecisionCode.ReadingInFuture,
        _ when reading.TakenMs < state.PitchedMs => DecisionCode.ReadingBeforePitch,
        { Figure: FermenterFigure.Gravity, Value: not (>= 0.98 and <= 1.2) } => DecisionCode.ReadingImpossible,
        // beer never gains extract by itself
        { Figure: FermenterFigure.Gravity } when reading.Value > state.OriginalSg + 0.005 => DecisionCode.GravityAboveOriginal,
        { Figure: FermenterFigure.Temperature, Value: not (>= -5 and <= 50) } => DecisionCode.ReadingImpossible,
        { Figure: FermenterFigure.Ph, Value: not (>= 2 and <= 8) } => DecisionCode.ReadingImpossible,
        _ => null,
    };

    private static string? Refusal(RunCommand.After.Taste taste)
    {
        if (taste.Text.Trim().Length is var length && (length > LongestText || (length == 0 && taste.Rating is null)))
            return DecisionCode.EmptyNote;
        return taste.Rating is null or (>= 1 and <= 5) ? null : DecisionCode.RatingRange;
    }
}
