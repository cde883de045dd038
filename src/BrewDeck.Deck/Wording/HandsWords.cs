using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What the hands do in each step, said right after its title and without repeating it: short sentences, the most needed first.</summary>
public static class HandsWords
{
    /// <summary>A day that was given up leaves hot vessels behind.</summary>
    public static ImmutableArray<string> GivenUp { get; } =
        ["All heat and pumps off, at the breaker too; then shut the valves.", "It stays scalding for hours: let it cool before you empty and clean."];

    public static ImmutableArray<string> Of(PlanStep step, Plan plan, Notation notation) =>
        [.. HoseWords.Of(step, plan), .. Does(step, plan, notation)];

    private static ImmutableArray<string> Does(PlanStep step, Plan plan, Notation notation) =>
        Liquor(step, plan, notation) ?? Grain(step, plan, notation) ?? Boil(step, plan, notation) ?? Cold(step, plan, notation) ?? [];

    private static ImmutableArray<string>? Liquor(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => [.. Rings(plan), "Close every valve; check hoses, clamps, seals and the false bottom.", "Scale, thermometer and hydrometer at hand."],
        StepKind.WeighIn => WeighIn(step, notation),
        StepKind.TreatWater => WaterWords.Treat(step, notation),
        StepKind.Fill => [.. WaterWords.Soft(step, notation), "Stay with the hose. Read the level when it is still."],
        StepKind.HeatStrike => [HeatOn(step, notation), "Stir before you read it."],
        StepKind.HeatSparge when step.Spec.Label.Length > 0 => [HeatOn(step, notation), "Lid on: it is near the boil."],
        StepKind.HeatSparge => [HeatOn(step, notation), "It is held there until the sparge."],
        StepKind.MovePlug => Unplugs(step)
            ? ["Circuit off first, hands and plug dry; then plug over.", "On again only when what it heats is covered."]
            : ["One off before the other is on.", "On only when what it heats is covered."],
        _ => null,
    };

    private static ImmutableArray<string>? Grain(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.PrimePump => ["Open the inlet, let the pump fill by itself, bleed it at the outlet.", "Start it only when no more air comes."],
        StepKind.TransferStrike => ["Tank heat off first. Outlet under the surface. Shut the valve, then read the temperature."],
        StepKind.DoughIn => ["Stir it in slowly; break every clump.", .. Beside(step, notation), "Wait two minutes, stir, read the temperature."],
        StepKind.Rest => step.Spec.Minutes is >= 20
            ? ["Keep the lid on and the wort moving.", "Stir at half time and read the temperature in the middle."]
            : ["Keep the lid on and the wort moving. Read the temperature in the middle."],
        StepKind.Ramp => ["Pump on, then heat on. Spread the return over the bed.", $"Heat off{At(step.TargetC, notation)}."],
        StepKind.HeatMash => ["Pump on, then heat on. Stir now and then.", $"Heat off{At(step.TargetC, notation)}."],
        StepKind.FreeBed => step.Spec.Label switch
        {
            "underlet" => ["Pump off. Let liquor in slowly from under the false bottom until the bed floats.", "Wait until it has settled; then open the valve by a hair."],
            "rake" => ["Pump off. Cut the upper two thirds of the bed in lines; never touch the false bottom.", "Return the first wort on top until it runs clear."],
            _ => ["Pump off, valve shut. Stir nothing.", "Then open the valve by half only."],
        },
        StepKind.TreatMash => ["Measure it, stir it in well, wait five minutes, then read the pH again."],
        StepKind.Infuse => ["A little at a time, stirring all the while.", "Stop early if the temperature is reached; read it when it is even."],
        StepKind.PullDecoction => ["Stir first, then draw liquid and grain alike, by pump or with a long-handled scoop.", "Lid on the tun; it waits at its rest."],
        StepKind.HeatDecoction => ["Elements covered? Then heat on. Stir down to the bottom all the way: it burns on.", "Lid off before it boils."],
        StepKind.BoilDecoction => ["Keep stirring. Turn the heat down before it spits."],
        StepKind.ReturnDecoction => ["Heat off. A little at a time into the tun, stirring all the while.", "Stop if the temperature is reached; the rest may cool and follow."],
        StepKind.TransferMash => ["Stirrer slow, valve wide open. Rinse the last of the grain after it."],
        StepKind.LiftBasket => ["Heat off. Hook the hoist in before you lift; lift slowly and lock it.", "Never reach under a hanging basket. Let it drain, then set it aside."],
        StepKind.Vorlauf => ["Draw wort gently from under the bed and return it on top until it runs clear."],
        StepKind.Lauter => Lauter(step, plan, notation),
        StepKind.RunOff => ["Open the tun a little, then more; do not let the bed run dry too fast.", "Close it when it only drips. Read volume and gravity."],
        StepKind.BatchSparge => ["Stir well, then let it settle."],
        _ => null,
    };

