namespace BrewDeck.Core.Physics;

/// <summary>What the grist does to volumes.</summary>
public static class Grain
{
    /// <summary>
    /// Liquid held by drained spent grain, L per kg of dry grain: about 1 (0.8 pressed to 1.2 fly-sparged).
    /// </summary>
    public const double AbsorptionLPerKg = 1.0;

    /// <summary>Space taken by wetted grain in the mash, L per kg of dry grain. Common practice.</summary>
    public const double DisplacementLPerKg = 0.65;

    /// <summary>Moisture of ordinary pale malt as a mass fraction (malt specifications: 3 to 5 %).</summary>
    public const double UsualMoistureFraction = 0.04;

    /// <summary>Volume of the mash in L: water plus displaced volume.</summary>
    public static double MashVolumeL(
        double waterL, double grainKg, double displacementLPerKg = DisplacementLPerKg) =>
        waterL + displacementLPerKg * grainKg;

    /// <summary>
    /// °P of the wort in the mash when the grist is converted: its extract in its water and the malt's own moisture.
    /// </summary>
    public static double FirstWortPlato(
        double grainKg, double asIsExtractFraction, double waterKg, double moistureFraction = 0.0)
    {
        var extractKg = grainKg * asIsExtractFraction;
        return 100.0 * extractKg / (extractKg + waterKg + grainKg * moistureFraction);
    }

    /// <summary>
    /// Share of the mash's extract that runs off when the bed is drained and refilled: after each drain the retained
    /// wort keeps its share. Well-mixed batches, all in L; volumes of wort first in the mash and then of each sparge.
    /// </summary>
    public static double BatchRecoveredFraction(
        double mashWortL, double retainedL, params ReadOnlySpan<double> spargesL)
    {
        var left = retainedL / mashWortL;
        foreach (var spargeL in spargesL) left *= retainedL / (retainedL + spargeL);
        return 1.0 - left;
    }
}
