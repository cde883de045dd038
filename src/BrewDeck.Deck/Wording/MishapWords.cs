using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;

namespace BrewDeck.Deck.Wording;

/// <summary>Mishaps of a rehearsal: what there is to see or hear, what hands can do, and the usual cautions.</summary>
public static class MishapWords
{
    public static string Name(MishapKind kind) => kind switch
    {
        MishapKind.ColdStrike => "cold strike",
        MishapKind.ThickMash => "thick mash",
        MishapKind.StuckBed => "stuck bed",
        MishapKind.TrippedCircuit => "tripped circuit",
        MishapKind.FailedElement => "failed element",
        MishapKind.PumpLostPrime => "pump lost prime",
        MishapKind.BoilOver => "boil-over",
        MishapKind.WrongWeighIn => "wrong weigh-in",
        MishapKind.SlowChiller => "slow chiller",
        MishapKind.MisreadHydrometer => "misread hydrometer",
        _ => "power cut of the laptop",
    };

    public static string Severity(Severity severity) => severity switch
    {
        Core.Rehearsing.Severity.Mild => "mild",
        Core.Rehearsing.Severity.Severe => "severe",
        _ => "plain",
    };

    /// <summary>What a brewer would see or hear: never the name of what is wrong.</summary>
    /// <param name="about">Vessel or circuit that it shows at.</param>
    public static string Sign(MishapKind kind, string about, Brewhouse brewhouse) => kind switch
    {
        MishapKind.ColdStrike => $"The dial of {Names.The(brewhouse, about)} falls as the liquor moves, and the mash reads low. Read it.",
        MishapKind.ThickMash => "The paddle stands up in the mash, and there are dry lumps; the liquor tank's glass stands too high.",
        MishapKind.StuckBed => "The run-off thins to a trickle, and the pump's hose pulls flat.",
        MishapKind.TrippedCircuit => $"A click, and the heater's lamp is out: the breaker of circuit {about} has fallen. Its plug is wet.",
        MishapKind.FailedElement => $"{Names.Sentence(Names.The(brewhouse, about))} sings less, and its ammeter stands far below the usual.",
        MishapKind.PumpLostPrime => "The pump whines, and nothing moves in the hose.",
        MishapKind.BoilOver => "Foam climbs, a hand's width below the rim of the kettle.",
        MishapKind.WrongWeighIn => "A sack that should be empty is not: some of the grist never went in.",
        MishapKind.SlowChiller => "The wort valve is nearly shut, and the cooling water leaves as a thin hot stream.",
        MishapKind.MisreadHydrometer => "The refractometer is broken; the hydrometer floats in a jar too hot to hold.",
        _ => "The laptop was off; the brew went on alone.",
    };

    public static string Act(HandAct act) => act switch
    {
        HandAct.LeaveIt => "Leave it as it is",
        HandAct.PumpOver => "Pump over the liquor that stayed behind, and stir",
        HandAct.RakeBed => "Close the tun, loosen the bed with the rake, let it settle",
        HandAct.RunSlower => "Half close the run-off and wait",
        HandAct.ResetBreaker => "Switch the breaker on again",
        HandAct.DryAndReset => "Unplug, dry the plug, then switch the breaker on",
        HandAct.CoverKettle => "Cover most of the kettle, so that the heat left boils it",
        HandAct.PrimePump => "Stop the pump, fill its line, start it again",
        HandAct.CarryByJug => "Carry it over by jug",
        HandAct.TurnDown => "Heat down, cold water on the foam",
        HandAct.AddRestOfGrist => "Stir in the rest of the grist",
        HandAct.FlushChiller => "Stop, flush the chiller backwards, tap fully open",
        HandAct.RunWarmer => "Let the wort out of the chiller warmer",
        HandAct.CoolSample => "Cool the sample to 20 °C, then read it",
        _ => Names.Plainly(act.ToString()),
    };

    public static string Answer(Answer answer) => answer switch
    {
        { Act: { } act } => Act(act),
        { Remedy: { } remedy } => Names.Sentence(Names.Spaced(remedy.ToString())),
        _ => "Go on from the record",
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
