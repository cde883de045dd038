using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Each step's name on the deck: a short order, with the number that matters.</summary>
public static class StepTitles
{
    /// <summary>A title names up to so many things that go in.</summary>
    internal const int MostNamed = 2;

    public static string Of(PlanStep step, Plan plan, Notation notation) =>
        Around(step, plan, notation) ?? Grain(step, plan, notation) ?? Wort(step, plan, notation)
        ?? Names.Sentence(Names.Plainly(step.Spec.Id));

    /// <summary>A step as it was brewed: planned, but with what the day has changed in it, such as hops that were weighed anew.</summary>
    public static string Of(RunStep run, Plan plan, Notation notation) => Of(Brewed(run, plan), plan, notation);

    private static PlanStep Brewed(RunStep run, Plan plan)
    {
        var planned = plan.Step(run.Spec.Id);
        return planned is not null && (planned.Spec.VolumeL == run.Spec.VolumeL || run.Spec.Kind == StepKind.Fill)
            ? planned with { Spec = run.Spec }
            : new(run.Spec, 0, 0, run.Spec.TargetC, run.Spec.VolumeL, null, null, [], planned?.After ?? plan.Start);
    }

    private static string? Around(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => notation.Text("Check fittings and valves"),
        StepKind.WeighIn => notation.Text("Weigh in"),
        StepKind.TreatWater => Labelled(notation.Text("Treat the water"), step, notation),
        StepKind.Fill => notation.Text($"Fill {Names.The(plan.Brewhouse, Filled(step), notation)}{UpTo(Litres.Shown(step), notation)}"),
        StepKind.HeatStrike => notation.Text($"Heat the strike liquor{To(step.TargetC, notation)}"),
        StepKind.HeatSparge => notation.Text($"Heat the {(step.Spec.Label.Length > 0 ? notation.Name(step.Spec.Label) : notation.Text("sparge"))} liquor{To(step.TargetC, notation)}"),
        StepKind.Drain => notation.Text($"Drain {Names.The(plan.Brewhouse, step.Spec.Vessel, notation)}"),
        StepKind.Clean => Cleaning(step, plan, notation),
        StepKind.MovePlug => HandsWords.Unplugs(step)
            ? notation.Text($"Move the plug of circuit {step.Spec.Label} to {Names.The(plan.Brewhouse, step.Spec.To, notation)}")
            : notation.Text($"Switch circuit {step.Spec.Label} over to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        _ => null,
    };

    private static string? Grain(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.PrimePump => notation.Text("Prime and bleed the pump"),
        StepKind.TransferStrike when step.Spec.Label == StepLabels.Liquor =>
            notation.Text($"Pump{Amount(Litres.Moved(step, plan), notation)} liquor to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.TransferStrike => notation.Text($"Run{Amount(Litres.Moved(step, plan), notation)} strike liquor to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.DoughIn => notation.Text($"Dough in {Charges.Grist(step.Spec.Charges, notation)} grist"),
        StepKind.Rest => Labelled(notation.Text($"Rest{At(step.TargetC ?? step.Spec.TargetC, notation)}"), step, notation),
        StepKind.Ramp => notation.Text($"Raise the mash{To(step.TargetC, notation)}"),
        StepKind.Infuse => notation.Text($"Raise the mash{To(step.TargetC, notation)} with{Amount(Litres.Moved(step, plan), notation)} hot water"),
        StepKind.PullDecoction => notation.Text($"Pull{Amount(step.VolumeL, notation)} of mash to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.HeatDecoction => notation.Text("Bring the decoction to the boil"),
        StepKind.BoilDecoction => notation.Text("Boil the decoction"),
        StepKind.ReturnDecoction => notation.Text($"Give the decoction back{To(step.TargetC, notation)}"),
        StepKind.TransferMash => notation.Text($"Pump the mash to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.LiftBasket => notation.Text("Lift the grain basket and let it drain"),
        StepKind.Vorlauf => notation.Text("Vorlauf till clear"),
        StepKind.Lauter => step.Spec.SpargeL is > 0 ? notation.Text($"Lauter and sparge{Reaching(step, notation)}") : notation.Text($"Lauter{Reaching(step, notation)}"),
        StepKind.RunOff => Labelled(notation.Text("Run off into the kettle"), step, notation),
        StepKind.BatchSparge => notation.Text($"Sparge with{Amount(Litres.Sparge(step, plan), notation)} in one go"),
        StepKind.FreeBed => step.Spec.Label switch
        {
            StepLabels.Underlet => notation.Text($"Underlet the bed with{Amount(step.VolumeL ?? step.Spec.VolumeL, notation)} hot liquor"),
            StepLabels.Rake => notation.Text("Cut the bed and let it run clear"),
            _ => notation.Text("Let the bed rest"),
        },
        StepKind.TreatMash => step.Spec.Charges.IsEmpty ? notation.Text("Treat the mash") : notation.Text($"Add {Charges.All(step.Spec.Charges, notation)} to the mash"),
        StepKind.HeatMash when step.Spec.Label == StepLabels.Liquor => notation.Text($"Heat the liquor in the tun{To(step.TargetC, notation)}"),
        StepKind.HeatMash => notation.Text($"Heat the mash{To(step.TargetC, notation)}"),
        StepKind.AddWater => notation.Text($"Add{Amount(step.VolumeL ?? step.Spec.VolumeL, notation)} {HandsWords.Water(step.Spec.TargetC, notation)} to {Names.The(plan.Brewhouse, Filled(step), notation)}"),
        _ => null,
    };

    private static string? Wort(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.AddFirstWortHops => Adding(notation.Text("first wort hops"), step, notation),
        StepKind.HeatToBoil => notation.Text("Heat to the boil"),
        StepKind.HotBreak => notation.Text("Watch the hot break"),
        StepKind.Boil when step.Spec.Label == StepLabels.Again => notation.Text("Boil it once more"),
        StepKind.Boil => Labelled(Boiling(step, plan, notation), step, notation),
        StepKind.AddToBoil => Adding(notation.Text("the addition"), step, notation),
        StepKind.SanitiseChiller => notation.Text("Sanitise the chiller"),
        StepKind.KnockOut => notation.Text("Knock out"),
        StepKind.Whirlpool => notation.Text("Whirlpool"),
        StepKind.AddToWhirlpool => Adding(notation.Text("whirlpool hops"), step, notation),
        StepKind.TransferWort when step.Spec.Label == StepLabels.ToBoil => notation.Text($"For the boil, pump the wort to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.TransferWort => notation.Text($"Pump the hot wort to {Names.The(plan.Brewhouse, step.Spec.To, notation)}"),
        StepKind.Stand => notation.Text("Let it stand"),
        StepKind.ChillInKettle when step.Spec.Vessel != plan.Brewhouse.Whirlpool.Id =>
            notation.Text($"Chill{To(step.TargetC, notation)} in {Names.The(plan.Brewhouse, step.Spec.Vessel, notation)}"),
        StepKind.ChillInKettle => notation.Text($"Chill in the kettle{To(step.TargetC, notation)}"),
        StepKind.CastOut => notation.Text($"Cast out to {Names.The(plan.Brewhouse, step.Spec.To, notation)}{At(step.TargetC, notation)}"),
        StepKind.CoolInFermenter => step.Spec.Label switch
        {
            StepLabels.Room => notation.Text($"Let the room bring the fermenter{To(step.TargetC, notation)}"),
            StepLabels.OwnCooling => notation.Text($"Let its cooling bring the fermenter{To(step.TargetC, notation)}"),
            _ => notation.Text($"Chill the wort in the fermenter{To(step.TargetC, notation)}"),
        },
        StepKind.Aerate => notation.Text("Aerate the wort"),
        StepKind.Pitch => notation.Text("Pitch the yeast"),
        StepKind.AddExtract => step.Spec.Charges.IsEmpty ? notation.Text("Add malt extract") : notation.Text($"Add {Charges.All(step.Spec.Charges, notation)}"),
        _ => null,
    };

    /// <summary>
    /// "Boil, 60 to 15 min to go": a boil is cut at each addition, and its stretches are told apart by what additions go by. Alone it is
    /// the boil. One that has lost minutes to the stretch before it, or was made longer, says from where it goes.
    /// </summary>
    private static string Boiling(PlanStep step, Plan plan, Notation notation)
    {
        var stretches = plan.Steps.Where(s => s.Spec is { Kind: StepKind.Boil, Label: "", Minutes: not null }).OrderBy(s => s.StartS).ToList();
        var at = stretches.FindIndex(s => s.Spec.Id == step.Spec.Id);
        if (at < 0 || stretches.Count < 2)
            return notation.Text("Boil");
        double Left(int from) => stretches.Skip(from).Sum(s => s.Spec.Minutes!.Value);
        var changed = Math.Round((step.Spec.Minutes ?? 0) - stretches[at].Spec.Minutes!.Value);
        return notation.Text($"Boil, {notation.Number(Left(at) + changed, "0.#")} to {notation.Number(Left(at + 1), "0.#")} min to go");
    }

    private static string Cleaning(PlanStep step, Plan plan, Notation notation) => step.Spec switch
    {
        { Vessel.Length: > 0 } => HandsWords.IsMashTun(step, plan)
            ? notation.Text($"Dig out and clean {Names.The(plan.Brewhouse, step.Spec.Vessel, notation)}")
            : notation.Text($"Clean {Names.The(plan.Brewhouse, step.Spec.Vessel, notation)}"),
        { Label: "" or StepLabels.Down } => notation.Text("Clean down"),
        { Label: var what } => notation.Text($"Clean the {notation.Name(what)}"),
    };

    private static string Adding(string what, PlanStep step, Notation notation) => step.Spec.Charges.Length switch
    {
        0 => notation.Text($"Add {what}"),
        <= MostNamed => notation.Text($"Add {Charges.All(step.Spec.Charges, notation)}"),
        var many => notation.Text($"Add {what}: {many} kinds"),
    };

    private static string Labelled(string title, PlanStep step, Notation notation) =>
        step.Spec.Label.Length == 0 ? title : $"{title}: {notation.Name(step.Spec.Label)}";

    private static string Reaching(PlanStep step, Notation notation) =>
        Litres.Shown(step) is { } l ? notation.Text($" to {notation.Volume(l)} in the kettle") : "";

    private static string Filled(PlanStep step) => step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel;

    private static string To(double? c, Notation notation) => c is { } value ? notation.Text(" to ") + notation.Target(value) : "";

    private static string UpTo(double? l, Notation notation) => l is { } value ? notation.Text(" to ") + notation.Volume(value) : "";

    private static string At(double? c, Notation notation) => c is { } value ? notation.Text(" at ") + notation.Target(value) : "";

    private static string Amount(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : "";
}
