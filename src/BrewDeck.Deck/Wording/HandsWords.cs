using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>What the hands do in each step, said right after its title and without repeating it: short sentences, the most needed first.</summary>
public static class HandsWords
{
    /// <summary>A day that was given up leaves hot vessels behind.</summary>
    /// <param name="hot">Something stands hot: on a day that had hardly begun nothing does.</param>
    public static ImmutableArray<string> GivenUp(bool hot, Notation notation) =>
    [
        notation.Text("All heat and pumps off, at the breaker too; then shut the valves."),
        .. hot ? [notation.Text("It stays scalding for hours: let it cool before you empty and clean.")] : ImmutableArray<string>.Empty,
    ];

    /// <summary>A rehearsed plant leaves nothing behind.</summary>
    public static ImmutableArray<string> ExerciseOver(Notation notation) =>
    [
        notation.Text("It is of the day's beginning alone: nothing is left to do."),
        notation.Text("On a real day all heat and pumps go off now, at the breaker too, and what is hot stays scalding for hours."),
    ];

    /// <summary>From here on liquid burns the skin within seconds or minutes, °C; common practice, no source.</summary>
    internal const double HotC = 45;

    /// <summary>What the day gave, and that the batch goes on.</summary>
    /// <param name="readings">What was read is said before what is reckoned.</param>
    public static ImmutableArray<string> DayOver(Outlook gave, IReadOnlyList<TakenReading> readings, Notation notation) =>
    [
        notation.Text($"{Read(ReadingKind.Volume, gave.FermenterL.P50, readings, notation)} at {Read(ReadingKind.Gravity, gave.OriginalGravitySg.P50, readings, notation)} in the fermenter, {notation.Number(gave.BitternessIbu.P50, "0")} IBU reckoned."),
        notation.Text("q leaves for a new plan, the logbook or this batch's report."),
    ];

    private static string Read(ReadingKind kind, double reckoned, IReadOnlyList<TakenReading> readings, Notation notation)
    {
        var said = ReadingWords.Value(kind, reckoned, notation);
        return readings.LastOrDefault(r => r.Reading.Is(kind, Places.Fermenter)) is { } last
            && ReadingWords.Value(kind, last.Reading.Value, notation) is var read && read != said
            ? notation.Text($"{read} read ({said} reckoned)")
            : said;
    }

    /// <param name="brief">On the deck, where a small screen has seven short lines for it.</param>
    public static ImmutableArray<string> Of(PlanStep step, Plan plan, Notation notation, bool brief = false) =>
        [.. HoseWords.Of(step, plan, notation, brief), .. Does(step, plan, notation, brief)];

    /// <summary>Less liquor than that is none; L.</summary>
    private const double LeastL = 0.1;

    /// <summary>On the deck, once it runs and the hoses are in place.</summary>
    /// <param name="liquorLeftL">Of a lauter, sparge liquor still to come, at 20 °C; null: none is sparged.</param>
    public static ImmutableArray<string> Going(PlanStep step, double? liquorLeftL, Plan plan, Notation notation) => step.Spec.Kind == StepKind.Lauter && liquorLeftL is { } left
        ? [left >= LeastL ? notation.Text($"Slowly.{Some(Litres.Sparge(left, plan), notation)} more liquor, bed covered.") : notation.Text("Slowly. All the liquor is over the bed."), .. Does(step, plan, notation, brief: true)[1..]]
        : Does(step, plan, notation, brief: true);

    /// <summary>With the key that tells the deck.</summary>
    /// <param name="brief">False on a page of its own, which scrolls.</param>
    public static ImmutableArray<string> AtTheDeck(PlanStep step, Plan plan, Notation notation, bool brief = true) =>
        WeighsBags(step) ? [.. Of(step, plan, notation, brief), notation.Text("Short bag, other alpha acid? b: weigh.")] : Of(step, plan, notation, brief);

    /// <summary>Paper has no keys.</summary>
    public static ImmutableArray<string> OnPaper(PlanStep step, Plan plan, Notation notation) =>
        WeighsBags(step) ? [.. Of(step, plan, notation), notation.Text("A short bag, or another alpha acid? Plan anew with it.")] : Of(step, plan, notation);

    private static bool WeighsBags(PlanStep step) => step.Spec is { Kind: StepKind.WeighIn, Charges.IsEmpty: false };

