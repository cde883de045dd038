using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>What a question is about, in two or three words, for the list of all answers.</summary>
internal static class SetUpTopics
{
    private static readonly Dictionary<string, Phrase> Words = new(StringComparer.Ordinal)
    {
        ["name"] = "name",
        ["vessels"] = "vessels",
        ["rings"] = "rings",
        ["insulated"] = "insulated",
        ["circuits"] = "circuits",
        ["pumps"] = "pumps",
        ["chiller"] = "chiller",
        ["fermenter"] = "fermenter",
        ["cooling"] = "fermenter cooled by",
        ["diameter"] = "width",
        ["height"] = "height",
        ["heat"] = "heat",
        ["cover"] = "heat covered at",
        ["net"] = "heat that arrives",
        ["ring"] = "height of a ring",
        ["plate"] = "false bottom",
        ["plate_diameter"] = "false bottom's width",
        ["plate_load"] = "false bottom's load",
        ["dead"] = "dead space",
        ["volts"] = "mains",
        ["mash"] = "mash heated",
        ["batch"] = "usual batch",
        ["evaporation"] = "boils off",
    };

    public static string Of(string id, IReadOnlyList<SetUpVessel> vessels, Notation notation) => id.Split('.') switch
    {
        ["amps", var circuit] => notation.Text($"breaker of circuit {circuit}"),
        [var vessel, var what] => $"{notation.Name(vessels.First(v => v.Id == vessel).Name)}: {notation.Text(Words[what])}",
        _ => notation.Text(Words[id]),
    };
}
