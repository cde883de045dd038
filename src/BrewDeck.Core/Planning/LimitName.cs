namespace BrewDeck.Core.Planning;

/// <summary>
/// Stable names of limits, snake_case. They stand in records and in the JSON for scripts, so none may change; whoever makes one, asks for
/// one or takes one apart does it here.
/// </summary>
public static class LimitName
{
    public const string StrikeLiquorInTank = "strike_liquor_in_tank";
    public const string SpargeLiquorInTank = "sparge_liquor_in_tank";
    public const string LiquorInTank = "liquor_in_tank";
    public const string SpargeVolume = "sparge_volume";
    public const string StrikeTemperature = "strike_temperature";
    public const string MashInTun = "mash_in_tun";
    public const string MashInLauterTun = "mash_in_lauter_tun";
    public const string MashCoversElements = "mash_covers_elements";
    public const string DecoctionShare = "decoction_share";
    public const string DecoctionCoversElements = "decoction_covers_elements";
    public const string WortInKettle = "wort_in_kettle";
    public const string WortCoversElements = "wort_covers_elements";
    public const string WortInWhirlpool = "wort_in_whirlpool";
    public const string WortInFermenter = "wort_in_fermenter";
    public const string FalseBottomLoad = "false_bottom_load";
    public const string SuctionHead = "suction_head";
    public const string LiftOfPump = "lift_of_pump";
    public const string FallByGravity = "fall_by_gravity";
    public const string Evaporation = "evaporation";

    /// <summary>Wort that is still to run through the chiller.</summary>
    public const string PitchTemperature = "pitch_temperature";

    /// <summary>Wort that has run: no chiller can do anything about it any more.</summary>
    public const string PitchInFermenter = "pitch_in_fermenter";

    public const string AnalysisImbalance = Water + "analysis_imbalance";
    public const string MashPhLow = Water + "mash_ph_low";
    public const string MashPhHigh = Water + "mash_ph_high";
    public const string Lactate = Water + "lactate";

    private const string Water = "water_", Circuit = "circuit_", For = "_for_", In = "_in_", Full = "fullest_", HeatsTo = "heats_to_target:", ChillsTo = "chills_to_target:";

    /// <summary>An ion in the treated water.</summary>
    public static string OfWater(string ion) => Water + ion;

    /// <summary>What of the treated water a limit is about, such as an ion; null: it is none of the water.</summary>
    public static string? InWater(string name) => After(Water, name);

    /// <summary>A circuit with all that it feeds.</summary>
    public static string Load(string circuit) => Circuit + circuit;

    /// <summary>A circuit with one vessel alone on it.</summary>
    public static string Load(string circuit, string vessel) => Circuit + circuit + For + vessel;

    /// <summary>Ids of the circuit and of the vessel that is alone on it; null: the limit is no such load.</summary>
    public static (string Circuit, string Vessel)? LoadOf(string name) =>
        After(Circuit, name) is { } load && load.IndexOf(For, StringComparison.Ordinal) is >= 0 and var at ? (load[..at], load[(at + For.Length)..]) : null;

    /// <summary>A step that heats its vessel to its target.</summary>
    public static string Heats(string stepId) => HeatsTo + stepId;

    /// <summary>A step that cools its vessel to its target.</summary>
    public static string Chills(string stepId) => ChillsTo + stepId;

    public static bool IsOfHeat(string name) => After(HeatsTo, name) is not null;

    /// <summary>Id of the step that is to reach its target; null: the limit is of no step.</summary>
    public static string? StepOf(string name) => After(HeatsTo, name) ?? After(ChillsTo, name);

    /// <summary>A vessel at its fullest, whatever stands in it.</summary>
    public static string Fullest(string vessel) => Full + vessel;

    /// <summary>Id of the vessel; null: the limit is another.</summary>
    public static string? FullestOf(string name) => After(Full, name);

    /// <summary>"lauter_tun" of <see cref="MashInLauterTun"/>: the place, of a limit of what stands in one.</summary>
    public static string PlaceOf(string name) => name[(name.IndexOf(In, StringComparison.Ordinal) + In.Length)..];

    private static string? After(string beginning, string name) => name.StartsWith(beginning, StringComparison.Ordinal) ? name[beginning.Length..] : null;
}
