using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>The ways back to plan that the state of the day calls for.</summary>
public static class Remedies
{
    /// <summary>Best first, leaving it last; empty when nothing is off.</summary>
    public static ImmutableArray<Remedy> For(RunState state, long nowMs)
    {
        if (state.Plan is null || state.Status != RunStatus.Running)
            return [];
        var forecast = Forecasts.At(state, nowMs);
        var weigh = new Weigh(state, forecast, nowMs);
        return MashRemedies.For(weigh) is { IsEmpty: false } mash ? mash : KettleRemedies.For(weigh);
    }
}

/// <summary>Tries a change of the run sheet on the model and says what it gives.</summary>
internal sealed class Weigh(RunState state, Forecast forecast, long nowMs)
{
    public RunState State => state;

    public Forecast Forecast => forecast;

    public Plan Plan => state.Plan!;

    public LivePlant Live { get; } = state.DayStartMs is null ? state.Live! : state.Live!.CutAt(state.SecondsAt(nowMs));

    public Forecast With(Remedy remedy) => Forecasts.At(RemedyFold.Edited(state, remedy), nowMs);

    /// <summary>The remedy with what it gives filled in.</summary>
    public Remedy Told(Remedy remedy)
    {
        var after = With(remedy);
        var minutes = (after.Outlook.FinishMs.P50 - forecast.Outlook.FinishMs.P50) / 60_000;
        return remedy with { Minutes = minutes, Gives = Shifts.Between(forecast, after) };
    }

    /// <summary>Amount between 0 and a most at which a figure of the outlook meets its aim, by bisection; null: it cannot.</summary>
    public double? Amount(Func<double, Remedy> of, Func<Outlook, double> figure, double aim, double most)
    {
        double Miss(double amount) => figure(amount == 0 ? forecast.Outlook : With(of(amount)).Outlook) - aim;
        double low = 0, high = most, atLow = Miss(0), atHigh = Miss(most);
        if (atLow * atHigh > 0)
            return null;
        for (var i = 0; i < 24; i++)
        {
            var middle = 0.5 * (low + high);
            var at = Miss(middle);
            if (at * atLow > 0)
                (low, atLow) = (middle, at);
            else
                high = middle;
        }
        return 0.5 * (low + high);
    }

    public Remedy LeaveIt(string vessel) => new(RemedyKind.LeaveIt, vessel, 0, 0, [], "", [], []);

    /// <summary>An id that is not yet on the run sheet.</summary>
    public string FreshId(string stem)
    {
        var n = 1;
        while (state.Step($"remedy.{stem}-{n}") is not null)
            n++;
        return $"remedy.{stem}-{n}";
    }
}
