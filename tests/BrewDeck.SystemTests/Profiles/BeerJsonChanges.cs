using System.Text.Json.Nodes;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>The single changes to the minimal document that conformance.csv names.</summary>
internal static class BeerJsonChanges
{
    /// <summary>Refused by the schema, read whole by the reader.</summary>
    public static readonly string[] HarmlessWhenInvalid =
        ["duration value 7.5 (non-integer time)", "remove mash.grain_temperature", "remove mash_step.name", "boil step without name"];

    private const string Water = """{"name":"W","calcium":{"unit":"ppm","value":1},"bicarbonate":{"unit":"ppm","value":1},"sulfate":{"unit":"ppm","value":1},"chloride":{"unit":"ppm","value":1},"magnesium":{"unit":"ppm","value":1}}""";

    private const string Kettle = """{"name":"K","form":"Brew Kettle","maximum_volume":{"unit":"l","value":50},"loss":{"unit":"l","value":1}}""";

    public static void Make(JsonNode document, string change)
    {
        var root = document["beerjson"]!.AsObject();
        var recipe = root["recipes"]![0]!.AsObject();
        var ingredients = recipe["ingredients"]!.AsObject();
        var fermentable = ingredients["fermentable_additions"]![0]!.AsObject();
        var hop = ingredients["hop_additions"]![0]!.AsObject();
        var mash = recipe["mash"]!.AsObject();
        var mashStep = mash["mash_steps"]![0]!.AsObject();
        var boil = recipe["boil"]!.AsObject();
        var parts = new Dictionary<string, JsonObject>
        {
            ["recipe"] = recipe,
            ["fermentable_addition"] = fermentable,
            ["hop_addition"] = hop,
            ["mash"] = mash,
            ["mash_step"] = mashStep,
            ["boil"] = boil,
        };

        switch (change)
        {
            case "none": break;
            case "version as string \"1.0\"": root["version"] = "1.0"; break;
            case "unknown property at the root of beerjson": root["odd"] = 1; break;
            case "unknown property beside beerjson": document["odd"] = 1; break;
            case "recipe.type = \"biab\"": recipe["type"] = "biab"; break;
            case "unknown property in recipe": recipe["odd"] = 1; break;
            case "batch_size value as string \"20\"": recipe["batch_size"]!["value"] = "20"; break;
            case "negative batch_size value": recipe["batch_size"]!["value"] = -20; break;
            case "efficiency without brewhouse": recipe["efficiency"] = new JsonObject(); break;
            case "efficiency.brewhouse unit \"percent\"": recipe["efficiency"]!["brewhouse"]!["unit"] = "percent"; break;
            case "ingredients without fermentable_additions": ingredients.Remove("fermentable_additions"); break;
            case "fermentable amount unit \"kgs\"": fermentable["amount"]!["unit"] = "kgs"; break;
            case "fermentable color unit \"L\"": fermentable["color"]!["unit"] = "L"; break;
            case "fermentable type \"adjunct\"": fermentable["type"] = "adjunct"; break;
            case "unknown property in fermentable_addition": fermentable["odd"] = 1; break;
            case "hop timing.use \"boil\"": hop["timing"]!["use"] = "boil"; break;
            case "hop timing empty object": hop["timing"] = new JsonObject(); break;
            case "hop form \"cryo\"": hop["form"] = "cryo"; break;
            case "duration value 7.5 (non-integer time)": hop["timing"]!["duration"]!["value"] = 7.5; break;
            case "duration value 60.0": hop["timing"]!["duration"]!["value"] = JsonNode.Parse("60.0"); break;
            case "duration unit \"mins\"": hop["timing"]!["duration"]!["unit"] = "mins"; break;
            case "mash_step.type \"sparge\"": mashStep["type"] = "sparge"; break;
            case "boil step without name": boil["boil_steps"] = new JsonArray(new JsonObject()); break;
            case "boil step chilling_type \"plate\"": boil["boil_steps"] = JsonNode.Parse("""[{"name":"b","chilling_type":"plate"}]"""); break;
            case "created date \"2024-02-30T00:00:00Z\" as recipe.created": recipe["created"] = "2024-02-30T00:00:00Z"; break;
            case "created \"2024-05-01\"": recipe["created"] = "2024-05-01"; break;
            case "ibu_estimate {\"method\":\"Tinseth\"}": recipe["ibu_estimate"] = JsonNode.Parse("""{"method":"Tinseth"}"""); break;
            case "ibu_estimate {\"method\":\"Daniels\"}": recipe["ibu_estimate"] = JsonNode.Parse("""{"method":"Daniels"}"""); break;
            case "profiles water record lacking sodium": root["profiles"] = new JsonArray(JsonNode.Parse(Water)); break;
            case "profiles complete water record": root["profiles"] = new JsonArray(With(Water, "sodium", """{"unit":"ppm","value":1}""")); break;
            case "equipments with one complete kettle item": Equip(root, JsonNode.Parse(Kettle)!); break;
            case "equipment item form \"Kettle\"": Equip(root, With(Kettle, "form", "\"Kettle\"")); break;
            case "equipment item without loss": Equip(root, Without(Kettle, "loss")); break;
            case "equipment specific_heat unit \"kJ/(kg K)\"": Equip(root, With(Kettle, "specific_heat", """{"unit":"kJ/(kg K)","value":1}""")); break;
            case "equipment grain_absorption_rate 1 l/kg": Equip(root, With(Kettle, "grain_absorption_rate", """{"unit":"l/kg","value":1}""")); break;
            default: Remove(parts, change); break;
        }
    }

    /// <summary><c>remove part.member</c>.</summary>
    private static void Remove(Dictionary<string, JsonObject> parts, string change)
    {
        var path = change.Split(' ') is ["remove", var named] ? named.Split('.') : throw new ArgumentException($"no such change: {change}");
        if (!parts[path[0]].Remove(path[1]))
            throw new ArgumentException($"nothing to remove: {change}");
    }

    private static JsonNode With(string json, string name, string value)
    {
        var node = JsonNode.Parse(json)!;
        node[name] = JsonNode.Parse(value);
        return node;
    }

    private static JsonNode Without(string json, string name)
    {
        var node = JsonNode.Parse(json)!.AsObject();
        node.Remove(name);
        return node;
    }

    private static void Equip(JsonObject root, JsonNode item) =>
        root["equipments"] = new JsonArray(new JsonObject { ["name"] = "E", ["equipment_items"] = new JsonArray(item) });
}
