using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>Sums up a folded day.</summary>
public static class DayTotals
{
    public static Totals Of(PlantSetting setting, double strikeL, double spargeL, ImmutableArray<PlanStep> steps)
    {
        var kettle = setting.IndexOf(setting.Brewhouse.Kettle.Id);
        var end = steps[^1].After;
        var full = steps.Last(s => s.Spec.Unit == UnitProcedure.Lauter).After.Vessels[kettle];
        // a wort may be brought to the boil and no more
        var boiled = steps.Last(s => s.Spec.Kind is StepKind.Boil or StepKind.HotBreak).After.Vessels[kettle];
        var fermenter = end.Vessels[setting.FermenterIndex];
        var ebc = WortFigures.ColourEbc(setting, end);
        return new(
            strikeL, spargeL, Contents.CoolL(full), SugarSolution.SgFromPlato(full.Plato), Contents.CoolL(boiled),
            Contents.CoolL(fermenter), SugarSolution.SgFromPlato(fermenter.Plato), WortFigures.BitternessIbu(setting, end),
            Colour.SrmFromEbc(ebc), ebc, fermenter.TempC, steps.Max(s => s.EndS),
            steps.Sum(s => s.HandsS));
    }
}
