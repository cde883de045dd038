using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Planning;

/// <summary>What is worth reading at the end of a step, and what it should show.</summary>
internal static class Expectations
{
    public static ImmutableArray<ExpectedReading> After(PlantSetting setting, StepSpec spec, StepOutcome outcome) => spec.Kind switch
    {
        StepKind.Fill => [Volume(setting, outcome, spec.Vessel)],
        StepKind.HeatStrike => [new(ReadingKind.Temperature, spec.Vessel, outcome.TargetC ?? 0)],
        StepKind.HeatSparge or StepKind.DoughIn or StepKind.Ramp or StepKind.HeatMash
            or StepKind.CoolInFermenter =>
            [Temperature(setting, outcome, spec.Vessel)],
        StepKind.Rest when spec.ExpectedPh is { } ph =>
            [Temperature(setting, outcome, spec.Vessel), new(ReadingKind.Ph, spec.Vessel, ph)],
        StepKind.Rest => [Temperature(setting, outcome, spec.Vessel)],
        StepKind.Vorlauf => [Gravity(setting, outcome, spec.Vessel)],
        StepKind.Lauter or StepKind.RunOff => [Volume(setting, outcome, spec.To), Gravity(setting, outcome, spec.To)],
        StepKind.TransferStrike or StepKind.Infuse or StepKind.ReturnDecoction => [Temperature(setting, outcome, spec.To)],
        StepKind.LiftBasket => [Volume(setting, outcome, spec.Vessel), Gravity(setting, outcome, spec.Vessel)],
        StepKind.Boil => [Volume(setting, outcome, spec.Vessel)],
        StepKind.KnockOut => [Volume(setting, outcome, spec.Vessel), Gravity(setting, outcome, spec.Vessel)],
        StepKind.CastOut =>
        [
            Volume(setting, outcome, spec.To), Temperature(setting, outcome, spec.To), Gravity(setting, outcome, spec.To),
        ],
        _ => [],
    };

    /// <summary>What a reading would show in a state, in the canonical unit of its kind; NaN when the model has no such number.</summary>
    public static double Of(PlantSetting setting, PlantState state, ReadingKind kind, string vessel)
    {
        var index = setting.IndexOf(vessel);
        if (index < 0)
            return vessel switch { Places.Grain => setting.GrainC, Places.Source => setting.SourceWaterC, Places.Room => setting.AmbientC, _ => double.NaN };
        var v = state.Vessels[index];
        return kind switch
        {
            ReadingKind.Temperature => v.TempC,
            ReadingKind.Volume => Contents.StandsL(v),
            ReadingKind.Gravity => SugarSolution.SgFromPlato(v.Plato),
            _ => double.NaN,
        };
    }

    private static ExpectedReading Volume(PlantSetting setting, StepOutcome outcome, string vessel) =>
        Reading(setting, outcome, ReadingKind.Volume, vessel);

    private static ExpectedReading Gravity(PlantSetting setting, StepOutcome outcome, string vessel) =>
        Reading(setting, outcome, ReadingKind.Gravity, vessel);

    private static ExpectedReading Temperature(PlantSetting setting, StepOutcome outcome, string vessel) =>
        Reading(setting, outcome, ReadingKind.Temperature, vessel);

    private static ExpectedReading Reading(PlantSetting setting, StepOutcome outcome, ReadingKind kind, string vessel) =>
        new(kind, vessel, Of(setting, outcome.State, kind, vessel));
}
