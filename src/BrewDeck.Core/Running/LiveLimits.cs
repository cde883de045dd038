using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>The limits of the brewhouse held against the rest of the day as it is forecast now: after each reading and each remedy anew.</summary>
public static class LiveLimits
{
    /// <summary>What readings leave uncertain is no reason to call out: so much of a bound, and no less than so many litres or degrees.</summary>
    private const double SlackShare = 0.005, SlackL = 0.5, SlackK = 0.5;

    public static ImmutableArray<Limit> Of(RunState state, Forecast forecast) =>
        state.Live is { } live ? [.. FirstHeat(LimitChecks.OfRest(live.Setting, forecast.Now, forecast.Rest)), .. Pitch(state, live, forecast)] : [];

    /// <summary>Of what is never heated through only the first is news: what comes after it begins with what hours of waiting have left of its heat.</summary>
    private static IEnumerable<Limit> FirstHeat(ImmutableArray<Limit> limits)
    {
        bool Heats(Limit limit) => LimitName.IsOfHeat(limit.Name);
        var first = limits.FirstOrDefault(Heats);
        return limits.Where(l => l == first || !Heats(l));
    }

    /// <summary>
    /// Until the yeast goes in, however the wort has come to its temperature: by then some remedy may have cooled it. Against the plan, for
    /// the chiller may have been set colder for the rest.
    /// </summary>
    private static IEnumerable<Limit> Pitch(RunState state, LivePlant live, Forecast forecast) =>
        from step in forecast.Rest
        where step.Spec.Kind == StepKind.Pitch && state.Step(step.Spec.Id) is { Status: RunStatus.Idle } && !PitchIsLeft(state)
        let pitch = LimitChecks.Pitch(step.After.Vessels[live.Setting.FermenterIndex].TempC, state.Plan!.Recipe.Yeast.PitchC)
        select state.LastDone(s => s.Kind == StepKind.CastOut) is null ? pitch : pitch with { Name = LimitName.PitchInFermenter };

    /// <summary>The brewer has said to leave it, and has not read it since.</summary>
    private static bool PitchIsLeft(RunState state) =>
        state.Remedies is [.., { Remedy: { Kind: RemedyKind.LeaveIt, Vessel: Places.Fermenter } } left]
        && !state.Readings.Any(r => r.Seq > left.Seq && r.Reading is { Kind: ReadingKind.Temperature, Vessel: Places.Fermenter });

    /// <summary>How far beyond its bound a limit must be before it is worth an alarm, in its unit.</summary>
    public static double Slack(Limit limit) => Math.Max(SlackShare * Math.Abs(limit.Bound), limit.Unit switch
    {
        "L" => SlackL,
        "°C" => SlackK,
        _ => 0,
    });
}
