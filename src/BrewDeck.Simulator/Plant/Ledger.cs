namespace BrewDeck.Simulator.Plant;

/// <summary>
/// What has crossed the plant's border since the start of the day. With what stands in the tanks it must always come out even: water and
/// extract to rounding, heat too, because every step moves heat with the temperatures it books.
/// </summary>
public sealed class Ledger
{
    /// <summary>From tap, grain moisture and additions, kg.</summary>
    public double WaterInKg { get; internal set; }

    /// <summary>Dry matter of the grist and extract added, kg.</summary>
    public double DryInKg { get; internal set; }

    public double VapourKg { get; internal set; }

    /// <summary>Left in hoses and chiller.</summary>
    public double LinesWaterKg { get; internal set; }

    public double LinesExtractKg { get; internal set; }

    /// <summary>Lifted out with the basket.</summary>
    public double LiftedWaterKg { get; internal set; }

    public double LiftedDryKg { get; internal set; }

    public double LiftedJ { get; internal set; }

    /// <summary>Boiled over.</summary>
    public double SpiltWaterKg { get; internal set; }

    public double SpiltExtractKg { get; internal set; }

    public double SpiltJ { get; internal set; }

    /// <summary>Heat that came with water, grist and additions, against 0 °C, J.</summary>
    public double BroughtJ { get; internal set; }

    /// <summary>From the elements into the liquids, J.</summary>
    public double ElementsJ { get; internal set; }

    /// <summary>Wetting of the grist, and the change of heat capacity as extract dissolves at mash temperature, J.</summary>
    public double WettingJ { get; internal set; }

    /// <summary>To the room, J.</summary>
    public double RoomJ { get; internal set; }

    /// <summary>Gone with vapour, J.</summary>
    public double VapourJ { get; internal set; }

    /// <summary>To the cooling water, J.</summary>
    public double CoolingJ { get; internal set; }

    /// <summary>Left in hoses, J.</summary>
    public double LinesJ { get; internal set; }

    /// <summary>Run away on purpose, kg, kg and J.</summary>
    public double DrainedWaterKg { get; internal set; }

    public double DrainedExtractKg { get; internal set; }

    public double DrainedJ { get; internal set; }

    /// <summary>Heat that the tanks should hold beyond what they held at the start, J.</summary>
    public double HeldJ => BroughtJ + ElementsJ + WettingJ - RoomJ - VapourJ - CoolingJ - LinesJ - LiftedJ - SpiltJ - DrainedJ;
}