    private static ImmutableArray<string> Does(PlanStep step, Plan plan, Notation notation, bool brief) =>
        Liquor(step, plan, notation, brief) ?? Grain(step, plan, notation, brief) ?? Boil(step, plan, notation) ?? Cold(step, plan, notation) ?? [];

    private static ImmutableArray<string>? Liquor(PlanStep step, Plan plan, Notation notation, bool brief) => step.Spec.Kind switch
    {
        StepKind.CheckFittings => [.. Rings(plan, notation), notation.Text("Close every valve; check hoses, clamps, seals and the false bottom."), notation.Text("Scale, thermometer and hydrometer at hand.")],
        StepKind.WeighIn => WeighIn(step, plan, notation, brief),
        StepKind.TreatWater => WaterWords.Treat(step, notation),
        StepKind.Fill => [.. WaterWords.Soft(step, notation), notation.Text("Stay with the hose. Read the level when it is still.")],
        StepKind.HeatStrike => [HeatOn(step, notation), notation.Text("Stir before you read it.")],
        StepKind.HeatSparge when step.Spec.Label.Length > 0 => [HeatOn(step, notation), notation.Text("Lid on: it is near the boil.")],
        StepKind.HeatSparge => [HeatOn(step, notation), notation.Text("It is held there until the sparge.")],
        StepKind.Drain => [notation.Text("Its heat off first. Let the hot liquor run off through a hose, down to the outlet.")],
        StepKind.MovePlug => Unplugs(step)
            ? [notation.Text("Circuit off first, hands and plug dry; then move the plug."), notation.Text("On again only when the element is covered.")]
            : [notation.Text("One off before the other is on."), notation.Text("On only when the element is covered.")],
        _ => null,
    };

    /// <summary>Where the kettle heats the liquor there is no tank.</summary>
    private static string HeatOffFirst(PlanStep step, Plan plan, Notation notation) => step.Spec.Vessel == plan.Brewhouse.Kettle.Id
        ? notation.Text("Kettle heat off first.")
        : notation.Text("Tank heat off first.");

