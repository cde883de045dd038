using BrewDeck.Core.Recipes;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Carries one BeerXML recipe over. Units are fixed by the format: kg, L, °C, minutes, per cent.</summary>
internal sealed class BeerXmlRecipe(Importing import, SourceNode node)
{
    private static readonly string[] HopUses = ["Boil", "Dry Hop", "Mash", "First Wort", "Aroma"];
    private static readonly string[] MiscUses = ["Boil", "Mash", "Primary", "Secondary", "Bottling"];
    private static readonly string[] GristTypes = ["Grain", "Sugar", "Extract", "Dry Extract", "Adjunct"];
    private static readonly string[] YeastTypes = ["Ale", "Lager", "Wheat", "Wine", "Champagne"];

    private double? _batchL;

    /// <summary>Null when it has nothing to mash.</summary>
    public Recipe? Read()
    {
        TakeVersions(node);
        var name = node.TakeText("NAME") ?? throw import.Error(node, "has no NAME; BeerXML requires it");
        _batchL = Maybe(node, "BATCH_SIZE", "L", RecipeSchema.Batch);
        var grist = Items("FERMENTABLES", "FERMENTABLE").Select(Grist).ToArray();
        if (grist.All(g => g.Use != GristUse.Mash))
        {
            import.Note(node, "has nothing for the mash: not carried over, for a plan begins with one");
            return null;
        }

        if (node["TYPE"]?.Text is "All Grain" or "Partial Mash")
            node["TYPE"]!.Take();
        return import.Checked(node, Recipe(name, grist));
    }

    private Recipe Recipe(string name, GristLine[] grist)
    {
        var batchL = _batchL ?? throw Missing(node, "BATCH_SIZE");
        var boilMin = Needed(node, "BOIL_TIME", "min", RecipeSchema.Boil);
        return new()
        {
            Name = name,
            Author = string.Join(", ", new[] { node.TakeText("BREWER"), node.TakeText("ASST_BREWER") }
                .OfType<string>()),
            Style = node["STYLE"]?.TakeText("NAME") ?? "",
            Notes = node.TakeText("NOTES") ?? "",
            BatchL = batchL,
            OriginalGravitySg = Gravity() ?? Implied(grist, batchL),
            BitternessIbu = null,
            Grist = [.. grist],
            Rests = [.. import.Rests(node, [.. Rests()])],
            BoilMin = boilMin,
            Hops = [.. Items("HOPS", "HOP").Select(h => Hop(h, boilMin)).OfType<HopAddition>()],
            Others = [.. Items("MISCS", "MISC").Select(Other)],
            Yeast = Yeast(),
        };
    }

    /// <summary>Every record says VERSION 1, which is nothing to carry over.</summary>
    private static void TakeVersions(SourceNode part)
    {
        if (part is { Name: "VERSION", Text: "1" })
            part.Take();
        foreach (var inner in part.Parts)
            TakeVersions(inner);
    }

    private IEnumerable<SourceNode> Items(string set, string record) => node.Items(set).Where(r => r.Name == record);

    /// <param name="unit">That the format fixes for it.</param>
    private double Needed(SourceNode record, string name, string unit, SchemaKey.Quantity limits) =>
        Maybe(record, name, unit, limits) ?? throw Missing(record, name);

    private double? Maybe(SourceNode record, string name, string unit, SchemaKey.Quantity limits) =>
        record[name] is { Text: { Length: > 0 } } told
            ? import.Held(told, $"{told.Shown} {unit}",
                QuantityUnits.Convert(limits.Dimension, import.Number(told), unit, limits.Unit), limits)
            : null;

    private double? Share(SourceNode record, string name, SchemaKey.Quantity limits) => Maybe(record, name, "%", limits);

    private string Text(SourceNode record) => record.TakeText("NAME") ?? throw Missing(record, "NAME");

    private ProfileException Missing(SourceNode record, string name) =>
        import.Error(record, $"has no {name}; BeerXML requires it");

    /// <summary>Some programs write <c>1.048 SG</c>.</summary>
    private double? Gravity()
    {
        if (node["OG"] is not { Text: { Length: > 0 } text } told)
            return null;
        var read = QuantityReader.Read(text, Dimension.Gravity);
        return read.Ok && told.Take() == told
            ? import.Held(told, told.Shown, read.Value, RecipeSchema.OriginalGravity)
            : throw import.Error(told, $"cannot be read: {read.Why}");
    }

    private double? Implied(GristLine[] grist, double batchL)
    {
        var implied = Importing.ImpliedGravity(grist, batchL, Share(node, "EFFICIENCY", Importing.Efficiency));
        if (implied is { } sg)
            import.Note(node["EFFICIENCY"]!, $"carried over as the original gravity that it gives, {sg:F4}");
        return implied;
    }

