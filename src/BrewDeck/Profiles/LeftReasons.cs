namespace BrewDeck.Profiles;

/// <summary>Why a part of a foreign document has no place here, where that helps the reader.</summary>
internal static class LeftReasons
{
    private const string Brewhouse = ": it follows from the brewhouse";
    private const string Day = ": it is chosen on the day";
    private const string Later = ": after the brew day";

    public static string For(SourceNode node) => node.Name.ToLowerInvariant() switch
    {
        "efficiency" or "brewhouse" or "mash" or "lauter" or "conversion" => Brewhouse,
        "pre_boil_size" or "boil_size" or "ramp_time" or "infuse_temperature" or "water_grain_ratio" or "equipment" =>
            Brewhouse,
        "amount" when node.Path.Contains("mash_steps", StringComparison.Ordinal) => Brewhouse,
        "infuse_amount" or "tun_temp" or "tun_weight" or "tun_specific_heat" or "equip_adjust" => Brewhouse,
        "grain_temperature" or "grain_temp" or "sparge_temp" => Day,
        "final_gravity" or "fg" or "carbonation" or "packaging" or "fermentation_steps" or "forced_carbonation" =>
            Later,
        "primary_age" or "secondary_age" or "secondary_temp" or "tertiary_age" or "tertiary_temp" or "age" or "age_temp" => Later,
        _ => "",
    };
}
