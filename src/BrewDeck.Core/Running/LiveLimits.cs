using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>The limits of the brewhouse held against the rest of the day as it is forecast now: after each reading and each remedy anew.</summary>
public static class LiveLimits
{
    /// <summary>What readings leave uncertain is no reason to call out: so much of a bound, and no less than so many litres or degrees.</summary>
    private const double SlackShare = 0.005, SlackL = 0.5, SlackK = 0.5;

    public static ImmutableArray<Limit> Of(RunState state, Forecast forecast) =>
        state.Live is { } live ? LimitChecks.OfRest(live.Setting, forecast.Now, forecast.Rest) : [];

    /// <summary>How far beyond its bound a limit must be before it is worth an alarm, in its unit.</summary>
    public static double Slack(Limit limit) => Math.Max(SlackShare * Math.Abs(limit.Bound), limit.Unit switch
    {
        "L" => SlackL,
        "°C" => SlackK,
        _ => 0,
    });
}
