using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;

namespace BrewDeck.Deck.Wording;

/// <summary>Mishaps of a rehearsal: what there is to see or hear, what hands can do, and the usual cautions.</summary>
public static class MishapWords
{
    public static string Name(MishapKind kind, Notation notation) => kind switch
    {
        MishapKind.ColdStrike => notation.Text("cold strike"),
        MishapKind.ThickMash => notation.Text("thick mash"),
        MishapKind.StuckBed => notation.Text("stuck bed"),
        MishapKind.TrippedCircuit => notation.Text("tripped circuit"),
        MishapKind.FailedElement => notation.Text("failed element"),
        MishapKind.PumpLostPrime => notation.Text("pump lost prime"),
        MishapKind.BoilOver => notation.Text("boil-over"),
        MishapKind.WrongWeighIn => notation.Text("wrong weigh-in"),
        MishapKind.SlowChiller => notation.Text("slow chiller"),
        MishapKind.MisreadHydrometer => notation.Text("misread hydrometer"),
        _ => notation.Text("power cut of the laptop"),
    };

    public static string Severity(Severity severity, Notation notation) => severity switch
    {
        Core.Rehearsing.Severity.Mild => notation.Text("mild"),
        Core.Rehearsing.Severity.Severe => notation.Text("severe"),
        _ => notation.Text("plain"),
    };

    /// <summary>What a brewer would see or hear: never the name of what is wrong.</summary>
    public static string Sign(Sign sign, Brewhouse brewhouse, Notation notation) => sign is { Kind: MishapKind.BoilOver, Worse: true }
        ? notation.Text("Foam and wort run over the rim of the kettle: stand back.")
        : Sign(sign.Kind, sign.About, brewhouse, notation);

    private static string Sign(MishapKind kind, string about, Brewhouse brewhouse, Notation notation) => kind switch
    {
        MishapKind.ColdStrike => notation.Text($"The dial of {Names.The(brewhouse, about, notation)} falls as the liquor moves, and the tun reads low. Read it."),
        MishapKind.ThickMash => notation.Text("The paddle stands up in the mash, and there are dry lumps; the liquor tank's glass stands too high."),
        MishapKind.StuckBed => notation.Text("The run-off thins to a trickle, and the pump's hose pulls flat."),
        MishapKind.TrippedCircuit => notation.Text($"A click, and the heater's lamp is out: the breaker of circuit {about} has tripped. Its plug is wet."),
        MishapKind.FailedElement => notation.Text($"{Names.Sentence(Names.The(brewhouse, about, notation))} sings less, and its ammeter stands far below the usual."),
        MishapKind.PumpLostPrime => notation.Text("The pump whines, and little or nothing moves in the hose."),
        MishapKind.BoilOver => notation.Text("Foam climbs, a hand's width below the rim of the kettle."),
        MishapKind.WrongWeighIn => notation.Text("A sack that should be empty is not: some of the grist never went in."),
        MishapKind.SlowChiller => notation.Text("The wort valve is nearly shut, and the cooling water leaves as a thin hot stream."),
        MishapKind.MisreadHydrometer => notation.Text("The refractometer is broken; the hydrometer floats in a jar too hot to hold."),
        _ => notation.Text("The laptop was off; the brew went on alone."),
    };

    public static string Act(HandAct act, Notation notation) => act switch
    {
        HandAct.LeaveIt => notation.Text("Leave it as it is"),
        HandAct.PumpOver => notation.Text("Pump over the liquor that stayed behind, and stir"),
        HandAct.RakeBed => notation.Text("Pump off, tun shut; loosen the bed with the rake, let it settle"),
        HandAct.RunSlower => notation.Text("Half close the run-off and wait"),
        HandAct.ResetBreaker => notation.Text("Switch the breaker on with the plug wet: it may kill"),
        HandAct.DryAndReset => notation.Text("Breaker off, unplug, dry plug and socket; plug in, breaker on"),
        HandAct.CoverKettle => notation.Text("Cover most of the kettle, so that the remaining heat boils it"),
        HandAct.PrimePump => notation.Text("Stop the pump, fill its line, start it again"),
        HandAct.CarryByJug => notation.Text("Carry it over by jug"),
        HandAct.TurnDown => notation.Text("Heat down, cold water on the foam; up again when it has fallen"),
        HandAct.AddRestOfGrist => notation.Text("Stir in the rest of the grist"),
        HandAct.FlushChiller => notation.Text("Stop the wort, flush the water side backwards, tap fully open"),
        HandAct.RunWarmer => notation.Text("Let the wort out of the chiller warmer"),
        HandAct.CoolSample => notation.Text("Cool the sample to 20 °C, then read it"),
        _ => Names.Plainly(act.ToString()),
    };

    public static string Answer(Answer answer, Notation notation) => answer switch
    {
        { Act: { } act } => Act(act, notation),
        { Remedy: { } remedy } => notation.Text($"{RemedyWords.Name(remedy, notation)} (remedy)"),
        _ => notation.Text("Go on from the record"),
    };

    /// <summary>What holds whatever is chosen; empty: nothing beyond the cautions.</summary>
    public static ImmutableArray<string> Rules(MishapKind kind, Notation notation) => kind switch
    {
        MishapKind.TrippedCircuit => TroubleWords.OfCurrent(notation),
        MishapKind.StuckBed => [notation.Text("Pumps off first: the pull breaks the false bottom, and the liquor fills the tun.")],
        MishapKind.FailedElement => [notation.Text("f reports it; r then shows whether another vessel boils it, or whether the day is to be given up.")],
        MishapKind.SlowChiller => [notation.Text("The wort side is sanitised: no tap water into it.")],
        MishapKind.BoilOver => [notation.Text("Afterwards read the kettle (t): what went over is gone.")],
        _ => [],
    };

    /// <summary>Dangers of what is wrong and of mending it.</summary>
    public static Cautions CautionsOf(MishapKind kind) => kind switch
    {
        MishapKind.TrippedCircuit => Cautions.MainsNearWater | Cautions.Scald,
        MishapKind.FailedElement => Cautions.DryFire | Cautions.MainsNearWater | Cautions.Steam,
        MishapKind.BoilOver => Cautions.BoilOver | Cautions.Scald,
        MishapKind.PumpLostPrime => Cautions.Pressure | Cautions.Scald,
        MishapKind.SlowChiller => Cautions.Pressure | Cautions.Scald,
        MishapKind.WrongWeighIn => Cautions.Lifting | Cautions.Scald,
        MishapKind.PowerCut => Cautions.DryFire | Cautions.BoilOver,
        _ => Cautions.Scald,
    };
}
