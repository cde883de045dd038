using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Fermenting;

/// <summary>What bottles and kegs are asked to hold, and where the sums behind it are valid.</summary>
public static class PackagingRules
{
    public const double LeastCo2Volumes = 0.5;

    /// <summary>What a keg may be asked for.</summary>
    public const double MostCo2Volumes = 5;

    /// <summary>No bottle for beer is made for more; common practice, no source.</summary>
    public const double MostInBottles = 4.5;

    /// <summary>Usual bottles are made for less; more wants heavy ones. Common practice, no source.</summary>
    public const double HeavyBottlesFrom = 3;

    /// <summary>What one may be asked for, volumes.</summary>
    public static double Most(PackageKind kind) => kind == PackageKind.Bottles ? MostInBottles : MostCo2Volumes;

    /// <summary>Where the formula behind it is valid, °C: the residual CO2 of beer (<see cref="Carbonation.ResidualCo2Volumes"/>), or CO2 in a keg
    /// (<see cref="Carbonation.KegGaugePa"/>).</summary>
    public static double HottestC(PackageKind kind) => kind == PackageKind.Bottles ? 25 : 30;

    /// <summary>What the marks of a fermenter and of a bucket differ by at most, and the water that the priming sugar comes in; common practice, no source.</summary>
    private const double MarksFraction = 0.1;

    /// <summary>More than the fermenter still holds: asked again.</summary>
    public static bool IsMoreThanThereIs(FermentState state, double litres) => litres > state.LeftL + MarksFraction * state.PitchedL;

    /// <returns>Why it cannot be, as a code; null: it can.</returns>
    public static string? Refusal(Packaging packaging)
    {
        if (!(packaging.VolumeL is > 0 and <= 20_000))
            return DecisionCode.PackagingVolume;
        var bottles = packaging.Kind == PackageKind.Bottles;
        if (!(packaging.Co2Volumes >= LeastCo2Volumes && packaging.Co2Volumes <= Most(packaging.Kind)))
            return bottles ? DecisionCode.PackagingCo2Bottles : DecisionCode.PackagingCo2;
        return packaging.TempC >= 0 && packaging.TempC <= HottestC(packaging.Kind) ? null : bottles ? DecisionCode.PrimingTemperature : DecisionCode.KegTemperature;
    }
}
