using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>
/// What homes and pilot plants usually have. Common practice, no source: made so that a new owner can begin; trials and lessons know
/// better. Sizes go with the vessel so that a 30 L and a 300 L brewhouse both get something sensible.
/// </summary>
internal static class Typical
{
    public static readonly Phrase CommonPractice = "common practice";
    public static readonly Phrase NetSpread = "94 to 99 % immersed";
    public static readonly Phrase DeadSpaceSpread = "0.3 to 3 L";
    public static readonly Phrase WeakBoil = "less than the usual 20 to 40 kg an hour for each square metre: its heat gives no more";
    public static readonly Phrase Guess = "a guess: check it";
    public static readonly Phrase EvaporationSpread = "20 to 40 kg an hour for each square metre of surface";

    /// <summary>What a pump of 3 m pulls on it, and hardly more: a stronger one is warned of until the maker's rating is known.</summary>
    private const double PlateKgPerM2 = 3000;
    private const double SteelKgPerM2 = 10;
    private const double FittingsKg = 2;
    private const double SteelJPerKgK = 500;
    private const double InsulatedWPerM2K = 2.8;
    private const double BareWPerM2K = 8;
    private const double EvaporationKgPerHM2 = 28, LeastEvaporationKgPerHM2 = 20;

    /// <summary>Most of what the heat could evaporate drips back or goes through the wall.</summary>
    private const double ShareThatEvaporates = 0.65;

    public static double HeatCapacityJPerK(double diameterM, double heightM) =>
        SteelJPerKgK * (SteelKgPerM2 * WallM2(diameterM, heightM) + FittingsKg);

    public static double LossWPerK(double diameterM, double heightM, bool insulated) =>
        (insulated ? InsulatedWPerM2K : BareWPerM2K) * WallM2(diameterM, heightM);

    public static double DeadSpaceL(double capacityL) => Math.Max(0.3, 0.018 * capacityL);

    public static double EvaporationKgPerH(double diameterM, double netW, double lossWPerK) => Math.Min(
        EvaporationKgPerHM2 * Cylinder.AreaM2(diameterM),
        ShareThatEvaporates * 3600 * Boil.EvaporationKgPerS(netW - lossWPerK * 80, 100));

    /// <summary>What to say of an evaporation that is offered: only what it lies within.</summary>
    public static Phrase EvaporationIs(double kgPerH, double diameterM) =>
        kgPerH < LeastEvaporationKgPerHM2 * Cylinder.AreaM2(diameterM) ? WeakBoil : EvaporationSpread;

    /// <summary>Runs slowly enough not to set a bed of that width, L/min.</summary>
    public static double RunoffLPerMin(double diameterM) => 7.5 * Cylinder.AreaM2(diameterM);

    /// <summary>A guess for a plate whose maker's rating is not known, kg.</summary>
    public static double PlateLoadKg(double diameterM) => PlateKgPerM2 * Cylinder.AreaM2(diameterM);

    /// <summary>A cold cabinet brings wort down by about a degree an hour, a jacket or a coil with cold liquid by five; 1.16 W for a litre and a degree.</summary>
    public static double FermenterCoolingW(string by, double litres) => 1.16 * litres * by switch
    {
        "cabinet" => 1,
        "jacket" => 5,
        _ => 0,
    };

    /// <summary>Side, bottom and lid.</summary>
    private static double WallM2(double diameterM, double heightM) =>
        Math.PI * diameterM * heightM + 2 * Cylinder.AreaM2(diameterM);
}
