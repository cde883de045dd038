using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Hands;

/// <summary>
/// How long a brewer takes, drawn from the seed. Medians and spreads are common practice for one attentive person, no source.
/// </summary>
/// <param name="steadiness">0: always the median; 1: a person.</param>
/// <param name="habit">How long this brewer usually takes to look and to read, against others.</param>
public sealed class HumanPace(int seed, double steadiness = 1, double habit = 1)
{
    private readonly Chance _notice = new(seed, "pace/notice");

    private readonly Chance _measure = new(seed, "pace/measure");

    private readonly Chance _work = new(seed, "pace/work");

    private readonly Chance _valve = new(seed, "pace/valve");

    /// <summary>From seeing that something is due to having done it: half under 8 s.</summary>
    public double NoticeS() => habit * _notice.LogNormal(8, 0.5 * steadiness);

    /// <summary>For a reading, with writing it down: half under 25 s.</summary>
    public double MeasureS() => habit * _measure.LogNormal(25, 0.3 * steadiness);

    /// <summary>For cooling a sample under the tap: half under 3 minutes.</summary>
    public double CoolS() => habit * _measure.LogNormal(180, 0.2 * steadiness);

    /// <summary>Handwork against the time planned for it.</summary>
    public double WorkFactor() => _work.LogNormal(1, 0.12 * steadiness);

    /// <summary>How far a throttled chiller is off the temperature wanted, K.</summary>
    public double ValveErrorK() => 0.4 * steadiness * _valve.Normal();
}
