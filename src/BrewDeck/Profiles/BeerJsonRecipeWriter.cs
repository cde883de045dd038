using System.Text.Json;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Writes one recipe as BeerJSON.</summary>
internal sealed class BeerJsonRecipeWriter(Utf8JsonWriter json, Recipe recipe, List<string> notes, string path)
{
    /// <summary>Numbers of the boil steps that are written; hops are timed to them.</summary>
    private const int RunInStep = 1, BoilStep = 2, StandStep = 3;

    public void Write()
    {
        json.WriteStartObject();
        json.WriteString("name", recipe.Name);
        json.WriteString("type", "all grain");
        json.WriteString("author", recipe.Author);
        if (recipe.Notes.Length > 0)
            json.WriteString("notes", recipe.Notes);
        Style();
        Value("batch_size", recipe.BatchL, "l");
        Efficiency();
        if (recipe.OriginalGravitySg is { } gravity)
            Value("original_gravity", gravity, "sg");
        if (recipe.BitternessIbu is { } bitterness)
            Bitterness(bitterness);
        if (recipe.Water is not null)
            notes.Add($"{path}: the water target is not carried over: BeerJSON knows waters, not what they are to become");
        if (recipe.Grist.Any(g => g.Kind is not null))
            notes.Add($"{path}: the kinds of malts for the mash pH are not carried over: BeerJSON has no such groups");
        Ingredients();
        Mash();
        Boil();
        Fermentation();
        json.WriteEndObject();
    }

    private void Style()
    {
        if (recipe.Style.Length == 0)
            return;
        json.WriteStartObject("style");
        json.WriteString("name", recipe.Style);
        json.WriteString("category", recipe.Style);
        json.WriteString("style_guide", "the brewer's own words");
        json.WriteString("type", "beer");
        json.WriteEndObject();
    }

    /// <summary>
    /// Required by the standard, but known only of a brewhouse: what the wanted gravity asks of one, else a usual 75 %.
    /// </summary>
    private void Efficiency()
    {
        var share = recipe.OriginalGravitySg is { } wanted ? Asked(wanted) : 0.75;
        notes.Add($"{path}/efficiency/brewhouse: {100 * share:F0} % written, {(recipe.OriginalGravitySg is null ? "a usual value" : "as the wanted gravity asks")}: a recipe here has none");
        json.WriteStartObject("efficiency");
        Value("brewhouse", Math.Round(100 * share, 1), "%");
        json.WriteEndObject();
    }