    private static ImmutableArray<string>? Grain(PlanStep step, Plan plan, Notation notation, bool brief) => step.Spec.Kind switch
    {
        StepKind.PrimePump => [notation.Text("Open the inlet, let the pump fill by itself, bleed it at the outlet."), notation.Text("Start it only when no more air comes.")],
        StepKind.TransferStrike when step.Spec.Label == StepLabels.Liquor =>
            [notation.Text("Heat off in the vessel that empties. Outlet under the surface."), notation.Text("Is the vessel clean and its outlet shut? Heat on only when its elements are covered.")],
        StepKind.TransferStrike => [HeatOffFirst(step, plan, notation) + " " + notation.Text("Outlet under the surface. Measured hot."), notation.Text("Shut the valve, stir, then read the temperature in the tun.")],
        StepKind.DoughIn => [.. plan.Brewhouse.LiftsGrain ? new[] { notation.Text("Grain basket in first, seated and shut below.") } : [], notation.Text("Stir it in slowly; break every clump."), .. Beside(step, notation), notation.Text("Wait two minutes, stir, read the temperature.")],
        StepKind.Rest => step.Spec.Minutes is >= RestReadings.LongMin
            ? [Kept(step, plan, notation), .. Falls(step, plan, notation), notation.Text("Stir at half time and read the temperature in the middle."), .. EndsWithIodine(step, plan, notation)]
            : [Kept(step, plan, notation) + notation.Text(" Read the temperature in the middle."), .. Falls(step, plan, notation)],
        StepKind.Ramp or StepKind.HeatMash when Way(plan) == MashHeating.Coil => CoilWords.Raise(step, plan, notation),
        StepKind.Ramp => [notation.Text("Pump on, then heat on. Spread the return over the bed."), notation.Text($"Heat off{At(step.TargetC, notation)}.")],
        StepKind.HeatMash when step.Spec.Label == StepLabels.Liquor =>
            [notation.Text("Elements covered? Bleed the pump and start it, then heat on. Stir before you read it."), notation.Text($"Heat off{At(step.TargetC, notation)}; the grist comes after.")],
        StepKind.HeatMash => [notation.Text("Pump on, then heat on. Stir now and then."), notation.Text($"Heat off{At(step.TargetC, notation)}.")],
        StepKind.FreeBed => step.Spec.Label switch
        {
            StepLabels.Underlet => [notation.Text("Pumps off, valves shut: the tank's hose onto the tun's outlet, in place of the wort hose."), notation.Text("Let liquor in slowly from below until the bed floats; valves shut, hoses back. Let it settle."), notation.Text("Then open the valve by a hair.")],
            StepLabels.Rake => [notation.Text("Pump off. Cut the upper two thirds of the bed in lines; never touch the false bottom."), notation.Text("Return the first wort on top until it runs clear.")],
            _ => [notation.Text("Pump off, valve shut. Stir nothing."), notation.Text("Then open the valve by half only.")],
        },
        StepKind.TreatMash => [notation.Text("Measure it, stir it in well, wait five minutes, then read the pH again.")],
        StepKind.Infuse => [notation.Text("A little at a time, stirring all the while."), notation.Text("Stop early if the temperature is reached; read it when it is even.")],
        StepKind.PullDecoction => [notation.Text("Stir first, then draw liquid and grain alike, by pump or with a long-handled scoop."), notation.Text("Lid on the tun; it waits at its rest.")],
        StepKind.HeatDecoction => [notation.Text("Elements covered? Then heat on. Stir down to the bottom all the way: it burns on."), notation.Text("Lid off before it boils.")],
        StepKind.BoilDecoction => [notation.Text("Keep stirring. Turn the heat down before it spits.")],
        StepKind.ReturnDecoction => [notation.Text("Heat off. A little at a time into the tun, stirring all the while."), notation.Text("Stop if the temperature is reached; the rest may cool and follow.")],
        StepKind.TransferMash => [notation.Text("Stirrer slow, valve wide open. Rinse the last of the grain after it.")],
        StepKind.LiftBasket => [notation.Text("Heat off. Hook the hoist in before you lift; lift slowly and lock it."), notation.Text("Never reach under a hanging basket. Let it drain, then set it aside.")],
        StepKind.Vorlauf => [(VesselOf(step, plan) is { IsHeated: true } ? notation.Text("Tun heat off. ") : "") + notation.Text("Draw wort gently from under the bed and return it on top until it runs clear.")],
        StepKind.Lauter => Lauter(step, plan, notation, brief),
        StepKind.RunOff => [notation.Text("Open the tun a little, then more; do not let the bed run dry too fast."), notation.Text("Close it when it only drips. Read volume and gravity.")],
        StepKind.BatchSparge => [notation.Text("Stir well, then let it settle.")],
        _ => null,
    };

    private static ImmutableArray<string>? Boil(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        // a vessel that the grain is lifted out of holds all its wort already
        StepKind.AddFirstWortHops => [.. Listed(step, notation), plan.Brewhouse.LiftsGrain ? notation.Text("Into the wort now, as it heats.") : notation.Text("Into the kettle before the wort covers its bottom.")],
        StepKind.HeatToBoil => [.. PumpsOff(step, plan, notation), notation.Text("Heat full on, lid off before it boils. Skim if foam gathers.")],
        StepKind.HotBreak => [notation.Text("Stand by the kettle. When foam climbs, turn the heat down or spray cold water."), notation.Text("Go on when the foam falls back.")],
        StepKind.Boil when step.Spec.Label == StepLabels.Again =>
            [notation.Text("Lid off, heat full on until it boils again."), notation.Text("When the time is up, heat off at the switch.")],
        StepKind.Boil => [Rolling(step, plan, notation), notation.Text("Nothing to do until the time is up."), .. Sanitised(step, plan, notation)],
        StepKind.AddToBoil when step.Spec.Charges.Any(c => c.Kind == ChargeKind.Extract) => [.. Listed(step, notation), .. Sinking(notation)],
        StepKind.AddToBoil => [.. Listed(step, notation), notation.Text("A little at a time: it foams.")],
        StepKind.AddExtract => Sinking(notation),
        StepKind.AddWater when step.Spec.Label == StepLabels.HeatOff =>
            [notation.Text("Heat of the vessel off first. Measure the water; stir it in slowly."), notation.Text("Heat on again only when the temperature is even and read.")],
        StepKind.AddWater when step.Spec.Vessel == Places.Fermenter =>
            [notation.Text("Only water that was boiled and cooled under a lid: tap water brings germs."), notation.Text("Measure it first. Pour it in gently.")],
        StepKind.AddWater when step.Spec.TargetC > 90 => [notation.Text("Boil it first, in a free vessel or on the stove. Measure it; stir it in slowly.")],
        // cold, into wort at or near the boil
        StepKind.AddWater when step.Spec.Unit == UnitProcedure.Boil =>
            [notation.Text("Heat off first: water onto a rolling boil can make it surge."), notation.Text("Measure it; stir it in slowly. Then heat on.")],
        StepKind.AddWater => [notation.Text("Measure it first. Stir it in slowly.")],
        StepKind.SanitiseChiller when plan.Brewhouse.Chiller.IsCoil =>
        [
            notation.Text("Hang the clean coil into the boiling wort, cooling water off."),
            .. plan.Brewhouse.Pumps.IsEmpty ? Array.Empty<string>() : [notation.Text("Boiling wort round through the pump that casts out: it runs on until knock-out.")],
            notation.Text("Sanitise fermenter, hose and what aerates too."),
        ],
        StepKind.SanitiseChiller => [notation.Text("Boiling wort round through pump and chiller, cooling water off: it runs on until knock-out."), notation.Text("Meanwhile sanitise fermenter, hose and what aerates; then space.")],
        StepKind.Clean => Clean(step, plan, notation),
        _ => null,
    };

