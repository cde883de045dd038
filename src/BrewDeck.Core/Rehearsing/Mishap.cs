namespace BrewDeck.Core.Rehearsing;

/// <summary>What can go wrong on a rehearsed day. Each acts on the simulated plant, its hands or its laptop, never on the planner.</summary>
public enum MishapKind
{
    /// <summary>The strike liquor was not stirred: its probe stood in the warm part.</summary>
    ColdStrike,

    /// <summary>Too little strike liquor came over.</summary>
    ThickMash,

    /// <summary>The grain bed closes while wort runs off.</summary>
    StuckBed,

    /// <summary>The breaker of the circuit that heats trips, from a wet plug.</summary>
    TrippedCircuit,

    /// <summary>Part of the kettle's element burns out.</summary>
    FailedElement,

    /// <summary>The pump sucks air.</summary>
    PumpLostPrime,

    /// <summary>The foam climbs as the wort comes to the boil.</summary>
    BoilOver,

    /// <summary>A part of the grist stays in its sack.</summary>
    WrongWeighIn,

    /// <summary>The chiller is fouled and its water runs thin.</summary>
    SlowChiller,

    /// <summary>The hydrometer floats in a sample that is still hot.</summary>
    MisreadHydrometer,

    /// <summary>The laptop itself goes off.</summary>
    PowerCut,
}

/// <summary>How hard a mishap acts; what that means in numbers is the simulator's.</summary>
public enum Severity
{
    Mild,
    Plain,
    Severe,
}

/// <summary>A mishap to come.</summary>
/// <param name="StepId">In which step it begins; null: where it usually does.</param>
public sealed record Mishap(MishapKind Kind, Severity Severity, string? StepId = null);
