namespace BrewDeck.Core.Brewhouses;

/// <summary>A mains circuit with its breaker.</summary>
/// <param name="ContinuousFactor">Share of the breaker's rating that may be drawn for hours, 0..1; local codes decide.</param>
/// <param name="Sockets">So many plugs fit; what is plugged in together may still be too much to be on together.</param>
public sealed record Circuit(string Id, double Volts, double Amps, double ContinuousFactor, int Sockets = 1)
{
    /// <summary>Power it can carry for hours, W.</summary>
    public double ContinuousW => Volts * Amps * ContinuousFactor;
}

/// <summary>A wort pump.</summary>
/// <param name="ShutOffHeadM">Head at which the flow stops, m of water.</param>
/// <param name="FlowLPerMin">Flow through the usual hoses, L/min.</param>
/// <param name="PowerW">Electrical power, W.</param>
public sealed record Pump(string Id, double ShutOffHeadM, double FlowLPerMin, double PowerW);

/// <summary>A coil under the liquor of the hot liquor tank, through which wort is pumped round from the mash.</summary>
/// <param name="Effectiveness">Share of the difference between liquor and wort that the wort gains on its way, 0..1.</param>
/// <param name="FlowLPerMin">Wort pumped round, L/min.</param>
/// <param name="CoverL">Liquor in the tank that covers it, litres.</param>
public sealed record Coil(double Effectiveness, double FlowLPerMin, double CoverL);

public enum ChillerKind
{
    /// <summary>Wort passes once through a counterflow or plate chiller on its way to the fermenter.</summary>
    Counterflow,

    /// <summary>A coil hangs in the kettle.</summary>
    Immersion,
}

/// <param name="UaWPerK">Overall heat transfer, W/K.</param>
/// <param name="WaterLPerMin">Cooling water, L/min.</param>
/// <param name="WortLPerMin">Wort flow through a counterflow chiller at full throttle, L/min.</param>
public sealed record Chiller(ChillerKind Kind, double UaWPerK, double WaterLPerMin, double WortLPerMin);

/// <param name="HeadspaceL">Kept free for foam, litres.</param>
public sealed record Fermenter(string Name, double CapacityL, double HeadspaceL);
