using System.Text.Json;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary>The JSON of a plan or of its refusals: a documented contract.</summary>
internal static class PlanJson
{
    public static string Of(PlanResult result) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        if (result is PlanResult.Drawn { Plan: var plan })
        {
            json.WriteStartObject("plan");
            Write(json, plan);
            json.WriteEndObject();
        }
        else if (result is PlanResult.Refused { Refusals: var refusals })
        {
            Refusals(json, refusals);
        }
        json.WriteEndObject();
    });

    /// <summary>Into an object that is open.</summary>
    private static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("steps");
        foreach (var step in plan.Steps)
            Step(json, step, plan);
        json.WriteEndArray();
        json.WriteStartObject("totals");
        Totals(json, plan.Totals);
        json.WriteEndObject();
        if (plan.Water is { } water)
        {
            json.WriteStartObject("water");
            WaterJson.Write(json, water);
            json.WriteEndObject();
        }
        json.WriteStartArray("limits");
        foreach (var limit in plan.Limits)
            Limit(json, limit);
        json.WriteEndArray();
    }

    public static void Totals(Utf8JsonWriter json, Totals totals)
    {
        json.Round("strike_water_l", totals.StrikeWaterL, 3);
        json.Round("sparge_water_l", totals.SpargeWaterL, 3);
        json.Round("pre_boil_l", totals.PreBoilL, 3);
        json.Round("pre_boil_gravity_sg", totals.PreBoilGravitySg, 5);
        json.Round("post_boil_l", totals.PostBoilL, 3);
        json.Round("fermenter_l", totals.FermenterL, 3);
        json.Round("original_gravity_sg", totals.OriginalGravitySg, 5);
        json.Round("bitterness_ibu", totals.BitternessIbu, 2);
        json.Round("colour_srm", totals.ColourSrm, 2);
        json.Round("colour_ebc", totals.ColourEbc, 2);
        json.Round("pitch_c", totals.PitchC, 2);
        json.Round("day_s", totals.DayS, 0);
        json.Round("hands_s", totals.HandsS, 0);
    }

    private static void Step(Utf8JsonWriter json, PlanStep step, Plan plan)
    {
        var words = StepWords.Of(step, plan);
        json.WriteStartObject();
        json.WriteString("id", step.Spec.Id);
        json.WriteString("kind", SnakeName.Of(step.Spec.Kind));
        json.WriteString("unit_procedure", SnakeName.Of(step.Spec.Unit));
        json.WriteString("vessel", step.Spec.Vessel);
        json.Round("start_s", step.StartS, 1);
        json.Round("duration_s", step.DurationS, 1);
        json.Optional("target_c", step.TargetC, 2);
        json.Optional("volume_l", step.VolumeL, 3);
        json.Optional("power_w", step.PowerW, 0);
        if (step.Circuit is not null)
            json.WriteString("circuit", step.Circuit);
        json.Round("hands_s", step.HandsS, 0);
        json.WriteString("text", words.Text);
        json.WriteStartArray("cautions");
        foreach (var caution in CautionWords.Of(step.Spec.Cautions, Notation.Metric))
            json.WriteStringValue(caution);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Limit(Utf8JsonWriter json, Limit limit)
    {
        json.WriteStartObject();
        json.WriteString("name", limit.Name);
        json.Round("value", limit.Value, 3);
        json.Round("limit", limit.Bound, 3);
        json.WriteString("unit", limit.Unit);
        json.Round("margin", limit.Margin, 3);
        json.WriteBoolean("ok", limit.Ok);
        json.WriteEndObject();
    }

    private static void Refusals(Utf8JsonWriter json, IEnumerable<Refusal> refusals)
    {
        json.WriteStartArray("refusals");
        foreach (var refusal in refusals)
        {
            json.WriteStartObject();
            json.WriteString("code", refusal.Code);
            json.WriteString("text", RefusalWords.Of(refusal, Notation.Metric));
            json.Round("value", refusal.Value, 3);
            json.Round("limit", refusal.Bound, 3);
            json.WriteString("mend", RefusalWords.Mends(refusal, Notation.Metric));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