    private double Asked(double wanted)
    {
        var (low, high) = (0.01, 1.5);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (Importing.ImpliedGravity(recipe.Grist, recipe.BatchL, middle) < wanted)
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    private void Bitterness(double ibu)
    {
        json.WriteStartObject("ibu_estimate");
        json.WriteString("method", "Other");
        Value("value", ibu, "IBUs");
        json.WriteEndObject();
    }

    private void Ingredients()
    {
        json.WriteStartObject("ingredients");
        List("fermentable_additions", recipe.Grist, Fermentable);
        List("hop_additions", recipe.Hops, Hop);
        List("miscellaneous_additions", recipe.Others, Other);
        List("culture_additions", [recipe.Yeast], Culture);
        json.WriteEndObject();
    }

    private void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void Fermentable(GristLine line)
    {
        json.WriteString("name", line.Name);
        json.WriteString("type", line.Use == GristUse.Mash ? "grain" : "sugar");
        json.WriteStartObject("yield");
        Value("fine_grind", Percent(line.ExtractFraction), "%");
        json.WriteEndObject();
        Value("moisture", Percent(line.MoistureFraction), "%");
        Value("color", line.ColourEbc, "EBC");
        Value("amount", line.MassKg, "kg");
        json.WriteStartObject("timing");
        json.WriteString("use", line.Use == GristUse.Mash ? "add_to_mash" : "add_to_boil");
        json.WriteEndObject();
    }

    private void Hop(HopAddition hop)
    {
        json.WriteString("name", hop.Name);
        json.WriteString("form", hop.Form == HopForm.Cone ? "leaf" : "pellet");
        Value("alpha_acid", Percent(hop.AlphaFraction), "%");
        Value("amount", hop.MassG, "g");
        json.WriteStartObject("timing");
        json.WriteString("use", hop.Use == HopUse.DryHop ? "add_to_fermentation" : "add_to_boil");
        if (hop.Use != HopUse.DryHop)
            json.WriteNumber("step",
                hop.Use switch { HopUse.FirstWort => RunInStep, HopUse.Boil => BoilStep, _ => StandStep });
        Minutes("duration", hop.Minutes);
        json.WriteEndObject();
    }

    private void Other(OtherAddition other)
    {
        json.WriteString("name", other.Name);
        json.WriteString("type", "other");
        Value("amount", other.Amount, other.Unit == "mL" ? "ml" : other.Unit);
        json.WriteStartObject("timing");
        json.WriteString("use",
            other.Use switch
            {
                AdditionUse.Mash => "add_to_mash",
                AdditionUse.Boil => "add_to_boil",
                _ => "add_to_fermentation",
            });
        Minutes("duration", other.Minutes);
        json.WriteEndObject();
    }

    private void Culture(Yeast yeast)
    {
        var lager = yeast.PitchRateMillionPerMlPlato > 1.2;
        json.WriteString("name", yeast.Name);
        json.WriteString("type", lager ? "lager" : "ale");
        json.WriteString("form", "liquid");
        Value("attenuation", Percent(yeast.AttenuationFraction), "%");
        json.WriteStartObject("amount");
        json.WriteString("unit", "pkg");
        json.WriteNumber("value", 1);
        json.WriteEndObject();
        notes.Add($"{path}/ingredients/culture_additions/0: a pitch rate of {yeast.PitchRateMillionPerMlPlato} million cells per mL and °P has no place in BeerJSON; type {(lager ? "lager" : "ale")} and one pack are written");
    }

    private void Mash()
    {
        json.WriteStartObject("mash");
        json.WriteString("name", "mash");
        Value("grain_temperature", 18, "C");
        notes.Add($"{path}/mash/grain_temperature: 18 °C written because BeerJSON requires it: here it is chosen on the day");
        if (recipe.MashThicknessLPerKg is { } ratio)
            notes.Add(System.FormattableString.Invariant($"{path}/mash: strike liquor of {ratio:0.##} L/kg is left out; give the litres on the day"));
        List("mash_steps", recipe.Rests, rest =>
        {
            json.WriteString("name", rest.Name);
            json.WriteString("type", rest == recipe.Rests[0] ? "infusion" : "temperature");
            Value("step_temperature", rest.TempC, "C");
            Minutes("step_time", rest.Minutes);
        });
        json.WriteEndObject();
    }

    private void Boil()
    {
        json.WriteStartObject("boil");
        Minutes("boil_time", recipe.BoilMin);
        var steps = new (string, double, double?, double)[]
        {
            (BeerJsonBoil.OwnNames[0], 75, 100, 0),
            (BeerJsonBoil.OwnNames[1], 100, 100, recipe.BoilMin),
            (BeerJsonBoil.OwnNames[2], 100, null, recipe.StandMin),
        };
        List("boil_steps", steps, step =>
        {
            var (name, start, end, minutes) = step;
            json.WriteString("name", name);
            Value("start_temperature", start, "C");
            if (end is { } endC)
                Value("end_temperature", endC, "C");
            Minutes("step_time", minutes);
        });
        json.WriteEndObject();
    }

    private void Fermentation()
    {
        json.WriteStartObject("fermentation");
        json.WriteString("name", "fermentation");
        List("fermentation_steps", [recipe.Yeast.PitchC], pitchC =>
        {
            json.WriteString("name", "primary");
            Value("start_temperature", pitchC, "C");
        });
        json.WriteEndObject();
    }

    private void Value(string name, double value, string unit)
    {
        json.WriteStartObject(name);
        json.WriteString("unit", unit);
        json.WriteNumber("value", value);
        json.WriteEndObject();
    }

    /// <summary>Times are whole numbers in BeerJSON: minutes where they are whole, else seconds.</summary>
    private void Minutes(string name, double minutes)
    {
        var whole = minutes == Math.Round(minutes);
        var value = (long)Math.Round(whole ? minutes : 60 * minutes);
        if (!whole && value != 60 * minutes)
            notes.Add($"{path}: {name} of {minutes} min written as {value} s: BeerJSON times are whole");
        json.WriteStartObject(name);
        json.WriteString("unit", whole ? "min" : "sec");
        json.WriteNumber("value", value);
        json.WriteEndObject();
    }

    private static double Percent(double fraction) => QuantityUnits.Convert(
        Dimension.Fraction, fraction, "", "%");
}
