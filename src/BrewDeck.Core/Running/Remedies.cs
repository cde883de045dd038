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
    /// <summary>A thousandth of what was off is far below what can be read.</summary>
    private const double Near = 1e-3;

    private const int MostLooks = 20;

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

    /// <summary>
    /// Amount between 0 and a most at which a figure of the end of the day meets its aim; null: it cannot. By false position (the Illinois
    /// form): each look is a forecast of the whole day, and outlooks are nearly straight lines.
    /// </summary>
    public double? Amount(Func<double, Remedy> of, Func<Forecast, double> figure, double aim, double most)
    {
        double Miss(double amount) => figure(amount == 0 ? forecast : With(of(amount))) - aim;
        double low = 0, high = most, atLow = Miss(0), atHigh = Miss(most);
        if (atLow * atHigh > 0)
            return null;
        var near = Near * Math.Abs(atLow);
        var found = high;
        for (var i = 0; i < MostLooks; i++)
        {
            found = (low * atHigh - high * atLow) / (atHigh - atLow);
            var at = Miss(found);
            if (Math.Abs(at) <= near)
                break;
            if (at * atHigh < 0)
                (low, atLow) = (high, atHigh);
            else
                atLow *= 0.5;
            (high, atHigh) = (found, at);
        }
        return found;
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
