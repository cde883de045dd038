using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Ways back to plan, with what they cost and what they give.</summary>
public static class RemedyWords
{
    private const double NearLimit = 0.9;

    public static string Title(Remedy remedy, Brewhouse brewhouse, Notation notation) => remedy.Kind switch
    {
        RemedyKind.LeaveIt => notation.Text("Leave it"),
        RemedyKind.HeatMash when remedy.Insert is [{ Label: StepLabels.Liquor }, ..] => notation.Text($"Heat the liquor in the tun for {Durations.Short(remedy.Amount * 60)}"),
        RemedyKind.HeatMash => notation.Text($"Heat the mash for {Durations.Short(remedy.Amount * 60)}"),
        RemedyKind.AddHotWater => notation.Text($"Add {notation.Volume(remedy.Amount)} water, boiled on the stove, to {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.AddColdWater => notation.Text($"Add {notation.Volume(remedy.Amount)} cold water to {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.FillUp => notation.Text($"Run {notation.Volume(remedy.Amount)} more into {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.RunOver => notation.Text($"Run the missing {notation.Volume(remedy.Amount)} strike liquor into {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.BoilLonger => notation.Text($"Boil {Durations.Short(remedy.Amount * 60)} longer"),
        RemedyKind.BoilShorter => notation.Text($"Boil {Durations.Short(remedy.Amount * 60)} less"),
        RemedyKind.Dilute when remedy.Vessel == Places.Fermenter => notation.Text($"Dilute with {notation.Volume(remedy.Amount)} water, boiled and cooled"),
        RemedyKind.Dilute => notation.Text($"Dilute with {notation.Volume(remedy.Amount)} water"),
        RemedyKind.AddExtract => notation.Text($"Add {notation.Mass(remedy.Amount)} dried malt extract"),
        RemedyKind.HeatLiquor => notation.Text($"Heat the liquor on to {notation.Temp(remedy.Amount)}"),
        RemedyKind.AddAcid => notation.Text($"Add {notation.Number(remedy.Amount, "0.0")} mL acid to the mash"),
        RemedyKind.AddSoda => notation.Text($"Add {notation.Grams(remedy.Amount)} baking soda to the mash"),
        RemedyKind.RestBed => notation.Text($"Let the bed rest for {Durations.Short(remedy.Amount * 60)}; then at {RunsAt(remedy, brewhouse, notation)}"),
        RemedyKind.Underlet => notation.Text($"Underlet the bed with {notation.Volume(remedy.Amount)} hot liquor, {BedStands(remedy)}; then at {RunsAt(remedy, brewhouse, notation)}"),
        RemedyKind.RakeBed => notation.Text($"Cut the bed, let it run clear again, {BedStands(remedy)}; then at {RunsAt(remedy, brewhouse, notation)}"),
        RemedyKind.HeatElsewhere => notation.Text($"Pump {notation.Volume(remedy.Amount)} over and heat it in {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.BoilElsewhere => notation.Text($"Pump the wort over and boil it in {Names.The(brewhouse, remedy.Vessel, notation)}"),
        RemedyKind.Infuse when remedy.NoMashOut => notation.Text($"Raise the mash with {notation.Volume(remedy.Amount)} hot liquor, but no mash-out"),
        RemedyKind.Infuse => notation.Text($"Raise the mash with {notation.Volume(remedy.Amount)} hot liquor"),
        RemedyKind.RestOn when !remedy.Replace.Any(s => s.Kind == StepKind.Rest) => notation.Text("Leave out the mash-out"),
        RemedyKind.RestOn when remedy.Amount > 0 => notation.Text($"Heat the mash no further; let it rest {Durations.Short(remedy.Amount * 60)} longer"),
        RemedyKind.RestOn => notation.Text("Heat the mash no further"),
        RemedyKind.OtherCircuit => notation.Text($"Once it is dry, plug it into circuit {remedy.CircuitId}"),
        RemedyKind.RunOffMore => notation.Text($"Run off {notation.Volume(remedy.Amount)} more"),
        RemedyKind.RunOffLess => notation.Text($"Run off {notation.Volume(remedy.Amount)} less: a smaller batch"),
        RemedyKind.AddNow => notation.Text($"Put it in now: {Missed(remedy, notation)}"),
        RemedyKind.Reweigh when remedy.Replace.IsEmpty => notation.Text($"Put it in now, weighed anew: {Missed(remedy, notation)}"),
        RemedyKind.Reweigh => notation.Text($"Weigh the hops to come anew: {Hops(remedy, notation)}"),
        RemedyKind.SetChiller => notation.Text($"Set the chiller to {notation.Temp(remedy.Amount)} for the rest"),
        RemedyKind.ChillFermenter => brewhouse.Chiller.IsCoil
            ? notation.Text($"Hang the sanitised coil into the fermenter, down to {notation.Temp(remedy.Amount)}")
            : notation.Text($"Pump the wort through the chiller once more, down to {notation.Temp(remedy.Amount)}"),
        RemedyKind.WaitForRoom => notation.Text($"Wait with the yeast until the room has brought it to {notation.Temp(remedy.Amount)}"),
        RemedyKind.OwnCooling => notation.Text($"Wait with the yeast until the fermenter's cooling has brought it to {notation.Temp(remedy.Amount)}"),
        _ => Names.Plainly(remedy.Kind.ToString()),
    };

    /// <summary>How long nothing runs off; the rest of what a way costs is its slower flow.</summary>
    private static string BedStands(Remedy remedy) => Durations.Short(60 * (remedy.Insert.Select(s => s.Minutes).FirstOrDefault() ?? 0));

    /// <summary>"90 % of its usual flow": what tells the ways to free a bed apart.</summary>
    private static string RunsAt(Remedy remedy, Brewhouse brewhouse, Notation notation) =>
        notation.Text($"{notation.Number(100 * (remedy.Replace.Select(s => s.FlowLPerMin).FirstOrDefault(f => f is > 0) ?? 0) / brewhouse.Habits.RunoffLPerMin, "0")} % of its usual flow");

    private static string Missed(Remedy remedy, Notation notation) => remedy.Insert is [{ Charges: { Length: > 0 and <= StepTitles.MostNamed } charges }, ..]
        ? Charges.All(charges, notation)
        : notation.Grams(remedy.Amount);

    /// <summary>Each on its own while they fit a line, else each kind: they are weighed one by one.</summary>
    private static string Hops(Remedy remedy, Notation notation)
    {
        ImmutableArray<Charge> hops = [.. remedy.Replace.Where(s => s.Kind != StepKind.WeighIn).SelectMany(s => s.Charges).Where(c => c.Kind == ChargeKind.Hop)];
        if (hops.Length > StepTitles.MostNamed)
            hops = [.. hops.GroupBy(c => c.Name).Select(g => g.First() with { Amount = g.Sum(c => c.Amount) })];
        return hops.Length <= StepTitles.MostNamed ? Charges.All(hops, notation) : notation.Text($"{notation.Grams(remedy.Amount)} in all");
    }

    /// <summary>"bitterness 13 IBU instead of 31 IBU": what leaving it gives against the plan; empty: only the time is off.</summary>
    public static string OffPlan(ImmutableArray<Remedy> ranked, Notation notation, int most = 2) =>
        string.Join(", ", Remedies.OffPlan(ranked).Where(s => FigureWords.Reads(s, notation)).Take(most)
            .Select(s => notation.Text($"{FigureWords.Name(s.Figure, notation)} {FigureWords.Value(s.Figure, s.After, notation)} instead of {FigureWords.Value(s.Figure, s.Before, notation)}")));

    /// <summary>What it is, whatever its amount.</summary>
    public static string Name(RemedyKind kind, Notation notation) => kind switch
    {
        RemedyKind.HeatMash => notation.Text("Heat the mash"),
        RemedyKind.AddHotWater => notation.Text("Add boiling water to the mash"),
        RemedyKind.RestBed => notation.Text("Let the bed rest, then run off slowly"),
        RemedyKind.Underlet => notation.Text("Underlet the bed with hot liquor"),
        RemedyKind.RakeBed => notation.Text("Cut the bed and let it run clear again"),
        RemedyKind.OtherCircuit => notation.Text("Plug it into another circuit"),
        RemedyKind.BoilElsewhere => notation.Text("Boil it in another vessel"),
        RemedyKind.LeaveIt => notation.Text("Leave it"),
        _ => Names.Sentence(Names.Spaced(kind.ToString())),
    };

    /// <summary>"12 min more, 3.0 L", "8 min less", "takes no time"; of leaving it nothing.</summary>
    public static string Cost(Remedy remedy, Notation notation)
    {
        // boiled while the mash goes on: the day need not wait for it, the hands do
        var minutes = remedy.Kind == RemedyKind.LeaveIt ? ""
            : remedy is { Kind: RemedyKind.AddHotWater, Minutes: < 0.5, Insert: [{ HandsS: var handsS }, ..] } ? notation.Text($"{Durations.Short(handsS)} at the stove, the day no longer")
            : Math.Abs(remedy.Minutes) < 0.5
            ? remedy is { Kind: RemedyKind.Dilute, Vessel: Places.Fermenter } ? notation.Text("takes no time where such water stands ready") : notation.Text("takes no time")
            : $"{Durations.Short(Math.Abs(remedy.Minutes) * 60)} {(remedy.Minutes > 0 ? notation.Text("more") : notation.Text("less"))}";
        return string.Join(", ", new[] { minutes, Watts(remedy, notation), Bound(remedy, notation) }.Where(p => p.Length > 0));
    }

    /// <summary>What it changes, each with its band; for leaving it, what then comes out.</summary>
    public static string Gives(Remedy remedy, Notation notation)
    {
        if (remedy.Never is { } never)
            return remedy.Ahead ? notation.Text("it will not boil; ask again once all the wort is in the kettle, for a way may open then") : Never(never, notation);
        var moved = string.Join(", ", remedy.Gives.Where(s => FigureWords.Reads(s, notation)).Select(s => FigureWords.Moved(s, notation) + Band(s, notation)));
        if (moved.Length > 0 && remedy.Partly)
            return notation.Text("part of the way: ") + moved;
        if (moved.Length > 0)
            return remedy.Kind == RemedyKind.LeaveIt ? notation.Text("against the plan ") + moved : moved;
        return remedy.Kind == RemedyKind.LeaveIt ? notation.Text("the wort comes out as planned") : notation.Text("changes nothing else");
    }

    /// <summary>What comes of a heat-up that never ends, or of a boil without heat: no number.</summary>
    private static string Never(StepKind kind, Notation notation) => kind switch
    {
        StepKind.Lauter or StepKind.RunOff => notation.Text("nothing runs off, and the day does not end"),
        StepKind.HeatToBoil or StepKind.HotBreak or StepKind.Boil =>
            notation.Text("it does not boil: heat off, lid on, and cool it, for warm wort sours within hours; a qualified person mends the heat, then boil it in full"),
        StepKind.HeatDecoction or StepKind.BoilDecoction => notation.Text("the decoction does not boil; a qualified person mends the heat"),
        StepKind.Ramp or StepKind.HeatMash => notation.Text("the mash does not get there; end the step by hand, and it rests at what it has"),
        _ => notation.Text("the liquor does not get there; a qualified person mends the heat"),
    };

    /// <summary>Of what is drunk, how sure it is: the other figures would only push it out of the line.</summary>
    private static string Band(Shift shift, Notation notation) =>
        shift is { Figure: "original_gravity_sg" or "fermenter_l" or "mash_ph" or "mash_c" or "pitch_c", Low: { } low, High: { } high }
            ? $" ({FigureWords.Value(shift.Figure, low, notation)}..{FigureWords.Value(shift.Figure, high, notation)})"
            : "";

    private static string Watts(Remedy remedy, Notation notation) => remedy.PowerW is { } watts ? notation.Power(watts) : "";

    /// <summary>Only what comes near its limit is worth a word.</summary>
    private static string Bound(Remedy remedy, Notation notation) => remedy.Closest switch
    {
        { Unit: "L" } l when l.Value > NearLimit * l.Bound && LimitName.FullestOf(l.Name) is { } vessel => notation.Text($"{Names.Plainly(vessel)} {notation.Volume(l.Value)} of {notation.Volume(l.Bound)}"),
        { Unit: "kW" } l => notation.Text($"{notation.Power(1000 * l.Value)} of {notation.Power(1000 * l.Bound)}"),
        _ => "",
    };
}