    private static ImmutableArray<string>? Boil(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.AddFirstWortHops => [.. Listed(step, notation), "Into the kettle before the wort covers its bottom."],
        StepKind.HeatToBoil => ["Heat full on, lid off before it boils. Skim if foam gathers."],
        StepKind.HotBreak => ["Stand by the kettle. When foam climbs, turn the heat down or spray cold water.", "Go on when the foam falls back."],
        StepKind.Boil => ["Keep a rolling boil, lid off. Nothing to do until the time is up."],
        StepKind.AddToBoil => [.. Listed(step, notation), "A little at a time: it foams."],
        StepKind.AddExtract => ["Heat off. Stir until nothing sticks to the bottom, then heat on."],
        StepKind.AddWater => ["Measure it first. Stir it in slowly."],
        StepKind.SanitiseChiller => ["Run boiling wort through pump and chiller and back into the kettle, cooling water off.", "Let it run on until knock-out."],
        StepKind.Clean => Clean(step, plan),
        _ => null,
    };

    private static ImmutableArray<string>? Cold(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.KnockOut => ["Heat off at the switch. Read volume and gravity."],
        StepKind.Whirlpool => ["Start it along the wall; stop when the wort turns as one."],
        StepKind.TransferWort => ["Heat off, inlet along the wall. Stop before the kettle runs dry."],
        StepKind.AddToWhirlpool => [.. Listed(step, notation), "Into the turning wort."],
        StepKind.Stand => ["Lid on. Leave it alone while the trub settles."],
        StepKind.ChillInKettle => ["Cooling water on. Move the wort gently past the coil.", "From here on everything that touches the wort is sanitised."],
        StepKind.CastOut => [$"Cooling water on; throttle the wort until it runs{At(step.TargetC, notation)}.", "All that it touches is sanitised. Stop before the trub; take a gravity sample."],
        StepKind.Aerate => ["Until a thick foam stands, or oxygen for a minute."],
        StepKind.Pitch => [$"{Names.Sentence(plan.Recipe.Yeast.Name)} at {notation.Target(plan.Totals.PitchC)} or below. Close the fermenter."],
        _ => null,
    };

    private static ImmutableArray<string> WeighIn(PlanStep step, Notation notation) => step.Spec.Charges.IsEmpty
        ? ["Grist, hops and additions, each into its own marked tub."]
        : ["Each into its own marked tub.", .. step.Spec.Charges.GroupBy(c => c.Kind).Select(g => Charges.All([.. g], notation) + "."), "A short bag, or another alpha acid? Tell it with b."];

    private static string HeatOn(PlanStep step, Notation notation) =>
        $"Elements covered? Then heat on{(step.TargetC is { } c ? $", set to {notation.Target(c)}" : "")}.";

    private static ImmutableArray<string> Beside(PlanStep step, Notation notation)
    {
        var others = step.Spec.Charges.RemoveAll(c => c.Kind == ChargeKind.Grist);
        return others.IsEmpty ? [] : [$"With it {Charges.All(others, notation)}."];
    }

    // what the title already names is not said twice
    private static ImmutableArray<string> Listed(PlanStep step, Notation notation) =>
        step.Spec.Charges.Length <= StepTitles.MostNamed ? [] : [Charges.All(step.Spec.Charges, notation) + "."];

    private static ImmutableArray<string> Lauter(PlanStep step, Plan plan, Notation notation) =>
    [
        step.Spec.SpargeL is > 0
            ? $"Slowly. Keep{Some(Litres.Sparge(step, plan), notation)} sparge liquor coming, a hand's width over the bed."
            : "Slowly. No sparge today.",
        "Kettle heat on once its elements are covered; tank heat off before they show.",
        "Then read volume and gravity.",
    ];

    private static ImmutableArray<string> Clean(PlanStep step, Plan plan)
    {
        if (IsMashTun(step, plan))
            return ["The spent grain is hot and heavy. Keep an ear on the kettle.", "Lift the false bottom, rinse, brush, rinse again."];
        return step.Spec.Label switch
        {
            "basket" => ["The spent grain is hot and heavy: empty it in parts.", "Rinse and brush the basket."],
            "chiller" => ["Flush with hot detergent, then the other way, then with clean water. Drain it."],
            "down" => ["Switch off and unplug. Rinse hoses, pump and floor; hang the hoses to drain."],
            _ => ["Empty, rinse, clean with hot detergent, rinse until nothing is slippery.", "Leave valves open to dry."],
        };
    }

    internal static bool IsMashTun(PlanStep step, Plan plan) =>
        plan.Brewhouse is { LiftsGrain: false } house && house.LauterTun.Id == step.Spec.Vessel;

    private static ImmutableArray<string> Rings(Plan plan) =>
        plan.Brewhouse.Vessels.FirstOrDefault(v => v.RingsOn > 0) is { } raised
            ? [$"Put {(raised.RingsOn == 1 ? "one ring" : $"{raised.RingsOn} rings")} on {Names.The(plan.Brewhouse, raised.Id)} and clamp them; fill a little and look for drips."]
            : [];

    /// <summary>A plug goes from socket to socket; otherwise a switch is enough.</summary>
    internal static bool Unplugs(PlanStep step) => step.Spec.Minutes is not < 1;

    /// <summary>"boiling water", "hot water", "cold water".</summary>
    internal static string Water(double? c) => c switch
    {
        >= 95 => "boiling water",
        >= 40 => "hot water",
        _ => "cold water",
    };

    private static string Some(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : " the";

    private static string At(double? c, Notation notation) => c is { } value ? " at " + notation.Target(value) : " at the target";
}
