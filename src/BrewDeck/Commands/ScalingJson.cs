using System.Text.Json;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary>The JSON of a scaled recipe: a documented contract.</summary>
internal static class ScalingJson
{
    public static string Of(Scaling scaling) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("recipe", scaling.Old.Recipe.Name);
        Figures(json, "asked", scaling.Asked);
        Figures(json, "kept", scaling.Kept);
        Side(json, "old", scaling.Old);
        Side(json, "new", scaling.New);
        json.WriteEndObject();
    });

    private static void Figures(Utf8JsonWriter json, string name, KeptFigures figures)
    {
        json.WriteStartArray(name);
        foreach (var figure in ScalingWords.Choices.Where(c => figures.HasFlag(c)))
            json.WriteStringValue(Name(figure));
        json.WriteEndArray();
    }

    private static void Side(Utf8JsonWriter json, string name, ScaledSide side)
    {
        json.WriteStartObject(name);
        json.WriteString("brewhouse", side.House.Name);
        PlanJson.Totals(json, side.Day.Totals);
        json.Round("mash_thickness_l_per_kg", side.RatioLPerKg, 4);
        json.Round("efficiency", side.EfficiencyFraction, 5);
        json.Round("hop_yield", side.HopYieldFraction, 5);
        json.Round("evaporated_l", side.EvaporatedL, 3);
        Amounts(json, "grist", side.Recipe.Grist, g => g.Name, "mass_kg", g => g.MassKg);
        Amounts(json, "hops", side.Recipe.Hops, h => h.Name, "mass_g", h => h.MassG);
        Amounts(json, "additions", side.Recipe.Others, o => o.Name, "amount", o => o.Amount);
        json.WriteStartArray("failed");
        foreach (var limit in side.Failed)
            json.WriteStringValue(limit.Name);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>As written by <c>--keep</c> and in JSON.</summary>
    public static string Name(KeptFigures figure) => figure switch
    {
        KeptFigures.Gravity => "gravity",
        KeptFigures.Bitterness => "bitterness",
        KeptFigures.Colour => "colour",
        _ => "ratio",
    };

    private static void Amounts<T>(Utf8JsonWriter json, string name, IEnumerable<T> lines, Func<T, string> called, string key, Func<T, double> amount)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("name", called(line));
            json.Round(key, amount(line), 4);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
