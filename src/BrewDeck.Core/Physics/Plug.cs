namespace BrewDeck.Core.Physics;

/// <summary>Plugs and connectors that a brewhouse may hang on.</summary>
public enum Plug
{
    Bs1363,
    Schuko,
    Iec60309Blue16,
    Iec60309Blue32,
    Nema515,
    Nema520,
    NemaL630,
    Nema1430,
    Nema1450,
    As3112,
    IecC13,
}

/// <summary>Rated currents by the IEC, BS, NEMA and AS/NZS plug standards.</summary>
public static class Plugs
{
    /// <summary>Rated current in A; what it may carry continuously can be less.</summary>
    public static double RatedA(Plug plug) => plug switch
    {
        Plug.IecC13 or Plug.As3112 => 10.0,
        Plug.Bs1363 => 13.0,
        Plug.Nema515 => 15.0,
        Plug.Schuko or Plug.Iec60309Blue16 => 16.0,
        Plug.Nema520 => 20.0,
        Plug.NemaL630 or Plug.Nema1430 => 30.0,
        Plug.Iec60309Blue32 => 32.0,
        Plug.Nema1450 => 50.0,
        _ => throw new ArgumentOutOfRangeException(nameof(plug), plug, "no such plug"),
    };
}
