using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>The vessels as the model has them at this moment.</summary>
public static class VesselGauges
{
    private const double EmptyL = 0.05;

    /// <summary>A thermostat's own play, K: nearer it stands where it is held, and the words do not change with each tenth.</summary>
    private const double HeldK = 1;

    public static ImmutableArray<Gauge> Of(DeckMoment moment)
    {
        var vessels = moment.Plan.Brewhouse.Vessels;
        var gauges = ImmutableArray.CreateBuilder<Gauge>();
        for (var i = 0; i < vessels.Length && i < moment.Forecast.Now.Vessels.Length; i++)
            gauges.Add(One(vessels[i], moment.Forecast.Now.Vessels[i], moment));
        if (moment.Forecast.Now.Vessels.Length > vessels.Length && Fermenter(moment) is { } fermenter)
            gauges.Add(fermenter);
        return gauges.ToImmutable();
    }

    /// <summary>What an instrument would show in a vessel as the gauge has it, in the unit of its kind; NaN: nothing.</summary>
    public static double Reads(Reading reading, VesselState state) => reading.Kind switch
    {
        ReadingKind.Temperature => state.TempC,
        ReadingKind.Volume => Contents.StandsL(state with { TempC = reading.AtC ?? state.TempC }),
        ReadingKind.Gravity => SugarSolution.SgFromPlato(state.Plato),
        _ => double.NaN,
    };

    private static Gauge One(Vessel vessel, VesselState state, DeckMoment moment)
    {
        if (moment.IsCleaned(vessel.Id))
            return new Gauge(moment.Notation.Name(vessel.Id), 0, moment.Notation.Text("cleaned"), Tone.Normal);
        var litres = Contents.StandsL(state);
        var heat = Heat(vessel, state, litres, moment);
        return new Gauge(moment.Notation.Name(vessel.Id), Share(litres, vessel.CapacityL), Guess(vessel.Id, moment) + Text(litres, state, heat, moment), litres > vessel.WorkingL + 0.1 ? Tone.Warning : Tone.Normal);
    }

    // shown once there is wort in it
    private static Gauge? Fermenter(DeckMoment moment)
    {
        var state = moment.Forecast.Now.Vessels[^1];
        var litres = Contents.StandsL(state);
        return litres < EmptyL
            ? null
            : new Gauge(moment.Notation.Text("fermenter"), Share(litres, moment.Plan.Brewhouse.Fermenter.CapacityL), Guess(Places.Fermenter, moment) + Text(litres, state, "", moment), Tone.Normal);
    }

    private static string Guess(string vesselId, DeckMoment moment) => moment.IsGuessed(vesselId) ? "~" : "";

    private static string Text(double litres, VesselState state, string heat, DeckMoment moment)
    {
        var parts = litres < EmptyL ? new[] { moment.Notation.Text("empty") } : [moment.Notation.Volume(litres), moment.Notation.Temp(state.TempC)];
        return string.Join("  ", heat.Length == 0 || (litres < EmptyL && heat == HeatOff(moment.Notation)) ? parts : [.. parts, heat]);
    }

    private static string Heat(Vessel vessel, VesselState state, double litres, DeckMoment moment)
    {
        if (vessel.Elements.IsEmpty)
            return "";
        // no heat on elements that stand dry: the model waits for them to be covered, and so do the hands; where a step has it on, nobody knows
        if (litres < vessel.CoverL)
            return AlarmRules.HeatsDry(moment.State, moment.Forecast, vessel) ? moment.Notation.Text("not covered") : HeatOff(moment.Notation);
        if (Running(vessel.Id, moment).Any(s => s.PowerW is > 0) || (moment.State.Live is { } live && PlantModel.HeatsOn(live.Setting, state)))
            return moment.Notation.Text("heat on");
        if (!state.HoldsTemperature || RunsOff(vessel.Id, moment))
            return HeatOff(moment.Notation);
        // what is held where it stands needs no second number: with it the bars have no room at 80 columns
        return Math.Abs(state.HoldC - state.TempC) < HeldK ? moment.Notation.Text("holds") : moment.Notation.Text($"holds {moment.Notation.Target(state.HoldC)}");
    }

    /// <summary>From the vorlauf on the tun is heated no more: its bed drains.</summary>
    private static bool RunsOff(string vesselId, DeckMoment moment) => moment.State.Steps.Any(s =>
        (s.Spec.Kind == StepKind.Vorlauf || s.Spec.Kind.RunsOff()) && s.Spec.Vessel == vesselId && s.StartedMs is not null);

    private static IEnumerable<PlanStep> Running(string vesselId, DeckMoment moment) =>
        Running(vesselId, moment, moment.State.Setting());

    private static IEnumerable<PlanStep> Running(string vesselId, DeckMoment moment, PlantSetting setting) =>
        moment.Rest.Where(s => moment.IsRunning(s) && PlantModel.HeatedVessel(setting, s.Spec) == setting.IndexOf(vesselId));

    private static string HeatOff(Notation notation) => notation.Text("heat off");

    private static double Share(double litres, double capacityL) => capacityL > 0 ? Math.Clamp(litres / capacityL, 0, 1) : 0;
}