    private static ImmutableArray<string>? Cold(PlanStep step, Plan plan, Notation notation) => step.Spec.Kind switch
    {
        StepKind.KnockOut => [notation.Text("Heat off at the switch. Read volume and gravity."), .. SteamsOn(plan, notation)],
        StepKind.Whirlpool => [notation.Text("Start it along the wall; stop when the wort turns as one.")],
        StepKind.TransferWort when step.Spec.Label == StepLabels.ToBoil =>
        [
            notation.Text("The dead heat off at its breaker first. Outlet under the surface, hose tied fast."),
            notation.Text("Is the vessel clean and its outlet shut? Heat on only when its elements are covered."),
        ],
        StepKind.TransferWort => [notation.Text("Heat off, inlet along the wall. Stop before the kettle runs dry.")],
        StepKind.AddToWhirlpool => [.. Listed(step, notation), notation.Text("Into the turning wort.")],
        StepKind.Stand => [notation.Text("Lid on. Leave it alone while the trub settles.")],
        StepKind.ChillInKettle => [notation.Text("Cooling water on. Move the wort gently past the coil; leave it still at the end, for the trub to settle."), notation.Text("From here on everything that touches the wort is sanitised.")],
        StepKind.CastOut when plan.Brewhouse.Chiller.IsCoil =>
            [notation.Text("Cooling water off. Draw it gently."), notation.Text("All that it touches is sanitised. Stop before the trub; take a gravity sample.")],
        StepKind.CastOut => [step.TargetC is { } c ? notation.Text($"Cooling water on; throttle to {notation.Target(c)}.") : notation.Text("Cooling water on; throttle the wort."), notation.Text("All that it touches is sanitised. Stop before the trub; take a gravity sample.")],
        StepKind.CoolInFermenter when step.Spec.Label == StepLabels.Room =>
            [notation.Text("Lid shut, airlock on: nothing may fall in, and no yeast yet."), notation.Text("Read it with a sanitised thermometer before you pitch.")],
        StepKind.CoolInFermenter when step.Spec.Label == StepLabels.OwnCooling =>
            [notation.Text($"Its cooling on{At(step.TargetC, notation)}. Lid shut, airlock on; no yeast yet."), notation.Text("Needs no hands: clean down. Read it before you pitch.")],
        StepKind.CoolInFermenter when plan.Brewhouse.Chiller.IsCoil =>
            [notation.Text("Sanitise the coil, then hang it in. Cooling water on; stir with something sanitised."), notation.Text($"Water off{At(step.TargetC, notation)}; lid shut at once.")],
        StepKind.CoolInFermenter =>
            [notation.Text("Sanitise hoses and pump. Draw it from the bottom, give it back under the surface; lid on."), notation.Text($"Cooling water on. Stop{At(step.TargetC, notation)}; lid shut at once.")],
        StepKind.Aerate => [notation.Text("Until a thick foam stands, or with oxygen for a minute: open the bottle slowly, shut it after.")],
        StepKind.Pitch => [notation.Text($"{Names.Sentence(YeastWords.Of(plan, notation))}."), notation.Text($"At {notation.Target(plan.Totals.PitchC)} or below. Close the fermenter and keep it there.")],
        _ => null,
    };

