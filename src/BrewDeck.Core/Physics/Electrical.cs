namespace BrewDeck.Core.Physics;

/// <summary>
/// Heating elements on mains circuits. Reckoning only: wiring near water belongs behind a residual-current device and
/// in the hands of an electrician.
/// </summary>
public static class Electrical
{
    /// <summary>Tolerance of the supply voltage (EN 50160, IEC 60038).</summary>
    public const double SupplyTolerance = 0.10;

    /// <summary>
    /// A load that goes on for three hours or more counts as continuous (US NEC article 100); a brew day does.
    /// </summary>
    public const double ContinuousHours = 3.0;

    /// <summary>
    /// Share of a breaker's rating for a continuous load (US NEC practice, a caution elsewhere); 1/0.8 is 125 %.
    /// </summary>
    public const double ContinuousShare = 0.80;

    /// <summary>Rated residual current in A of a device that protects people (IEC 60364-4-41, 415.1).</summary>
    public const double PersonalProtectionResidualA = 0.030;

    /// <summary>Current in A of a resistive single-phase load.</summary>
    public static double CurrentA(double watts, double volts) => watts / volts;

    /// <summary>Power in W of a circuit fully loaded.</summary>
    public static double CircuitWatts(double amperes, double volts) => amperes * volts;

    /// <summary>Power in W that a circuit should carry continuously.</summary>
    public static double ContinuousWatts(double amperes, double volts) =>
        ContinuousShare * CircuitWatts(amperes, volts);

    /// <summary>Least rating in A for a continuous current in A.</summary>
    public static double RatingForContinuousA(double amperes) => amperes / ContinuousShare;

    /// <summary>Power in W of a resistive element on another voltage than its rated one: P (U/Un)².</summary>
    public static double WattsAtVoltage(double ratedWatts, double ratedVolts, double volts) =>
        ratedWatts * (volts / ratedVolts) * (volts / ratedVolts);

    /// <summary>Resistance in Ω of an element from its rating.</summary>
    public static double ResistanceOhm(double ratedWatts, double ratedVolts) => ratedVolts * ratedVolts / ratedWatts;

    /// <summary>Voltage in V that the supply may fall to by <see cref="SupplyTolerance"/>.</summary>
    public static double LowestSupplyVolts(double nominalVolts) => nominalVolts * (1.0 - SupplyTolerance);

    /// <summary>Voltage in V that the supply may rise to by <see cref="SupplyTolerance"/>.</summary>
    public static double HighestSupplyVolts(double nominalVolts) => nominalVolts * (1.0 + SupplyTolerance);
}
