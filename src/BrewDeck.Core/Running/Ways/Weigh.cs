using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Tries a change of the run sheet on the model and says what it gives.</summary>
internal sealed class Weigh(RunState state, Forecast forecast, long nowMs)
{
    /// <summary>A thousandth of what was off is far below what can be read.</summary>
    private const double Near = 1e-3;

    private const int MostLooks = 20;

    /// <summary>A brewer who reads the kettle this long before the model ends the run-off reads its end; s, common practice, no source.</summary>
    private const double AlmostS = 120;

    /// <summary>A boil that ends this much colder was none; K, common practice, no source.</summary>
    private const double OffBoilK = 2;

    public RunState State => state;

    public Forecast Forecast => forecast;

    public long NowMs => nowMs;

    public Plan Plan => state.Plan!;

    public LivePlant Live { get; } = state.DayStartMs is null ? state.Live! : state.Live!.CutAt(state.SecondsAt(nowMs));

    public Vessel Kettle => Live.Setting.Brewhouse.Kettle;

    /// <summary>The run-off that is going on or still to come.</summary>
    public RunStep? RunOff => state.Steps.LastOrDefault(s => s.Open && s.Spec.Kind.RunsOff());

    /// <summary>The last run-off has all but come to its end, though nobody has said so yet: what the kettle holds is what will boil.</summary>
    public bool HasRunOff => RunOff is { Status: RunStatus.Running } run && HasRun(run);

    /// <summary>As <see cref="HasRunOff"/>, of one that is running.</summary>
    public bool HasRun(RunStep run) => forecast.Step(run.Spec.Id) is { DurationS: <= AlmostS };

    /// <summary>Whether anything bitter is still to go in.</summary>
    public bool HopsLeft => state.Steps.Any(s => s.Status == RunStatus.Idle && s.Spec.Charges.Any(c => c.Kind == ChargeKind.Hop && c.AlphaG > 0)
        && s.Spec.Kind is StepKind.AddToBoil or StepKind.AddToWhirlpool);

    /// <summary>Names of the limits that the rest of the day breaks as it stands.</summary>
    public IReadOnlySet<string> Broken => field ??= LimitChecks.OfRest(Live.Setting, forecast.Now, forecast.Rest).Where(l => !l.Ok).Select(l => l.Name).ToHashSet();

    public Forecast With(Remedy remedy) => Forecasts.At(RemedyFold.Edited(state, remedy, nowMs), nowMs);

    /// <summary>The plant as a step finds it: now, if it has begun.</summary>
    public PlantState Before(RunStep step) => step.Status != RunStatus.Idle
        ? Live.Plant
        : forecast.Rest.TakeWhile(s => s.Spec.Id != step.Spec.Id).LastOrDefault()?.After ?? Live.Plant;

    /// <summary>Power of the elements that the wiring of the plan feeds and today's does not, W.</summary>
    public double DeadW() => Enumerable.Range(0, Live.Setting.Wiring.Leads.Length).Sum(DeadW);

    /// <summary>As <see cref="DeadW()"/>, of one vessel.</summary>
    public double DeadW(int vessel)
    {
        double Fed(Wiring wiring) => wiring.Leads[vessel].Sum(l => l.Element.PowerW);
        return Fed(Wiring.Of(Live.Setting.Brewhouse, Live.Setting.Circuits)) - Fed(Live.Setting.Wiring);
    }

    /// <summary>Heat of a vessel is dead, or has shown itself to be slow.</summary>
    public bool LacksHeat(string vesselId)
    {
        var vessel = Live.Setting.IndexOf(vesselId);
        return DeadW(vessel) > 0 || Live.Setting.HeatFactor[vessel] < SlowHeat.SlowFactor;
    }

    /// <summary>
    /// What the day, left as it is, never comes to: a temperature that is not reached, wort that does not boil when it should; null: all of it
    /// comes to an end.
    /// </summary>
    public PlanStep? Never => forecast.Rest.FirstOrDefault(s => s.Spec.Kind.Heats() && (s.NeverGetsThere
        || (s.Spec.Kind is StepKind.HotBreak or StepKind.Boil && s is { DurationS: > 0 } && IsOffTheBoil(s.After.Vessels[Live.Setting.IndexOf(s.Spec.Vessel)]))));

    /// <summary>What a way is held against: leaving it, or where that never ends, the day as it would go on with all its heat.</summary>
    public Forecast Otherwise => field ??= Never is null ? forecast : Forecasts.At(state with { Live = Live with { Setting = Sound(Live.Setting) } }, nowMs);

    private static PlantSetting Sound(PlantSetting setting) => SlowHeat.Explained(setting) with { Wiring = Wiring.Of(setting.Brewhouse, setting.Circuits) };

    private bool IsOffTheBoil(in VesselState wort) => wort.TempC < Boiling.BoilingC(Live.Setting, wort) - OffBoilK;

    /// <summary>What the strike liquor should have now, °C.</summary>
    public double StrikeC(StepSpec heats) => Strike.TemperatureC(new Workbench(Live.Setting, Live.Plant), heats);

    /// <summary>Like <see cref="Meeting"/>; where even the most does not meet the plan, the most, if it comes nearer.</summary>
    /// <param name="from">What of it is done anyway; null: nothing.</param>
    public Remedy? MeetingOrNearing(Func<Aims, Aim> figure, double most, Func<double, Remedy?> of, Remedy? from = null)
    {
        if (Meeting(figure, most, of, from) is { } meets)
            return meets;
        if (!(most > 0) || of(most) is not { } all)
            return null;
        double left = figure(Aims.Of(this, Without(from))).By, reached = figure(Aims.Of(this, With(all))).By;
        return left * reached > 0 && Math.Abs(reached) < Math.Abs(left) ? all with { Partly = true } : null;
    }

    /// <summary>
    /// A remedy of that amount, between 0 and a most, with which a figure of the end of the day meets its plan; null: none does. By false
    /// position (the Illinois form): each look is a forecast of the whole day, and outlooks are nearly straight lines.
    /// </summary>
    /// <param name="from">What of it is done anyway; null: nothing.</param>
    public Remedy? Meeting(Func<Aims, Aim> figure, double most, Func<double, Remedy?> of, Remedy? from = null)
    {
        if (!(most > 0) || of(most) is null)
            return null;
        double Miss(double amount) => figure(Aims.Of(this, amount == 0 ? Without(from) : With(of(amount)!))).By;
        double low = 0, high = most, atLow = Miss(0), atHigh = Miss(most);
        if (!(atLow * atHigh <= 0))
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
        return of(found);
    }

    private Forecast Without(Remedy? from) => from is null ? forecast : With(from);

    /// <summary>Litres that still go into a vessel.</summary>
    public double RoomL(string vesselId) => RoomL(vesselId, Live.Vessel(vesselId));

    /// <param name="holds">What it holds when they come.</param>
    public double RoomL(string vesselId, in VesselState holds) => Math.Max(0, Live.Setting.WorkingL(Live.Setting.IndexOf(vesselId)) - Contents.StandsL(holds));

    /// <summary>What is open in a vessel first: where a step goes that is for now.</summary>
    public string Before(string vessel) =>
        state.Steps.FirstOrDefault(s => s.Open && (s.Spec.Vessel == vessel || s.Spec.To == vessel))?.Spec.Id ?? "";

    /// <summary>An id that is not yet on the run sheet.</summary>
    public string FreshId(string stem)
    {
        var n = 1;
        while (state.Step($"remedy.{stem}-{n}") is not null)
            n++;
        return $"remedy.{stem}-{n}";
    }
}
