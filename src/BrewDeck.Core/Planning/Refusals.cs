using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Turns what cannot be brewed into refusals, each with what would mend it.</summary>
internal static class Refusals
{
    /// <summary>What can be told before anything is worked out.</summary>
    public static ImmutableArray<Refusal> Beforehand(Brewhouse house, Recipe recipe, DayChoices choices)
    {
        var found = ImmutableArray.CreateBuilder<Refusal>();
        if (recipe.Rests.IsEmpty || recipe.MashKg <= 0)
            found.Add(new("no_mash", recipe.MashKg, 0, "kg", [new("grist_to_mash", 0, "")]));
        if (choices.Circuits is { } wanted && (wanted < 1 || wanted > house.Circuits.Length))
            found.Add(new("circuits", wanted, house.Circuits.Length, "", [new("circuits_in_use", house.Circuits.Length, "")]));
        if (choices.BatchL is { } litres && !(litres > 0))
            found.Add(new("batch_volume", litres, 0, "L", [new("larger_batch", 1, "L")]));
        foreach (var (from, to) in recipe.Rests.Zip(recipe.Rests.Skip(1)))
        {
            if (to.TempC < from.TempC)
                found.Add(new("rest_below_the_last", to.TempC, from.TempC, "°C", [new("rests_in_rising_order", from.TempC, "°C")]));
        }
        if (recipe.Rests.Length > 1 && !CanRaise(house, choices.MashHeating ?? house.Habits.MashHeating))
            found.Add(new("tun_cannot_heat", recipe.Rests[1].TempC, recipe.Rests[0].TempC, "°C", [new("single_rest", recipe.Rests[0].TempC, "°C")]));
        return found.ToImmutable();
    }

    /// <summary>The mash can be taken from rest to rest in this way.</summary>
    private static bool CanRaise(Brewhouse house, MashHeating way) => way switch
    {
        MashHeating.Direct => house.MashTun.IsHeated,
        MashHeating.Coil => house.Coil is not null && house.HotLiquorTank != house.MashTun,
        _ => house.HotLiquorTank != house.MashTun,
    };

    /// <summary>One refusal for each limit that fails.</summary>
    public static ImmutableArray<Refusal> Of(PlantSetting setting, Batch batch, ImmutableArray<Limit> limits) =>
        [.. limits.Where(l => !l.Ok).Select(l => new Refusal(l.Name, l.Value, l.Bound, l.Unit, Mends(setting, batch, l)))];

    private static ImmutableArray<Mend> Mends(PlantSetting setting, Batch batch, Limit limit)
    {
        var batchL = batch.Recipe.BatchL;
        var smaller = new Mend("smaller_batch", Math.Floor(10 * batchL * limit.Bound / limit.Value) / 10, "L");
        return limit.Name switch
        {
            "strike_liquor_in_tank" => [smaller, new("thicker_mash", ThicknessFor(setting, batch, limit), "L/kg")],
            "mash_in_tun" => [smaller, new("thicker_mash", ThicknessFor(setting, batch, limit), "L/kg"), new("two_mashes", 2, "")],
            "sparge_volume" => [new("thicker_mash", (batch.StrikeL + batch.SpargeL) / batch.Recipe.MashKg, "L/kg"), new("larger_batch", batchL - limit.Value, "L")],
            "wort_in_kettle" => [smaller, new("kettle_extension", Math.Ceiling(limit.Value - limit.Bound), "L")],
            "wort_in_fermenter" or "sparge_liquor_in_tank" => [smaller],
            "mash_covers_elements" or "wort_covers_elements" => [new("larger_batch", Math.Ceiling(10 * batchL * limit.Bound / Math.Max(limit.Value, 0.1)) / 10, "L")],
            "pitch_temperature" => [new("colder_water", setting.SourceWaterC - (limit.Value - limit.Bound), "°C"), new("cool_in_fermenter", limit.Bound, "°C")],
            "evaporation" => [new("lower_evaporation", limit.Bound, "kg/h"), new("more_heat", limit.Value / limit.Bound, "times")],
            "false_bottom_load" => [new("throttle_pump", limit.Bound, "kg")],
            _ when limit.Name.StartsWith("circuit_", StringComparison.Ordinal) => [new("larger_circuit", limit.Value, "kW"), new("smaller_element", limit.Bound, "kW")],
            _ => [new("more_heat", limit.Bound, limit.Unit)],
        };
    }

    private static double ThicknessFor(PlantSetting setting, Batch batch, Limit limit) =>
        Math.Max(1.8, setting.Habits.MashThicknessLPerKg - (limit.Value - limit.Bound) / batch.Recipe.MashKg);
}
