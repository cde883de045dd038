using System.Collections.Frozen;

namespace BrewDeck.Deck.Wording;

/// <summary>What a batch's evidence for a lesson was made of.</summary>
internal static class EvidenceWords
{
    private static readonly FrozenDictionary<string, Phrase> Names = new Dictionary<string, Phrase>(StringComparer.Ordinal)
    {
        ["behind_chiller_c"] = "behind the chiller",
        ["boiled_h"] = "boiled",
        ["cast_out_l_per_min"] = "cast out",
        ["drained_would_be_l"] = "drained it would be",
        ["end_c"] = "end",
        ["extract_expected_kg"] = "extract expected",
        ["fermenter_volume_l"] = "fermenter volume",
        ["grist_extract_kg"] = "grist extract",
        ["grist_kg"] = "grist",
        ["heat_up_s"] = "heat-up",
        ["kettle_after_l"] = "kettle after",
        ["kettle_before_l"] = "kettle before",
        ["kettle_gravity_sg"] = "kettle gravity",
        ["kettle_volume_l"] = "kettle volume",
        ["mash_gravity_sg"] = "mash gravity",
        ["mash_water_kg"] = "mash water",
        ["packaged_l"] = "packaged",
        ["pumped_l"] = "pumped",
        ["pumped_s"] = "pumped in",
        ["rest_s"] = "rest",
        ["run_off_hot_l"] = "run off, hot",
        ["run_off_s"] = "run off in",
        ["source_water_c"] = "source water",
        ["start_c"] = "start",
        ["steamed_off_l"] = "steamed off",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static string Name(string what, Notation notation) =>
        Names.TryGetValue(what, out var phrase) ? notation.Text(phrase) : FigureWords.Name(what, notation);
}