    private GristLine Grist(SourceNode record)
    {
        var type = record["TYPE"] is { } told ? import.Word(told, GristTypes) : "Grain";
        var mashed = type is "Grain" or "Adjunct";
        var late = record["ADD_AFTER_BOIL"] is { Text: "TRUE" } after && after.Take() == after;
        if (late)
            import.Note(record, "goes in after the boil: carried over into the kettle");
        if (record["ADD_AFTER_BOIL"] is { Text: "FALSE" } no)
            no.Take();
        // malt extract says its colour in SRM, all else in degrees Lovibond
        var colourUnit = type == "Extract" ? "SRM" : "°L";
        var colour = Maybe(record, "COLOR", colourUnit, RecipeSchema.GristColour) ?? 0;
        var name = Text(record);
        var massKg = Needed(record, "AMOUNT", "kg", RecipeSchema.GristAmount);
        import.HeldToBatch(record["AMOUNT"]!, $"{record["AMOUNT"]!.Shown} kg", massKg, _batchL, Importing.MostMaltKgPerL);
        return new(
            name,
            massKg,
            Share(record, "YIELD", RecipeSchema.Extract) ?? throw Missing(record, "YIELD"),
            Share(record, "MOISTURE", RecipeSchema.Moisture) ?? (mashed ? 0.04 : 0),
            colour,
            mashed && !late ? GristUse.Mash : GristUse.Kettle)
        {
            Kind = import.Catalogue.Fermentable(name)?.Kind,
        };
    }

    private HopAddition? Hop(SourceNode record, double boilMin)
    {
        var use = record["USE"] is { } told ? import.Word(told, HopUses) : "Boil";
        if (use == "Mash")
        {
            import.Note(record,
                $"'{ProfileError.OneLine(record.TakeText("NAME") ?? "")}' not carried over: no hops go into the mash here");
            record.Take();
            return null;
        }

        var minutes = Needed(record, "TIME", "min", RecipeSchema.HopTime);
        if (record["FORM"] is null)
            import.Note(record, "says no FORM: carried over as pellets");
        var form = record["FORM"] is { } shape && import.Word(shape, "Pellet", "Plug", "Leaf") != "Pellet"
            ? HopForm.Cone : HopForm.Pellet;
        var massG = Needed(record, "AMOUNT", "kg", RecipeSchema.HopAmount);
        import.HeldToBatch(record["AMOUNT"]!, $"{record["AMOUNT"]!.Shown} kg", massG / 1000, _batchL,
            Importing.MostHopKgPerL);
        var alpha = Share(record, "ALPHA", RecipeSchema.Alpha) ?? throw Missing(record, "ALPHA");
        var contact = use == "First Wort" ? Math.Max(minutes, boilMin) : minutes;
        return new(Text(record), massG, alpha, form, Use(use), contact);
    }

    private static HopUse Use(string use) => use switch
    {
        "First Wort" => HopUse.FirstWort,
        "Aroma" => HopUse.Whirlpool,
        "Dry Hop" => HopUse.DryHop,
        _ => HopUse.Boil,
    };

    private OtherAddition Other(SourceNode record)
    {
        var use = record["USE"] is { } told ? import.Word(told, MiscUses) : "Boil";
        var weighed = record["AMOUNT_IS_WEIGHT"] is { } kind && import.Word(kind, "TRUE", "FALSE") == "TRUE";
        var measured = record["AMOUNT"] ?? throw Missing(record, "AMOUNT");
        var amount = import.Held(measured, $"{measured.Shown} {(weighed ? "kg" : "L")}",
            QuantityUnits.Tidy(1000 * import.Number(measured)), RecipeSchema.OtherAmount);
        var place = use switch { "Boil" => AdditionUse.Boil, "Mash" => AdditionUse.Mash, _ => AdditionUse.Fermenter };
        var minutes = place == AdditionUse.Mash ? 0 : Maybe(record, "TIME", "min", RecipeSchema.OtherTime) ?? 0;
        return new(Text(record), amount, weighed ? "g" : "mL", place, minutes);
    }

    private IEnumerable<MashRest> Rests()
    {
        foreach (var step in node["MASH"]?.Items("MASH_STEPS").Where(s => s.Name == "MASH_STEP") ?? [])
        {
            if (step["TYPE"] is { } type && import.Word(type, "Infusion", "Temperature", "Decoction") == "Decoction")
                import.Note(step, "is a decoction: carried over as a rest, heated the way of the brewhouse");
            yield return new(step.TakeText("NAME") ?? "rest",
                Needed(step, "STEP_TEMP", "°C", RecipeSchema.RestTemperature),
                Needed(step, "STEP_TIME", "min", RecipeSchema.RestTime));
        }
    }

    private Yeast Yeast()
    {
        var record = Items("YEASTS", "YEAST").FirstOrDefault();
        var kind = record?["TYPE"] is { } type ? import.Word(type, YeastTypes) : "Ale";
        if (kind is not ("Ale" or "Lager"))
            import.Note(record!["TYPE"]!, $"'{kind}' carried over as an ale yeast");
        var lager = kind == "Lager";
        var attenuation = record is null ? null : Share(record, "ATTENUATION", RecipeSchema.Attenuation);
        return import.Yeast(node, record?.TakeText("NAME"), lager, attenuation,
            Maybe(node, "PRIMARY_TEMP", "°C", RecipeSchema.PitchTemperature));
    }
}
