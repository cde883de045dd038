namespace BrewDeck.Core.Planning;

/// <summary>What tells that a step is over.</summary>
public enum EndsBy
{
    /// <summary>The hands say so.</summary>
    Hands,

    /// <summary>At once: something goes in.</summary>
    Act,

    Clock,

    Temperature,

    /// <summary>A volume has been moved.</summary>
    Level,
}

/// <summary>What holds for every step of a kind.</summary>
public static class StepTraits
{
    public static EndsBy EndsBy(this StepKind kind) => kind switch
    {
        StepKind.Rest or StepKind.HotBreak or StepKind.Boil or StepKind.Whirlpool or StepKind.Stand
            or StepKind.BoilDecoction => Planning.EndsBy.Clock,
        StepKind.HeatStrike or StepKind.HeatSparge or StepKind.Ramp or StepKind.HeatMash or StepKind.HeatToBoil
            or StepKind.ChillInKettle or StepKind.HeatDecoction or StepKind.CoolInFermenter => Planning.EndsBy.Temperature,
        StepKind.Fill or StepKind.TransferStrike or StepKind.Lauter or StepKind.RunOff or StepKind.CastOut
            or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort
            or StepKind.PullDecoction or StepKind.ReturnDecoction => Planning.EndsBy.Level,
        StepKind.AddFirstWortHops or StepKind.AddToBoil or StepKind.AddToWhirlpool or StepKind.AddWater
            or StepKind.AddExtract or StepKind.TreatMash => Planning.EndsBy.Act,
        _ => Planning.EndsBy.Hands,
    };

    /// <summary>Starts by itself when the step before it in its vessel ends: nothing stops in between.</summary>
    public static bool FollowsOn(this StepKind kind) =>
        kind is StepKind.Rest or StepKind.HotBreak or StepKind.Boil or StepKind.Stand or StepKind.BoilDecoction;

    /// <summary>It ends by the clock, and one key ends it and starts what follows: not the foam, which falls when it falls.</summary>
    public static bool HandsOver(this StepKind kind) => kind.EndsBy() == Planning.EndsBy.Clock && kind != StepKind.HotBreak;

    /// <summary>Somebody stays with it as long as it goes on: a hose runs, foam climbs, something burns on or gets too hot.</summary>
    public static bool IsWatched(this StepKind kind) =>
        kind is StepKind.Fill or StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort
            or StepKind.PullDecoction or StepKind.HeatDecoction or StepKind.BoilDecoction or StepKind.ReturnDecoction
            or StepKind.HeatMash or StepKind.HotBreak or StepKind.CastOut;

    /// <summary>Put in by a remedy: what runs in its vessel is held until it is over.</summary>
    public static bool HoldsOthers(this StepKind kind) => kind is StepKind.HeatMash or StepKind.FreeBed or StepKind.CoolInFermenter;

    /// <summary>Wort runs off into the kettle, with a sparge or without.</summary>
    public static bool RunsOff(this StepKind kind) => kind is StepKind.Lauter or StepKind.RunOff;

    /// <summary>The sweet wort is in the kettle when it ends.</summary>
    public static bool FillsKettle(this StepKind kind) => kind.RunsOff() || kind == StepKind.LiftBasket;

    /// <summary>Id of the vessel whose heat goes with a step: a run-off heats the kettle that it fills.</summary>
    public static string HeatsIn(this StepSpec spec) => spec.Kind.RunsOff() ? spec.To : spec.Vessel;

    /// <summary>Switches elements on.</summary>
    public static bool Heats(this StepKind kind) =>
        kind is StepKind.HeatStrike or StepKind.HeatSparge or StepKind.Ramp or StepKind.HeatMash or StepKind.HeatToBoil
            or StepKind.HotBreak or StepKind.Boil or StepKind.Lauter or StepKind.RunOff or StepKind.HeatDecoction or StepKind.BoilDecoction;
}
