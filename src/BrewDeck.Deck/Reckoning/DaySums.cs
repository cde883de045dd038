using System.Globalization;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Reckoning;

/// <summary>What a running batch knows of a sum's inputs: nobody has the heat capacity of a tun in his head.</summary>
public static class DaySums
{
    /// <summary>By input name, as it would be typed; what the day does not know is left out.</summary>
    public static Dictionary<string, string> Of(Sum sum, Plan plan)
    {
        if (sum.Name is not ("strike" or "infusion"))
            return [];
        var rests = plan.Recipe.Rests;
        var known = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["grain"] = Written(plan.Recipe.MashKg, "0.###", "kg"),
            ["water"] = Written(plan.Totals.StrikeWaterL, "0.#", "L"),
            ["grain-temp"] = Written(plan.Choices.GrainC, "0.#", "°C"),
            ["tun"] = Written(plan.Brewhouse.MashTun.HeatCapacityJPerK / 1000, "0.##", "kJ/K"),
            ["tun-temp"] = Written(plan.Choices.AmbientC, "0.#", "°C"),
            ["mash"] = Written(rests[0].TempC, "0.#", "°C"),
            // of a strike the rest that it is for, of an infusion the one after it
            ["target"] = Written(rests[sum.Name == "infusion" ? rests.Length - 1 : 0].TempC, "0.#", "°C"),
        };
        return known.Where(k => sum.Inputs.Any(i => i.Name == k.Key)).ToDictionary(StringComparer.Ordinal);
    }

    private static string Written(double value, string format, string unit) => value.ToString(format, CultureInfo.InvariantCulture) + " " + unit;
}
