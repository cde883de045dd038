using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>One way back to plan. It only says which steps it would put on the run sheet: what they give is the model's to say.</summary>
internal abstract class Way
{
    public static readonly ImmutableArray<Way> All =
    [
        new HeatMashWay(), new HotWaterWay(), new ColdWaterWay(), new MashPhWay(), new FillUpWay(), new RunOverWay(), new HeatLiquorWay(), new CoolLiquorWay(),
        new RestBedWay(), new UnderletWay(), new RakeBedWay(), new OtherCircuitWay(), new HeatElsewhereWay(), new BoilElsewhereWay(),
        new InfuseWay(), new RestOnWay(), new AddNowWay(), new ReweighWay(),
        new BoilLongerWay(), new BoilShorterWay(), new DiluteWay(), new AddExtractWay(), new RunOffWay(), new SetChillerWay(), new ChillFermenterWay(), new OwnCoolingWay(), new WaitForRoomWay(),
    ];

    public abstract bool Helps(Off off);

    /// <summary>None where it cannot be done or does not lead back.</summary>
    public abstract IEnumerable<Remedy> Offers(Weigh weigh, Off off);

    /// <summary>A remedy that puts one step on the sheet, for now.</summary>
    protected static Remedy Now(Weigh weigh, RemedyKind kind, double amount, StepSpec step, string before = "") =>
        new(kind, step.Vessel, amount, 0, [step], before.Length > 0 ? before : weigh.Before(step.Vessel), [], []);

    /// <summary>A remedy that changes steps which are on it.</summary>
    protected static Remedy Changes(RemedyKind kind, double amount, params ImmutableArray<StepSpec> steps) =>
        new(kind, steps[0].Vessel, amount, 0, [], "", steps, []);

    /// <summary>Shared circuits that feed a vessel and have their plug elsewhere, each plugged in there.</summary>
    protected static IEnumerable<StepSpec> PlugsTo(Weigh weigh, string vesselId, UnitProcedure unit)
    {
        var setting = weigh.Live.Setting;
        return from circuit in setting.Wiring.Leads[setting.IndexOf(vesselId)].Where(l => !setting.Wiring.Feeds(l, weigh.Live.Plant.PlugAt)).Select(l => l.Circuit).Distinct()
               select PlugMoves.Of(setting, circuit, weigh.FreshId($"plug-{setting.Circuits[circuit].Id}"), unit, vesselId);
    }

    /// <summary>Moves of plugs that are still to come, to a vessel in which nothing heats any more.</summary>
    protected static IEnumerable<RunStep> IdlePlugsTo(Weigh weigh, string vesselId) =>
        weigh.State.Steps.Where(s => s.Status == RunStatus.Idle && s.Spec.Kind == StepKind.MovePlug && s.Spec.To == vesselId && IsDead(weigh, vesselId));

    private static bool IsDead(Weigh weigh, string vesselId) => weigh.Live.Setting.Wiring.Leads[weigh.Live.Setting.IndexOf(vesselId)].IsEmpty;

    protected static IEnumerable<Remedy> OneOf(Remedy? remedy) => remedy is null ? [] : [remedy];
}
