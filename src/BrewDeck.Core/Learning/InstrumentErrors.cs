namespace BrewDeck.Core.Learning;

/// <summary>
/// How well a home brewer's instruments and hands do, as standard deviations. Noise differs from reading to reading; bias is the same
/// each time and does not average out. Common practice, no source.
/// </summary>
internal static class InstrumentErrors
{
    public const double VolumeNoiseL = 0.15;

    public const double VolumeBiasL = 0.12;

    public const double VolumeScaleFraction = 0.006;

    public const double TemperatureNoiseK = 0.1;

    /// <summary>Start of a heat-up, where nobody reads: source water, or what was left in the vessel.</summary>
    public const double StartTemperatureK = 0.6;

    public const double ThermometerBiasK = 0.25;

    /// <summary>Refractometer in hot wort, °P, rounding included.</summary>
    public const double PlatoNoise = 0.105;

    public const double PlatoBias = 0.07;

    /// <summary>From the plant being there to the reading being written down, and to the key being struck, s.</summary>
    public const double ReadingDelayS = 33;

    public const double KeyDelayS = 12;

    public const double DelayNoiseS = 10;

    /// <summary>How well a brewer's usual delay is known, s.</summary>
    public const double DelayBiasS = 6;

    public static double VolumeBias(double litres) => Math.Sqrt(VolumeBiasL * VolumeBiasL + Squared(VolumeScaleFraction * litres));

    public static double Squared(double x) => x * x;

    public static double Root(params ReadOnlySpan<double> parts)
    {
        var sum = 0.0;
        foreach (var part in parts)
            sum += part * part;
        return Math.Sqrt(sum);
    }
}
