using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Probes;

/// <summary>One measured value of a probe.</summary>
/// <param name="Value">In the canonical unit of its kind, finite.</param>
/// <param name="Age">Of the wall clock, 0 or more: how long before it was handed over it was measured.</param>
public readonly record struct ProbeValue(ReadingKind Kind, string Vessel, double Value, TimeSpan Age);

/// <summary>Whether what a probe offers may be believed.</summary>
public enum ProbeState
{
    /// <summary>It may be taken.</summary>
    Fresh,

    /// <summary>It is older than a minute.</summary>
    Stale,

    /// <summary>It went to and fro too much in the last minute.</summary>
    Noisy,

    /// <summary>Typed, it would be asked about again or refused.</summary>
    Absurd,
}

/// <summary>What a probe offers for one place.</summary>
/// <param name="Unread">Lines of the probe that could not be read, since the start.</param>
/// <param name="HeardFor">Of the wall: how long, within the last minute, it has been heard.</param>
public sealed record ProbeOffer(Reading Reading, ProbeState State, int Unread, TimeSpan HeardFor);
