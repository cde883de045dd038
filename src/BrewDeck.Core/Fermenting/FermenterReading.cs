namespace BrewDeck.Core.Fermenting;

public enum FermenterFigure
{
    /// <summary>Apparent gravity, SG at 20 °C, the instrument's and the alcohol's corrections made.</summary>
    Gravity,

    /// <summary>°C.</summary>
    Temperature,

    /// <summary>pH at room temperature.</summary>
    Ph,
}

/// <summary>A value read at the fermenter after pitching.</summary>
/// <param name="AsTyped">What the brewer typed, kept for the record.</param>
public sealed record FermenterReading(FermenterFigure Figure, double Value, string AsTyped)
{
    /// <summary>What a refractometer showed, °Bx as read; null: read with a hydrometer.</summary>
    public double? Brix { get; init; }

    /// <summary>When it was read, Unix ms, where it was written down on a later day; null: then.</summary>
    public long? TakenMs { get; init; }
}

/// <summary>Something put into the fermenter: dry hops, fruit, finings.</summary>
/// <param name="Unit">As the brewer writes it: g, mL, each.</param>
public sealed record DatedAddition(string Name, double Amount, string Unit);
