using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>Each step's name on the deck: a short order, with the number that matters.</summary>
public static class StepTitles
{
    /// <summary>A title names up to so many things that go in.</summary>
    internal const int MostNamed = 2;

    public static string Of(PlanStep step, Plan plan, Notation notation) =>
        Around(step, plan, notation) ?? Grain(step, plan, notation) ?? Wort(step, plan, notation)
        ?? Names.Sentence(Names.Plainly(step.Spec.Id));

    private static string? Around(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => "Check fittings and valves",
        StepKind.WeighIn => "Weigh in",
        StepKind.TreatWater => Labelled("Treat the water", step),
        StepKind.Fill => $"Fill {Names.The(plan.Brewhouse, Filled(step))}{UpTo(Litres.Shown(step), notation)}",
        StepKind.HeatStrike => $"Heat the strike liquor{To(step.TargetC, notation)}",
        StepKind.HeatSparge => $"Heat the {(step.Spec.Label.Length > 0 ? step.Spec.Label : "sparge")} liquor{To(step.TargetC, notation)}",
        StepKind.Clean => Cleaning(step, plan),
        StepKind.MovePlug => HandsWords.Unplugs(step)
            ? $"Move the plug of circuit {step.Spec.Label} to {Names.The(plan.Brewhouse, step.Spec.To)}"
            : $"Switch circuit {step.Spec.Label} over to {Names.The(plan.Brewhouse, step.Spec.To)}",
        _ => null,
    };

    private static string? Grain(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.PrimePump => "Prime and bleed the pump",
        StepKind.TransferStrike => $"Run{Amount(Litres.Moved(step, plan), notation)} strike liquor to {Names.The(plan.Brewhouse, step.Spec.To)}",
        StepKind.DoughIn => $"Dough in {Charges.Grist(step.Spec.Charges, notation)} grist",
        StepKind.Rest => Labelled($"Rest{At(step.TargetC ?? step.Spec.TargetC, notation)}", step),
        StepKind.Ramp => $"Raise the mash{To(step.TargetC, notation)}",
        StepKind.Infuse => $"Raise the mash{To(step.TargetC, notation)} with{Amount(Litres.Moved(step, plan), notation)} hot water",
        StepKind.TransferMash => $"Pump the mash to {Names.The(plan.Brewhouse, step.Spec.To)}",
        StepKind.LiftBasket => "Lift the grain basket and let it drain",
        StepKind.Vorlauf => "Vorlauf till clear",
        StepKind.Lauter => step.Spec.SpargeL is > 0 ? $"Lauter and sparge{Reaching(step, notation)}" : $"Lauter{Reaching(step, notation)}",
        StepKind.RunOff => Labelled("Run off into the kettle", step),
        StepKind.BatchSparge => $"Sparge with{Amount(Litres.Sparge(step, plan), notation)} in one go",
        StepKind.FreeBed => step.Spec.Label switch
        {
            "underlet" => $"Underlet the bed with{Amount(step.VolumeL ?? step.Spec.VolumeL, notation)} hot liquor",
            "rake" => "Cut the bed and let it run clear",
            _ => "Let the bed rest",
        },
        StepKind.TreatMash => step.Spec.Charges.IsEmpty ? "Treat the mash" : $"Add {Charges.All(step.Spec.Charges, notation)} to the mash",
        StepKind.HeatMash => $"Heat the mash{To(step.TargetC, notation)}",
        StepKind.AddWater => $"Add{Amount(step.VolumeL ?? step.Spec.VolumeL, notation)} {HandsWords.Water(step.Spec.TargetC)} to {Names.The(plan.Brewhouse, Filled(step))}",
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
        StepKind.TransferWort => $"Pump the hot wort to {Names.The(plan.Brewhouse, step.Spec.To)}",
        StepKind.Stand => "Let it stand",
        StepKind.ChillInKettle => $"Chill in the kettle{To(step.TargetC, notation)}",
        StepKind.CastOut => $"Cast out to {Names.The(plan.Brewhouse, step.Spec.To)}{At(step.TargetC, notation)}",
        StepKind.Aerate => "Aerate the wort",
        StepKind.Pitch => "Pitch the yeast",
        StepKind.AddExtract => step.Spec.Charges.IsEmpty ? "Add malt extract" : $"Add {Charges.All(step.Spec.Charges, notation)}",
        _ => null,
    };

    private static string Cleaning(PlanStep step, Plan plan) => step.Spec switch
    {
        { Vessel.Length: > 0 } => HandsWords.IsMashTun(step, plan)
            ? $"Dig out and clean {Names.The(plan.Brewhouse, step.Spec.Vessel)}"
            : $"Clean {Names.The(plan.Brewhouse, step.Spec.Vessel)}",
        { Label: "" or "down" } => "Clean down",
        { Label: var what } => $"Clean the {what}",
    };

    private static string Adding(string what, PlanStep step, Notation notation) => step.Spec.Charges.Length switch
    {
        0 => $"Add {what}",
        <= MostNamed => $"Add {Charges.All(step.Spec.Charges, notation)}",
        var many => $"Add {what}: {many} kinds",
    };

    private static string Labelled(string title, PlanStep step) =>
        step.Spec.Label.Length == 0 ? title : $"{title}: {step.Spec.Label}";

    private static string Reaching(PlanStep step, Notation notation) =>
        Litres.Shown(step) is { } l ? $" to {notation.Volume(l)} in the kettle" : "";

    private static string Filled(PlanStep step) => step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel;

    private static string To(double? c, Notation notation) => c is { } value ? " to " + notation.Target(value) : "";

    private static string UpTo(double? l, Notation notation) => l is { } value ? " to " + notation.Volume(value) : "";

    private static string At(double? c, Notation notation) => c is { } value ? " at " + notation.Target(value) : "";

    private static string Amount(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : "";
}
