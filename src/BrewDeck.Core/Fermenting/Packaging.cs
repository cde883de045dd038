using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Fermenting;

public enum PackageKind
{
    Bottles,
    Keg,
}

public enum PrimingSugar
{
    TableSugar,
    Dextrose,
    Glucose,
}

/// <summary>How the beer was packaged.</summary>
/// <param name="VolumeL">Litres packaged.</param>
/// <param name="Co2Volumes">Carbonation aimed at, volumes.</param>
/// <param name="TempC">Bottles: the warmest that the beer was after fermentation. Keg: its temperature under pressure. °C.</param>
public sealed record Packaging(PackageKind Kind, double VolumeL, double Co2Volumes, double TempC)
{
    /// <summary>Bottles only.</summary>
    public PrimingSugar? Sugar { get; init; }

    /// <summary>Priming sugar, g; bottles only.</summary>
    public double? SugarG { get; init; }

    /// <summary>Gauge pressure to set, Pa; keg only.</summary>
    public double? PressurePa { get; init; }

    /// <summary>Primed for what the residual CO2 lacks.</summary>
    public static Packaging InBottles(double volumeL, double co2Volumes, double highestC, PrimingSugar sugar) =>
        new(PackageKind.Bottles, volumeL, co2Volumes, highestC)
        {
            Sugar = sugar,
            SugarG = Carbonation.PrimingSugarG(co2Volumes, Carbonation.ResidualCo2Volumes(highestC), volumeL, Yield(sugar)),
        };

    public static Packaging InKeg(double volumeL, double co2Volumes, double tempC) =>
        new(PackageKind.Keg, volumeL, co2Volumes, tempC) { PressurePa = Carbonation.KegGaugePa(co2Volumes, tempC) };

    private static double Yield(PrimingSugar sugar) => sugar switch
    {
        PrimingSugar.TableSugar => Carbonation.SucroseYield,
        PrimingSugar.Dextrose => Carbonation.MonohydrateYield,
        _ => Carbonation.GlucoseYield,
    };
}
