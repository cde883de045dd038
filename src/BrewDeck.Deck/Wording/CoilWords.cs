using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Deck.Wording;

/// <summary>A mash that is heated through a coil in the hot liquor tank: its wort goes round, the heat is the tank's.</summary>
internal static class CoilWords
{
    /// <summary>The tank is set as the plan reckons with it, and afterwards to what it is kept at for the sparge.</summary>
    public static ImmutableArray<string> Raise(PlanStep step, Plan plan, Notation notation)
    {
        var ofLiquor = step.Spec.Label == StepLabels.Liquor;
        var target = step.TargetC ?? step.Spec.TargetC ?? 0;
        var tank = plan.Brewhouse.HotLiquorTank;
        var pump = ofLiquor
            ? notation.Text("Coil covered? Bleed the pump, then start it: through the coil and back to the tun.")
            : notation.Text("Coil covered? Pump on: wort through the coil and back over the bed.");
        var off = notation.Text($"Pump off at {notation.Target(target)}");
        return
        [
            pump,
            .. tank.IsHeated ? new[] { notation.Text($"Heat on, set to {notation.Target(CoilHeat.TankC(target))}, in {Names.The(plan.Brewhouse, tank.Id, notation)}.") } : [],
            HandsWords.After(step, plan, tank.Id) is { HoldsTemperature: true, HoldC: var hold }
                ? notation.Text($"{off}; then {notation.Target(hold)} in {Names.The(plan.Brewhouse, tank.Id, notation)}.") : off + ".",
        ];
    }

    /// <summary>The liquor is hotter than the rest: wort that ran through it all the while would go on rising.</summary>
    public static string Kept(PlanStep step, Plan plan, Notation notation)
    {
        var target = step.TargetC ?? step.Spec.TargetC;
        return target is { } kept && plan.Brewhouse.Coil is { } coil
            && HandsWords.After(step, plan, plan.Brewhouse.HotLiquorTank.Id) is { } liquor && liquor.TempC > kept && Contents.LiquidL(liquor) >= coil.CoverL
            ? notation.Text($"Lid on, pump off. Coil only below {notation.Target(kept)}.")
            : notation.Text("Lid on, pump off: nothing through the coil.");
    }
}
