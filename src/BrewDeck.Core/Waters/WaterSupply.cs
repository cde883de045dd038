using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Waters;

/// <summary>A water by its analysis.</summary>
/// <param name="Ph">5 to 9; what acid finds of carbonates depends on it.</param>
public sealed record SourceWater(string Name, WaterIons Ions, double Ph)
{
    /// <summary>From a reverse-osmosis unit or a still, as good as empty.</summary>
    public static SourceWater Distilled { get; } = new("soft water", default, 7);

    /// <summary>Difference of cations and anions to their sum, 0..1. Above a tenth something was read or written wrongly.</summary>
    public double Imbalance
    {
        get
        {
            var sum = Ions.CationsMEqPerL + Ions.AnionsMEqPerL;
            return sum > 0 ? Math.Abs(Ions.CationsMEqPerL - Ions.AnionsMEqPerL) / sum : 0;
        }
    }
}

/// <summary>What water there is, and what stands on the shelf to change it.</summary>
public sealed record WaterSupply
{
    public required SourceWater Source { get; init; }

    /// <summary>For dilution; null: none on hand.</summary>
    public SourceWater? Soft { get; init; }

    public ImmutableArray<BrewingSalt> Salts { get; init; } = [];

    public AcidOnHand? Acid { get; init; }

    /// <summary>What the scale for salts shows, g.</summary>
    public double ScaleG { get; init; } = 0.1;
}
