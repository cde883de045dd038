namespace BrewDeck.Core.Running.Ensemble;

/// <summary>How long one attentive person takes: common practice, no source. The plan itself counts bare work only.</summary>
public static class UsualPace
{
    /// <summary>Half of what is due is seen and begun within so many seconds; logarithmic spread.</summary>
    public const double NoticeS = 8, NoticeLogSd = 0.5;

    /// <summary>Half of the readings are taken and written down within so many seconds; logarithmic spread.</summary>
    public const double MeasureS = 25, MeasureLogSd = 0.3;

    /// <summary>Logarithmic spread of handwork around the time planned for it.</summary>
    public const double WorkLogSd = 0.12;

    /// <summary>How far a throttled chiller is off the temperature wanted, K.</summary>
    public const double ValveK = 0.4;

    public static double MeanNoticeS { get; } = NoticeS * Math.Exp(0.5 * NoticeLogSd * NoticeLogSd);

    public static double MeanMeasureS { get; } = MeasureS * Math.Exp(0.5 * MeasureLogSd * MeasureLogSd);
}
