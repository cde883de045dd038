namespace BrewDeck.Core.Rehearsing;

/// <summary>What hands can do about a mishap, beyond the run sheet and its remedies.</summary>
public enum HandAct
{
    /// <summary>Seen, and left as it is.</summary>
    LeaveIt,

    /// <summary>Pump the liquor that stayed behind into the mash and stir.</summary>
    PumpOver,

    /// <summary>Close the tun, loosen the bed, let it settle again.</summary>
    RakeBed,

    /// <summary>Half close the run-off, so that the bed can open.</summary>
    RunSlower,

    /// <summary>Switch the breaker on again, its plug still wet: it may kill, and is offered only so that the debrief can say so.</summary>
    ResetBreaker,

    /// <summary>Breaker off, unplug, dry the plug, find out why it got wet; plug in, then switch the breaker on again.</summary>
    DryAndReset,

    /// <summary>Cover most of the kettle, so that little heat boils it.</summary>
    CoverKettle,

    /// <summary>Stop the pump, fill its line, start it again.</summary>
    PrimePump,

    /// <summary>Carry the liquid by jug.</summary>
    CarryByJug,

    /// <summary>Heat down and cold water on the foam.</summary>
    TurnDown,

    /// <summary>Stir in the grist that stayed in its sack.</summary>
    AddRestOfGrist,

    /// <summary>Stop the wort, flush the water side of the chiller backwards, open its tap fully; the sanitised wort side stays shut.</summary>
    FlushChiller,

    /// <summary>Let the wort out of the chiller warmer.</summary>
    RunWarmer,

    /// <summary>Cool the sample, then read it.</summary>
    CoolSample,
}
