namespace BrewDeck.Simulator.Plant;

/// <summary>What is wrong with the plant at the moment, as its equations use it. A sound plant has every share at 1.</summary>
public sealed class PlantFaults
{
    private readonly HashSet<string> _tripped = [];

    private readonly Dictionary<string, double> _elementShare = [];

    /// <summary>Of the flow that the pump gives; 0: it moves nothing.</summary>
    public double PumpShare { get; internal set; } = 1;

    /// <summary>Flow through the bed against a sound one, as its pores allow.</summary>
    public double BedShare { get; internal set; } = 1;

    /// <summary>How far the run-off is open.</summary>
    public double RunOffValve { get; internal set; } = 1;

    /// <summary>Of the chiller's water.</summary>
    public double ChillerWaterShare { get; internal set; } = 1;

    /// <summary>Of the chiller's heat transfer.</summary>
    public double ChillerTransferShare { get; internal set; } = 1;

    /// <summary>Of the liquor that a strike transfer is set for.</summary>
    public double StrikeShare { get; internal set; } = 1;

    /// <summary>Of the grist that the run sheet weighs in.</summary>
    public double GristShare { get; internal set; } = 1;

    /// <summary>Temperature at which samples for the hydrometer are read, °C; NaN: cooled as they should be.</summary>
    public double SampleC { get; internal set; } = double.NaN;

    /// <summary>Lid over a boiling kettle, share of the surface that stays open.</summary>
    public double BoilOpenShare { get; internal set; } = 1;

    /// <summary>Nothing is cast out while the chiller is flushed.</summary>
    public bool CastOutStands { get; internal set; }

    public bool IsTripped(string circuitId) => _tripped.Contains(circuitId);

    /// <summary>Share of a vessel's elements that still heats.</summary>
    public double ElementShare(string vesselId) => _elementShare.GetValueOrDefault(vesselId, 1);

    internal void Trip(string circuitId) => _tripped.Add(circuitId);

    internal void Reset(string circuitId) => _tripped.Remove(circuitId);

    internal void Elements(string vesselId, double share) => _elementShare[vesselId] = share;
}
