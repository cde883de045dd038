using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What the hands do in each step: short sentences, the first one alone must do.</summary>
public static class HandsWords
{
    public static ImmutableArray<string> Of(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => ["Close every valve, then check hoses, clamps, seals and the false bottom.", "Have scale, thermometer and hydrometer at hand."],
        StepKind.WeighIn => WeighIn(step, notation),
        StepKind.TreatWater => WaterWords.Treat(step, notation),
        StepKind.Fill => Fill(step, plan, notation),
        StepKind.HeatStrike => HeatLiquor(step, notation, "Stir before you read it."),
        StepKind.HeatSparge => HeatLiquor(step, notation, "It is held there until the sparge."),
        StepKind.PrimePump => ["Open the inlet, let the pump fill by itself, then bleed it at the outlet.", "Start it only when no more air comes."],
        StepKind.TransferStrike => [$"Run{Litres(step, notation)} through to {Names.The(plan.Brewhouse, step.Spec.To)}, outlet under the surface.", "Shut the valve and read the temperature."],
        StepKind.DoughIn => DoughIn(step, notation),
        StepKind.Rest => ["Keep the lid on and the wort moving.", "Stir at half time and read the temperature in the middle."],
        StepKind.Ramp => ["Pump on, then heat on. Keep the return spread over the bed.", $"Heat off{At(step.TargetC, notation)}."],
        StepKind.HeatMash => ["Pump on, then heat on. Stir now and then.", $"Heat off{At(step.TargetC, notation)}."],
        _ => Later(step, plan, notation),
    };

    private static ImmutableArray<string> Later(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.Vorlauf => ["Draw wort gently from under the bed and return it on top until it runs clear."],
        StepKind.Lauter => Lauter(step, notation),
        StepKind.RunOff => ["Open the tun a little, then more. Keep the bed from running dry too fast.", "Close it when it only drips, and read volume and gravity."],
        StepKind.BatchSparge => [$"Run in{Litres(step.Spec.SpargeL ?? step.VolumeL, notation)} sparge liquor, stir well, let it settle."],
        StepKind.AddFirstWortHops => [$"Put {What(step, "the first wort hops", notation)} into the kettle before the wort covers the bottom."],
        StepKind.HeatToBoil => ["Heat full on, lid off before it boils.", "Skim if foam gathers."],
        StepKind.HotBreak => ["Stand by the kettle. Turn the heat down or spray cold water when foam climbs.", "Go on when the foam falls back."],
        StepKind.Boil => ["Keep a rolling boil, lid off. Nothing to do until the next addition."],
        StepKind.AddToBoil => [$"Put {What(step, "the addition", notation)} into the boil, a little at a time."],
        StepKind.AddExtract => [$"Heat off. Stir in {What(step, "the extract", notation)} until nothing sticks to the bottom, then heat on."],
        StepKind.AddWater => [$"Measure{Litres(step, notation)} and add it to {Names.The(plan.Brewhouse, step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel)}. Stir."],
        _ => Cold(step, plan, notation),
    };

    private static ImmutableArray<string> Cold(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.SanitiseChiller => ["Run boiling wort through pump and chiller and back for ten minutes, cooling water off."],
        StepKind.KnockOut => ["Heat off at the switch. Read volume and gravity."],
        StepKind.Whirlpool => ["Start the whirlpool along the wall; stop it when the wort turns as one."],
        StepKind.AddToWhirlpool => [$"Put {What(step, "the whirlpool hops", notation)} into the turning wort."],
        StepKind.Stand => ["Lid on. Leave it alone while the trub settles."],
        StepKind.ChillInKettle => ["Cooling water on. Move the wort gently past the coil.", "From here on everything that touches the wort is sanitised."],
        StepKind.CastOut => CastOut(step, plan, notation),
        StepKind.Aerate => ["Aerate until a thick foam stands, or give oxygen for a minute."],
        StepKind.Pitch => [$"Pitch {plan.Recipe.Yeast.Name} at {notation.Target(plan.Totals.PitchC)} or below. Close the fermenter."],
        StepKind.Clean => ["Empty, rinse, then clean with hot detergent. Rinse until nothing is slippery. Leave valves open to dry."],
        _ => [],
    };

    private static ImmutableArray<string> WeighIn(PlanStep step, Notation notation) => step.Spec.Charges.IsEmpty
        ? ["Weigh grist, hops and additions, each in its own marked tub."]
        : ["Weigh each into its own marked tub:", .. step.Spec.Charges.Select(c => Charges.One(c, notation))];

    private static ImmutableArray<string> Fill(PlanStep step, Plan plan, Notation notation)
    {
        var into = Names.The(plan.Brewhouse, step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel);
        var upTo = step.VolumeL is { } l ? $" up to {notation.Volume(l)}" : "";
        return step.Spec.Charges.FirstOrDefault(c => c.Kind == ChargeKind.SoftWater) is { } soft
            ? [$"Run {Charges.One(soft, notation)} into {into}, then cold tap water{upTo}.", "Stay with the hose. Read the level when it is still."]
            : [$"Run cold water into {into}{upTo}.", "Stay with the hose. Read the level when it is still."];
    }

    private static ImmutableArray<string> HeatLiquor(PlanStep step, Notation notation, string then) =>
        [$"See that the elements are covered, then heat on{(step.TargetC is { } c ? $", set to {notation.Target(c)}" : "")}.", then];

    private static ImmutableArray<string> DoughIn(PlanStep step, Notation notation) =>
        [$"Stir in {Charges.Grist(step.Spec.Charges, notation)} grist slowly; break every clump.", .. Beside(step, notation), "Wait two minutes, stir, read the temperature."];

    private static ImmutableArray<string> Beside(PlanStep step, Notation notation)
    {
        var others = step.Spec.Charges.RemoveAll(c => c.Kind == ChargeKind.Grist);
        return others.IsEmpty ? [] : [$"Stir in {Charges.All(others, notation)} with it."];
    }

    private static ImmutableArray<string> Lauter(PlanStep step, Notation notation) => step.Spec.SpargeL is > 0
        ? [$"Run off slowly; keep {notation.Volume(step.Spec.SpargeL.Value)} of sparge liquor coming, a hand's width over the bed.", KettleCovered, Stop(step, notation)]
        : ["Run off slowly; no sparge today.", KettleCovered, Stop(step, notation)];

    private const string KettleCovered = "Kettle heat on once its elements are covered.";

    private static string Stop(PlanStep step, Notation notation) => step.VolumeL is { } l
        ? $"Stop when the kettle holds {notation.Volume(l)}; read volume and gravity."
        : "Stop when it only drips; read volume and gravity.";

    private static ImmutableArray<string> CastOut(PlanStep step, Plan plan, Notation notation) =>
        [$"Cooling water on, then run the wort to {Names.The(plan.Brewhouse, step.Spec.To)}; throttle until it runs{At(step.TargetC, notation)}.", "Everything it touches is sanitised. Stop before the trub. Take a gravity sample."];

    private static string What(PlanStep step, string otherwise, Notation notation) =>
        step.Spec.Charges.IsEmpty ? otherwise : Charges.All(step.Spec.Charges, notation);

    private static string Litres(PlanStep step, Notation notation) => Litres(step.VolumeL, notation);

    private static string Litres(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : " the";

    private static string At(double? c, Notation notation) => c is { } value ? " at " + notation.Target(value) : " at the target";
}