    private static ImmutableArray<string> WeighIn(PlanStep step, Plan plan, Notation notation, bool brief) => step.Spec.Charges.IsEmpty
        ? [notation.Text("Grist, hops and additions, each into its own marked tub.")]
        : [notation.Text("Each into its own tub, marked as below."), .. step.Spec.Charges.Where(IsOfTheDay).GroupBy(c => c.Kind).Select(g => Charges.Weighed(g, brief ? null : plan.Written, notation) + "."), notation.Text($"Yeast: {YeastWords.Amount(plan, notation)}."), .. step.Spec.Charges.All(IsOfTheDay) ? [] : new[] { notation.Text("Dry hops stay shut until their day.") }];

    /// <summary>Hops that go into the fermenter days later are not opened today.</summary>
    private static bool IsOfTheDay(Charge charge) => charge.Use != HopUse.DryHop;

    /// <summary>After a run-off a pump may still draw on an empty vessel.</summary>
    private static IEnumerable<string> PumpsOff(PlanStep step, Plan plan, Notation notation) =>
        plan.Brewhouse.Pumps.IsEmpty || !plan.Steps.Any(s => s.Spec.Kind.RunsOff() && s.Spec.To == step.Spec.Vessel) ? [] : [notation.Text("Pumps off, valves shut.")];

    /// <summary>Where nothing goes in at the end of a piece of the boil, why it ends there.</summary>
    private static IEnumerable<string> Sanitised(PlanStep step, Plan plan, Notation notation) =>
        !plan.Steps.Any(s => s.Spec.Kind == StepKind.SanitiseChiller && s.Spec.AfterStepId == step.Spec.Id) ? []
        : plan.Brewhouse.Chiller.IsCoil ? [notation.Text("Then the chilling coil goes in; it boils on.")]
        : [notation.Text("Then the chiller is sanitised; it boils on.")];

    /// <summary>Above this much of its heat a kettle boils with all of it.</summary>
    private const double Whole = 0.95;

    /// <summary>Left full on, a strong kettle steams off far more than is reckoned.</summary>
    private static string Rolling(PlanStep step, Plan plan, Notation notation) =>
        After(step, plan, step.Spec.Vessel) is { } wort && RollingBoil.HeatShare(PlantSetting.Of(plan.Brewhouse, plan.Choices), step.Spec.Vessel, wort) is < Whole and var share
            ? notation.Text($"Heat down to about {notation.Number(5 * Math.Round(20 * share), "0")} %: a rolling boil, lid off.")
            : notation.Text("Keep a rolling boil, lid off.");

    /// <summary>Less is not worth a word; L.</summary>
    private const double SteamsL = 0.1;

    /// <summary>Between knock-out and cast-out open hot wort gets a little less and a little stronger.</summary>
    private static IEnumerable<string> SteamsOn(Plan plan, Notation notation)
    {
        double Water(StepKind kind) => plan.Steps.LastOrDefault(s => s.Spec.Kind == kind) is { } s
            ? new[] { plan.Brewhouse.Kettle.Id, plan.Brewhouse.Whirlpool.Id }.Distinct().Sum(v => After(s, plan, v)!.Value.WaterKg) + s.After.Vessels[^1].WaterKg + InLine(s.After)
            : double.NaN;
        var litres = Water(StepKind.KnockOut) - Water(StepKind.CastOut);
        return litres >= SteamsL ? [notation.Text($"Until it is cool about {notation.Volume(litres)} more steam off: the wort ends that much stronger.")] : [];
    }

    /// <summary>Water of the wort that stays in hoses, pump and chiller, kg: that did not steam off.</summary>
    private static double InLine(PlantState state) => SugarSolution.MassKg(state.LineFilledL, state.Vessels[^1].Plato, 20) * (1 - state.Vessels[^1].Plato / 100);

