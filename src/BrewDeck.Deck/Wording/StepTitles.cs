using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>Each step's name on the deck: a short order, with the number that matters.</summary>
public static class StepTitles
{
    public static string Of(PlanStep step, Plan plan, Notation notation)
    {
        var spec = step.Spec;
        return spec.Unit switch
        {
            UnitProcedure.SetUp or UnitProcedure.HotLiquor or UnitProcedure.CleanDown => Around(step, plan, notation),
            UnitProcedure.Mash or UnitProcedure.Lauter => Grain(step, plan, notation),
            _ => Wort(step, plan, notation),
        } ?? Around(step, plan, notation) ?? Grain(step, plan, notation) ?? Wort(step, plan, notation) ?? Names.Sentence(Names.Plainly(spec.Id));
    }

    private static string? Around(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => "Check fittings and valves",
        StepKind.WeighIn => "Weigh in",
        StepKind.TreatWater => Labelled("Treat the water", step),
        StepKind.Fill => $"Fill {Names.The(plan.Brewhouse, Filled(step))}{UpTo(step.VolumeL, notation)}",
        StepKind.HeatStrike => $"Heat the strike liquor{To(step.TargetC, notation)}",
        StepKind.HeatSparge => $"Heat the sparge liquor{To(step.TargetC, notation)}",
        StepKind.Clean => step.Spec.Vessel.Length == 0
            ? Labelled("Clean down", step)
            : Labelled($"Clean {Names.The(plan.Brewhouse, step.Spec.Vessel)}", step),
        _ => null,
    };

    private static string? Grain(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.PrimePump => "Prime and bleed the pump",
        StepKind.TransferStrike => $"Run{Amount(step.VolumeL, notation)} strike liquor to {Names.The(plan.Brewhouse, step.Spec.To)}",
        StepKind.DoughIn => $"Dough in {Charges.Grist(step.Spec.Charges, notation)} grist",
        StepKind.Rest => Labelled($"Rest{At(step.TargetC ?? step.Spec.TargetC, notation)}", step),
        StepKind.Ramp => $"Raise the mash{To(step.TargetC, notation)}",
        StepKind.Vorlauf => "Vorlauf till clear",
        StepKind.Lauter => step.Spec.SpargeL is > 0 ? $"Lauter and sparge{Reaching(step, notation)}" : $"Lauter{Reaching(step, notation)}",
        StepKind.RunOff => Labelled("Run off into the kettle", step),
        StepKind.BatchSparge => $"Sparge with{Amount(step.Spec.SpargeL ?? step.VolumeL, notation)} in one go",
        StepKind.HeatMash => $"Heat the mash{To(step.TargetC, notation)}",
        StepKind.AddWater => $"Add{Amount(step.VolumeL, notation)} water to {Names.The(plan.Brewhouse, Filled(step))}",
        _ => null,
    };

    private static string? Wort(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.AddFirstWortHops => Adding("first wort hops", step, notation),
        StepKind.HeatToBoil => "Heat to the boil",
        StepKind.HotBreak => "Watch the hot break",
        StepKind.Boil => Labelled("Boil", step),
        StepKind.AddToBoil => Adding("the addition", step, notation),
        StepKind.SanitiseChiller => "Sanitise the chiller",
        StepKind.KnockOut => "Knock out",
        StepKind.Whirlpool => "Whirlpool",
        StepKind.AddToWhirlpool => Adding("whirlpool hops", step, notation),
        StepKind.Stand => "Let it stand",
        StepKind.ChillInKettle => $"Chill in the kettle{To(step.TargetC, notation)}",
        StepKind.CastOut => $"Cast out to {Names.The(plan.Brewhouse, step.Spec.To)}{At(step.TargetC, notation)}",
        StepKind.Aerate => "Aerate the wort",
        StepKind.Pitch => "Pitch the yeast",
        StepKind.AddExtract => step.Spec.Charges.IsEmpty ? "Add malt extract" : $"Add {Charges.All(step.Spec.Charges, notation)}",
        _ => null,
    };

    private static string Adding(string what, PlanStep step, Notation notation) => step.Spec.Charges.Length switch
    {
        0 => $"Add {what}",
        <= 2 => $"Add {Charges.All(step.Spec.Charges, notation)}",
        var many => $"Add {what}: {many} kinds",
    };

    private static string Labelled(string title, PlanStep step) =>
        step.Spec.Label.Length == 0 ? title : $"{title}: {step.Spec.Label}";

    private static string Reaching(PlanStep step, Notation notation) =>
        step.VolumeL is { } l ? $" until the kettle holds {notation.Volume(l)}" : "";

    private static string Filled(PlanStep step) => step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel;

    private static string To(double? c, Notation notation) => c is { } value ? " to " + notation.Target(value) : "";

    private static string UpTo(double? l, Notation notation) => l is { } value ? " to " + notation.Volume(value) : "";

    private static string At(double? c, Notation notation) => c is { } value ? " at " + notation.Target(value) : "";

    private static string Amount(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : "";
}
