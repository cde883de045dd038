using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Alarms;

/// <summary>How soon the brewer must act (ISA-18.2: the priority follows from what happens otherwise, and how soon).</summary>
public enum AlarmPriority
{
    /// <summary>In some minutes, or the day gets longer.</summary>
    Low,

    /// <summary>Within a few minutes, or the beer changes.</summary>
    Medium,

    /// <summary>At once, or somebody or something may come to harm.</summary>
    High,
}

/// <summary>What can be abnormal. Each has one cause, one consequence and one action; words are made elsewhere.</summary>
public enum AlarmKind
{
    /// <summary>Running heaters draw more than a circuit carries: A drawn, A allowed.</summary>
    CircuitOverloaded,

    /// <summary>More stands in a vessel than it may hold: L, L allowed.</summary>
    VesselTooFull,

    /// <summary>A vessel is heated with less in it than covers its elements: L, L that cover them.</summary>
    ElementsDry,

    /// <summary>The wort has reached the boil and nobody has said so: minutes since.</summary>
    BoilUnattended,

    /// <summary>The mash is past the temperature that it was heated to: minutes since.</summary>
    HeatRunsOn,

    /// <summary>An addition waits: minutes since it was due.</summary>
    AdditionLate,

    /// <summary>The last reading of a resting mash is off its temperature: °C read, °C wanted.</summary>
    MashOff,

    /// <summary>A step that was to be ended or started waits: minutes since.</summary>
    HandsLate,

    /// <summary>A step is on hold for long: minutes since.</summary>
    HeldLong,

    /// <summary>The rest of the day as it is forecast breaks a limit of the brewhouse: what it will be, and the limit, in its unit.</summary>
    LimitAhead,
}

/// <summary>Something abnormal that needs an act of the brewer.</summary>
/// <param name="About">Id of the step, vessel or circuit, or name of the limit; with the kind it names the alarm.</param>
/// <param name="Value">What it is, in the unit that the kind says.</param>
/// <param name="Bound">What it may be, same unit; 0 where there is none.</param>
/// <param name="Limit">The limit that is about to break; null for every other kind.</param>
public sealed record Alarm(AlarmKind Kind, string About, double Value, double Bound, Limit? Limit = null)
{
    public AlarmKey Key => new(Kind, About);

    public AlarmPriority Priority => Kind switch
    {
        AlarmKind.CircuitOverloaded or AlarmKind.VesselTooFull or AlarmKind.ElementsDry or AlarmKind.BoilUnattended => AlarmPriority.High,
        AlarmKind.HeatRunsOn or AlarmKind.AdditionLate or AlarmKind.MashOff or AlarmKind.LimitAhead => AlarmPriority.Medium,
        _ => AlarmPriority.Low,
    };
}

/// <summary>Names an alarm: raised again it is the same one.</summary>
public readonly record struct AlarmKey(AlarmKind Kind, string About);

/// <summary>An alarm as the record has it.</summary>
/// <param name="RaisedMs">Unix ms.</param>
/// <param name="Acknowledged">The brewer has said that it was heard.</param>
/// <param name="ShelvedUntilMs">Silent and out of sight until then; null: not shelved.</param>
public sealed record StandingAlarm(Alarm Alarm, long RaisedMs, bool Acknowledged = false, long? ShelvedUntilMs = null)
{
    public bool IsShelved(long nowMs) => ShelvedUntilMs is { } until && nowMs < until;
}