    /// <summary>No step heats the water for it.</summary>
    private static IEnumerable<string> Detergent(PlanStep step, Plan plan, Notation notation) =>
        plan.Brewhouse.HotLiquorTank is { IsHeated: true } tank && tank.Id != step.Spec.Vessel
            ? [notation.Text($"Its water: hot tap, stove, or {Names.The(plan.Brewhouse, tank.Id, notation)} filled and heated now, elements covered.")]
            : [notation.Text("Its water: hot from the tap or the stove; the plan has no minutes for that.")];

    // both of the recipe's own sugar and of a remedy's extract: in a kettle with elements it is the same danger
    private static ImmutableArray<string> Sinking(Notation notation) =>
    [
        notation.Text("Heat off first: it sinks, and burns on a hot element."),
        notation.Text("A little at a time, stirring till nothing lies on the bottom: it foams. Then heat on."),
    ];

    /// <summary>" (98 °C)": how hot what is measured in a vessel stands at the end of a step; empty where that is not known.</summary>
    private static string Stands(PlanStep step, Plan plan, string vessel, Notation notation) =>
        After(step, plan, vessel)?.TempC is { } c && double.IsFinite(c)
            ? $" ({notation.Target(c)})"
            : "";

    private static string HeatOn(PlanStep step, Notation notation) =>
        notation.Text($"Elements covered? Then heat on{(step.TargetC is { } c ? notation.Text($", set to {notation.Target(c)}") : "")}.");

    private static ImmutableArray<string> Beside(PlanStep step, Notation notation)
    {
        var others = step.Spec.Charges.RemoveAll(c => c.Kind == ChargeKind.Grist);
        return others.IsEmpty ? [] : [notation.Text($"With it: {Charges.All(others, notation)}.")];
    }

    // what the title already names is not said twice
    private static ImmutableArray<string> Listed(PlanStep step, Notation notation) =>
        step.Spec.Charges.Length <= StepTitles.MostNamed ? [] : [Charges.All(step.Spec.Charges, notation) + "."];

    private static ImmutableArray<string> Lauter(PlanStep step, Plan plan, Notation notation, bool brief) =>
    [
        step.Spec.SpargeL is > 0 && brief ? notation.Text($"Slowly.{Some(Litres.Sparge(step, plan), notation)} liquor, bed covered.")
        : step.Spec.SpargeL is > 0
            ? notation.Text($"Slowly. Keep{Some(Litres.Sparge(step, plan), notation)} sparge liquor coming, a hand's width over the bed.")
            : notation.Text("Slowly. No sparge today."),
        Heats(plan.Brewhouse, step.Spec.SpargeL is > 0, brief, notation),
        // the deck names them with what they should show
        .. brief ? [] : new[] { notation.Text($"Then read volume{Stands(step, plan, step.Spec.To, notation)} and gravity.") },
    ];

    /// <summary>The last rest before the mash-out or the run-off: what has not converted by then stays starch.</summary>
    private static IEnumerable<string> EndsWithIodine(PlanStep step, Plan plan, Notation notation) =>
        plan.Steps.SkipWhile(s => s.Spec.Id != step.Spec.Id).Skip(1).Any(s => s.Spec is { Kind: StepKind.Rest, TargetC: not >= RestReadings.MashOutC }) || step.TargetC >= RestReadings.MashOutC ? [] : [notation.Text("Iodine still turns black at the end? Let it rest on.")];

    /// <summary>The levels at which hands are wanted in the run-off: a brewer who goes away must know them.</summary>
    private static string Heats(Brewhouse house, bool sparges, bool brief, Notation notation) => sparges && house.HotLiquorTank.IsHeated
        ? brief ? notation.Text($"Kettle heat on above {notation.Volume(house.Kettle.CoverL)}; tank heat off below {notation.Volume(house.HotLiquorTank.CoverL)}.") : notation.Text($"Kettle heat on from {notation.Volume(house.Kettle.CoverL)} up (covered); tank heat off from {notation.Volume(house.HotLiquorTank.CoverL)} down.")
        : notation.Text($"Kettle heat on from {notation.Volume(house.Kettle.CoverL)} up (covered).");

    /// <summary>Hands, tools and water go in.</summary>
    private static IEnumerable<string> Dead(PlanStep step, Plan plan, Notation notation) =>
        VesselOf(step, plan) is { Elements.IsEmpty: false } ? [notation.Text("Its heat off and unplugged first.")] : [];

