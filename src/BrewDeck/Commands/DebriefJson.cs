using System.Text.Json;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Rehearsals;

namespace BrewDeck.Commands;

/// <summary>A debrief as one line of JSON: a documented contract.</summary>
internal static class DebriefJson
{
    public static string Of(int batch, Debrief debrief) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("batch", batch);
        json.WriteNumber("seed", debrief.Card.Seed);
        json.WriteString("ended", debrief.Pitched ? "pitched" : "aborted");
        Figures(json, "plan", debrief.Plan);
        Figures(json, "result", debrief.Result);
        json.WriteStartArray("mishaps");
        foreach (var mishap in debrief.Mishaps)
            Mishap(json, mishap);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Mishap(Utf8JsonWriter json, MishapDebrief mishap)
    {
        json.WriteStartObject();
        json.WriteString("name", SnakeName.Of(mishap.Mishap.Kind));
        json.WriteString("severity", SnakeName.Of(mishap.Mishap.Severity));
        json.Round("at_s", mishap.AtS, 1);
        json.Round("seen_s", mishap.SeenS, 1);
        json.Round("acted_s", mishap.ActedS, 1);
        if (mishap is { Chosen: { } chosen, Best: { } best })
        {
            json.WritePropertyName("done");
            Tried(json, chosen);
            json.WriteStartObject("cost");
            json.Round("minutes", (chosen.Gives.FinishS - best.Gives.FinishS) / 60, 1);
            json.Round("litres", chosen.Gives.FermenterL - best.Gives.FermenterL, 2);
            json.Round("gravity_points", 1000 * (chosen.Gives.OriginalGravitySg - best.Gives.OriginalGravitySg), 2);
            json.Round("loss", chosen.Loss - best.Loss, 2);
            json.WriteEndObject();
        }
        json.WriteStartArray("tried");
        foreach (var tried in mishap.Tried)
            Tried(json, tried);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Tried(Utf8JsonWriter json, TriedAnswer tried)
    {
        json.WriteStartObject();
        json.WriteString("answer", MishapText.Name(tried.Answer));
        Figures(json, "gives", tried.Gives);
        json.Round("loss", tried.Loss, 2);
        json.WriteBoolean("safe", tried.Safe);
        json.WriteEndObject();
    }

    private static void Figures(Utf8JsonWriter json, string name, DayResult day)
    {
        json.WriteStartObject(name);
        json.Round("original_gravity_sg", day.OriginalGravitySg, 5);
        json.Round("fermenter_l", day.FermenterL, 3);
        json.Round("bitterness_ibu", day.BitternessIbu, 2);
        json.Round("pitch_c", day.PitchC, 2);
        json.Round("finish_s", day.FinishS, 1);
        json.Round("mash_off_k", day.MashOffK, 2);
        json.Round("mash_worst_k", day.MashWorstK, 2);
        json.Round("spilt_l", day.SpiltL, 2);
        json.WriteEndObject();
    }
}
