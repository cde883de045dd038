namespace BrewDeck.Core.Physics;

/// <summary>
/// Beer and malt colour. MCU is malt colour units, lb·°L per US gallon; recipe models are good to about 20 %.
/// </summary>
public static class Colour
{
    /// <summary>SRM over the absorbance at 430 nm in 1 cm (ASBC Beer-10A).</summary>
    public const double SrmPerAbsorbance = 12.7;

    /// <summary>EBC over the absorbance at 430 nm in 1 cm (EBC 9.6).</summary>
    public const double EbcPerAbsorbance = 25.0;

    /// <summary>1.97.</summary>
    public const double EbcPerSrm = EbcPerAbsorbance / SrmPerAbsorbance;

    /// <summary>Spread of any recipe colour model against measured beers (Morey 2015).</summary>
    public const double PredictionUncertaintyFraction = 0.20;

    /// <summary>MCU of one malt; add them up over the grist. Mass in kg, colour in °L, cold wort in L.</summary>
    public static double Mcu(double massKg, double lovibond, double litres) =>
        massKg / UsUnits.KgPerPound * lovibond / (litres / UsUnits.LitresPerGallon);

    /// <summary>Morey: SRM = 1.4922 MCU^0.6859, Brewing Techniques; SRM below 50.</summary>
    public static double MoreySrm(double mcu) => 1.4922 * Math.Pow(mcu, 0.6859);

    /// <summary>Morey's rounded form of 2015: 1.49 MCU^0.69.</summary>
    public static double MoreyRoundedSrm(double mcu) => 1.49 * Math.Pow(mcu, 0.69);

    /// <summary>MCU that gives an SRM by <see cref="MoreyRoundedSrm"/>.</summary>
    public static double MoreyRoundedMcu(double srm) => Math.Pow(srm / 1.49, 1.0 / 0.69);

    /// <summary>Daniels: SRM = 0.2 MCU + 8.4, above 11 MCU.</summary>
    public static double DanielsSrm(double mcu) => 0.2 * mcu + 8.4;

    /// <summary>Mosher: SRM = 0.3 MCU + 4.7, above 7 MCU.</summary>
    public static double MosherSrm(double mcu) => 0.3 * mcu + 4.7;

    /// <summary>Druey's fit to Daniels' points: 1.73 MCU^0.64 − 0.27 (Morey 2015).</summary>
    public static double DrueyDanielsSrm(double mcu) => 1.73 * Math.Pow(mcu, 0.64) - 0.27;

    /// <summary>MCU that gives an SRM by <see cref="DrueyDanielsSrm"/>.</summary>
    public static double DrueyDanielsMcu(double srm) => Math.Pow((srm + 0.27) / 1.73, 1.0 / 0.64);

    /// <summary>Druey's fit to Noonan's points: 15.03 MCU^0.27 − 15.53 (Morey 2015).</summary>
    public static double DrueyNoonanSrm(double mcu) => 15.03 * Math.Pow(mcu, 0.27) - 15.53;

    /// <summary>EBC of an SRM: both measure the same absorbance.</summary>
    public static double EbcFromSrm(double srm) => srm * EbcPerSrm;

    /// <summary>SRM of an EBC: the inverse of <see cref="EbcFromSrm"/>.</summary>
    public static double SrmFromEbc(double ebc) => ebc / EbcPerSrm;

    /// <summary>EBC from absorbance at 430 nm in a 1 cm cuvette and the dilution factor (EBC 9.6).</summary>
    public static double EbcFromAbsorbance(double absorbance, double dilution) =>
        EbcPerAbsorbance * dilution * absorbance;

    /// <summary>SRM from absorbance at 430 nm in a 1 cm cuvette and the dilution factor (ASBC Beer-10A).</summary>
    public static double SrmFromAbsorbance(double absorbance, double dilution) =>
        SrmPerAbsorbance * dilution * absorbance;

    /// <summary>Absorbance at another path length, Beer-Lambert law.</summary>
    public static double AbsorbanceAtPath(double absorbanceAt1Cm, double pathCm) => absorbanceAt1Cm * pathCm;

    /// <summary>SRM of a malt from °Lovibond, maltsters' conversion, from memory: 1.3546 °L − 0.76; above 0.6 °L, below which it is negative.</summary>
    public static double SrmFromLovibond(double lovibond) => 1.3546 * lovibond - 0.76;

    /// <summary>°Lovibond of a malt from SRM: the inverse of <see cref="SrmFromLovibond"/>.</summary>
    public static double LovibondFromSrm(double srm) => (srm + 0.76) / 1.3546;

    /// <summary>EBC of a malt from °Lovibond, older maltsters' conversion, from memory: 2.65 °L − 1.2; above 0.5 °L.</summary>
    public static double OlderEbcFromLovibond(double lovibond) => 2.65 * lovibond - 1.2;
}