    /// <summary>Where the tun's own heat keeps the rest at its temperature, it has to be on.</summary>
    private static string Kept(PlanStep step, Plan plan, Notation notation) =>
        Way(plan) == MashHeating.Coil ? CoilWords.Kept(step, plan, notation)
            : step.TargetC is { } c && Way(plan) == MashHeating.Direct && After(step, plan, step.Spec.Vessel) is { HoldsTemperature: true }
            ? notation.Text($"Pump on, heat on at {notation.Target(c)}, lid on.")
            : notation.Text("Keep the lid on and the wort moving.");

    /// <summary>A fall by less during a rest changes no beer that anyone would taste; K. Common practice, no source.</summary>
    private const double NoticedFallK = 2;

    private static IEnumerable<string> Falls(PlanStep step, Plan plan, Notation notation) =>
        step.TargetC is { } wanted && After(step, plan, step.Spec.Vessel) is { HoldsTemperature: false, TempC: var end } && end < wanted - NoticedFallK
            ? [notation.Text($"Falls to about {notation.Temp(end)} by its end, unheated: strike warmer, or insulate.")]
            : [];

    /// <summary>How the mash is raised that day.</summary>
    internal static MashHeating Way(Plan plan) => plan.Choices.MashHeating ?? plan.Brewhouse.Habits.MashHeating;

    private static Vessel? VesselOf(PlanStep step, Plan plan) => plan.Brewhouse.Vessels.FirstOrDefault(v => v.Id == step.Spec.Vessel);

    /// <summary>A vessel as the step leaves it; null: it is none of the brewhouse.</summary>
    internal static VesselState? After(PlanStep step, Plan plan, string vessel) =>
        plan.Brewhouse.Vessels.ToList().FindIndex(v => v.Id == vessel) is >= 0 and var at ? step.After.Vessels[at] : null;

    private static ImmutableArray<string> Clean(PlanStep step, Plan plan, Notation notation)
    {
        if (IsMashTun(step, plan))
            return [.. Dead(step, plan, notation), notation.Text("Begin when the boil is calm; keep an ear on the kettle. The spent grain is hot and heavy."), notation.Text("Lift the false bottom, rinse, brush, rinse again.")];
        return step.Spec.Label switch
        {
            StepLabels.Basket => [notation.Text("The spent grain is hot and heavy: empty it in parts."), notation.Text("Rinse and brush the basket.")],
            StepLabels.Chiller => [notation.Text("Flush with hot detergent, then the other way, then with clean water. Drain it.")],
            StepLabels.Down => [notation.Text("Switch off and unplug. Rinse hoses, pump and floor; hang the hoses to drain.")],
            _ => [.. Dead(step, plan, notation), notation.Text("Empty, rinse, clean with hot detergent, rinse until nothing is slippery."), .. Detergent(step, plan, notation), notation.Text("Leave valves open to dry.")],
        };
    }

    internal static bool IsMashTun(PlanStep step, Plan plan) =>
        plan.Brewhouse is { LiftsGrain: false } house && house.LauterTun.Id == step.Spec.Vessel;

    private static ImmutableArray<string> Rings(Plan plan, Notation notation) =>
        plan.Brewhouse.Vessels.FirstOrDefault(v => v.RingsOn > 0) is { } raised
            ? [notation.Text($"Put {(raised.RingsOn == 1 ? notation.Text("one ring") : notation.Text($"{raised.RingsOn} rings"))} on {Names.The(plan.Brewhouse, raised.Id, notation)} and clamp them; fill a little and look for drips.")]
            : [];

    /// <summary>A plug goes from socket to socket; otherwise a switch is enough.</summary>
    internal static bool Unplugs(PlanStep step) => step.Spec.Minutes is not < 1;

    /// <summary>"boiling water", "hot water", "cold water".</summary>
    internal static string Water(double? c, Notation notation) => c switch
    {
        >= 95 => notation.Text("boiling water"),
        >= 40 => notation.Text("hot water"),
        _ => notation.Text("cold water"),
    };

    private static string Some(double? l, Notation notation) => l is { } value ? " " + notation.Volume(value) : notation.Text(" the");

    private static string At(double? c, Notation notation) => c is { } value ? notation.Text(" at ") + notation.Target(value) : notation.Text(" at the target");
}
