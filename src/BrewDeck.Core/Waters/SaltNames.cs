namespace BrewDeck.Core.Waters;

/// <summary>Brewing salts as recipes write them, in English and German.</summary>
public static class SaltNames
{
    private static readonly string[] Parts =
    [
        "gypsum", "gips", "calcium sulphate", "calcium sulfate", "calciumsulfat", "caso4",
        "calcium chloride", "calciumchlorid", "cacl2",
        "epsom", "magnesium sulphate", "magnesium sulfate", "magnesiumsulfat", "bittersalz", "mgso4",
        "magnesium chloride", "magnesiumchlorid", "mgcl2",
        "table salt", "sea salt", "sodium chloride", "kochsalz", "meersalz", "speisesalz", "natriumchlorid", "nacl",
        "baking soda", "bicarbonate", "natron", "nahco3",
        "chalk", "calcium carbonate", "kreide", "calciumcarbonat", "caco3",
        "slaked lime", "calcium hydroxide", "löschkalk", "calciumhydroxid", "ca(oh)2",
        "potassium chloride", "kaliumchlorid",
    ];

    private static readonly string[] Whole = ["salt", "salz"];

    /// <summary>An addition of this name brings ions into the water.</summary>
    public static bool IsSalt(string name) =>
        Array.Exists(Parts, p => name.Contains(p, StringComparison.OrdinalIgnoreCase)) || Array.Exists(Whole, w => name.Trim().Equals(w, StringComparison.OrdinalIgnoreCase));
}
