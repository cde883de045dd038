using System.Text.Json;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Commands;

/// <summary>A rehearsed day as one line of JSON: a documented contract.</summary>
internal static class RehearsalJson
{
    public static string Of(RehearsalResult result, Plan plan) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("seed", result.Seed);
        json.WriteString("recipe", plan.Recipe.Name);
        json.WriteString("brewhouse", plan.Brewhouse.Name);
        json.WriteString("ended", result.Ended);
        json.Round("virtual_s", result.VirtualS, 1);
        json.WriteNumber("events", result.Events);
        json.WriteStartObject("plan");
        PlanJson.Totals(json, plan.Totals);
        json.WriteEndObject();
        Truth(json, result.Truth);
        Outlooks(json, result);
        Readings(json, result);
        Remedies(json, result);
        Mishaps(json, result);
        json.WriteEndObject();
    });

    private static void Mishaps(Utf8JsonWriter json, RehearsalResult result)
    {
        json.WriteStartArray("mishaps");
        foreach (var course in result.Mishaps)
        {
            json.WriteStartObject();
            json.WriteString("name", SnakeName.Of(course.Mishap.Kind));
            json.WriteString("severity", SnakeName.Of(course.Mishap.Severity));
            json.WriteString("step", course.Mishap.StepId);
            json.Round("at_s", course.AtS, 1);
            json.Round("seen_s", course.SeenS, 1);
            json.Round("acted_s", course.ActedS, 1);
            json.WriteString("answer", course.Answer is { } answer ? MishapText.Name(answer) : null);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Truth(Utf8JsonWriter json, RehearsalTruth truth)
    {
        json.WriteStartObject("truth");
        json.Round("original_gravity_sg", truth.OriginalGravitySg, 5);
        json.Round("fermenter_l", truth.FermenterL, 3);
        json.Round("bitterness_ibu", truth.BitternessIbu, 2);
        json.Round("pitch_c", truth.PitchC, 2);
        json.Round("finish_s", truth.FinishS, 1);
        json.WriteEndObject();
    }

    private static void Outlooks(Utf8JsonWriter json, RehearsalResult result)
    {
        json.WriteStartArray("outlooks");
        foreach (var (at, outlook, _, _) in result.Outlooks)
        {
            json.WriteStartObject();
            json.WriteString("at", at);
            Figure(json, "original_gravity_sg", outlook.OriginalGravitySg, 5, f => f);
            Figure(json, "fermenter_l", outlook.FermenterL, 3, f => f);
            Figure(json, "bitterness_ibu", outlook.BitternessIbu, 2, f => f);
            Figure(json, "finish_s", outlook.FinishMs, 1, ms => result.Final.SecondsAt((long)ms));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Figure(Utf8JsonWriter json, string name, Figure figure, int digits, Func<double, double> unit)
    {
        json.WriteStartObject(name);
        json.Round("p10", figure.P10 is { } low ? unit(low) : null, digits);
        json.Round("p50", unit(figure.P50), digits);
        json.Round("p90", figure.P90 is { } high ? unit(high) : null, digits);
        json.WriteEndObject();
    }

    private static void Readings(Utf8JsonWriter json, RehearsalResult result)
    {
        json.WriteStartArray("readings");
        foreach (var taken in result.Readings)
        {
            json.WriteStartObject();
            json.Round("at_s", result.Final.SecondsAt(taken.AtMs), 1);
            json.WriteString("step", taken.StepId);
            json.WriteString("vessel", taken.Reading.Vessel);
            json.Round(Named(taken.Reading.Kind, ""), taken.Reading.Value, 4);
            json.Round(Named(taken.Reading.Kind, "expected_"), taken.Expected, 4);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static string Named(ReadingKind kind, string before) => before + kind switch
    {
        ReadingKind.Temperature => "temperature_c",
        ReadingKind.Volume => "volume_l",
        ReadingKind.Gravity => "gravity_sg",
        ReadingKind.Ph => "ph",
        _ => "weight_kg",
    };

    private static void Remedies(Utf8JsonWriter json, RehearsalResult result)
    {
        json.WriteStartArray("remedies");
        foreach (var taken in result.Remedies)
        {
            json.WriteStartObject();
            json.Round("at_s", result.Final.SecondsAt(taken.AtMs), 1);
            json.WriteString("kind", SnakeName.Of(taken.Remedy.Kind));
            json.WriteString("vessel", taken.Remedy.Vessel);
            json.Round(Amount(taken.Remedy.Kind), taken.Remedy.Amount, 3);
            json.Round("adds_min", taken.Remedy.Minutes, 1);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static string Amount(RemedyKind kind) => kind switch
    {
        RemedyKind.AddExtract => "amount_kg",
        RemedyKind.AddHotWater or RemedyKind.AddColdWater or RemedyKind.FillUp or RemedyKind.RunOver or RemedyKind.Dilute or RemedyKind.Underlet or RemedyKind.RunOffMore
            or RemedyKind.RunOffLess or RemedyKind.HeatElsewhere or RemedyKind.BoilElsewhere or RemedyKind.Infuse => "amount_l",
        RemedyKind.AddSoda or RemedyKind.AddNow or RemedyKind.Reweigh => "amount_g",
        RemedyKind.AddAcid => "amount_ml",
        RemedyKind.HeatLiquor or RemedyKind.SetChiller or RemedyKind.ChillFermenter or RemedyKind.WaitForRoom or RemedyKind.OwnCooling => "amount_c",
        RemedyKind.OtherCircuit => "amount_w",
        _ => "amount_min",
    };
}
