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
public sealed record Pump(string Id, double ShutOffHeadM, double FlowLPerMin, double PowerW)
{
    /// <summary>Flow against no head at all, the other end of its curve, L/min; null: it is taken to give its usual flow everywhere.</summary>
    public double? FreeFlowLPerMin { get; init; }

    /// <summary>Suction head that it needs not to cavitate, m; small pumps usually 0.3 to 1.</summary>
    public double NeedsSuctionM { get; init; } = UsualSuctionM;

    /// <summary>Of its inlet above the floor, m.</summary>
    public double HeightM { get; init; } = UsualHeightM;

    /// <summary>Typical of small magnetically driven pumps, common practice, no source.</summary>
    public const double UsualSuctionM = 0.5, UsualHeightM = 0.2;
}

/// <summary>The hose between two vessels with its pump or without.</summary>
/// <param name="LengthM">Whole length, m.</param>
/// <param name="BoreM">Inside diameter, m.</param>
public sealed record Hose(double LengthM, double BoreM)
{
    /// <summary>Smooth as silicone or drawn tube, m (handbook value).</summary>
    public const double RoughnessM = 1.5e-6;

    /// <summary>Bore through which a flow runs at so many m/s: common practice for liquor and wort.</summary>
    private const double UsualMPerS = 1.6;

    /// <summary>As long and as wide as is usual for a flow.</summary>
    public static Hose Usual(double litresPerMin) => new(2, Math.Sqrt(4 * litresPerMin / 60_000 / (Math.PI * UsualMPerS)));
}

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
public sealed record Chiller(ChillerKind Kind, double UaWPerK, double WaterLPerMin, double WortLPerMin)
{
    /// <summary>It hangs in the wort: in the kettle, and sanitised in a fermenter.</summary>
    public bool IsCoil => Kind == ChillerKind.Immersion;
}

/// <param name="HeadspaceL">Kept free for foam, litres.</param>
public sealed record Fermenter(string Name, double CapacityL, double HeadspaceL)
{
    /// <summary>Most that may stand in it, litres.</summary>
    public double WorkingL => CapacityL - HeadspaceL;

    /// <summary>Heat that a jacket, a coil of its own or the cold cabinet it stands in takes from the wort, W; 0: it has none.</summary>
    public double CoolingW { get; init; }
}
