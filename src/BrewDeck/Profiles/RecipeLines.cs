using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>Makes ingredients of their lines, with the catalogue for what a line leaves out.</summary>
internal sealed class RecipeLines(Catalogue catalogue)
{
    private static readonly HopUse[] HopUses = [HopUse.FirstWort, HopUse.Boil, HopUse.Whirlpool, HopUse.DryHop];

    private static readonly AdditionUse[] AdditionUses = [AdditionUse.Mash, AdditionUse.Boil, AdditionUse.Fermenter];

    public GristLine Grist(SchemaEntry entry)
    {
        var known = catalogue.Fermentable(entry.Text("name"));
        var values = Filled(entry, catalogue.Fermentables,
            ("extract", known?.ExtractFraction), ("moisture", known?.MoistureFraction), ("colour", known?.ColourEbc));
        var use = entry.Text("use") switch
        {
            "mash" => GristUse.Mash,
            "kettle" => GristUse.Kettle,
            _ => known?.Use ?? GristUse.Mash,
        };
        return new(entry.Text("name"), entry.Number("amount"), values[0], values[1], values[2], use) { Kind = Kind(entry) ?? known?.Kind };
    }

    internal static MaltKind? Kind(SchemaEntry entry) =>
        Enum.TryParse<MaltKind>(entry.Text("kind"), ignoreCase: true, out var kind) ? kind : null;

    /// <param name="boilMin">First-wort hops stay for the whole boil when no time is given.</param>
    public HopAddition Hop(SchemaEntry entry, double boilMin)
    {
        var alpha = Filled(entry, catalogue.Hops, ("alpha", catalogue.Hop(entry.Text("name"))?.AlphaFraction))[0];
        var use = HopUses[Array.IndexOf(RecipeSchema.HopUses, entry.Text("use"))];
        var minutes = entry.MaybeNumber("time") ?? use switch
        {
            HopUse.FirstWort => boilMin,
            HopUse.DryHop => 0,
            _ => throw entry.Error("time",
                $"hop.time is missing for '{ProfileError.OneLine(entry.Text("name"))}'; write time = \"60 min\""),
        };
        var form = entry.Text("form") == "cone" ? HopForm.Cone : HopForm.Pellet;
        return new(entry.Text("name"), entry.Number("amount"), alpha, form, use, minutes);
    }

    public static OtherAddition Other(SchemaEntry entry)
    {
        var (number, unit) = entry.Amount("amount");
        var use = AdditionUses[Array.IndexOf(RecipeSchema.AdditionUses, entry.Text("use"))];
        return new(entry.Text("name"), number, unit, use, entry.Number("time"));
    }

    public Yeast Yeast(SchemaEntry entry)
    {
        var known = catalogue.Yeast(entry.Text("name"));
        var values = Filled(entry, catalogue.Yeasts, ("attenuation", known?.AttenuationFraction),
            ("pitch_temperature", known?.PitchC), ("pitch_rate", known?.PitchRateMillionPerMlPlato));
        return new(entry.Text("name"), values[0], values[1], values[2]);
    }

    private static double[] Filled(SchemaEntry entry, IEnumerable<CatalogueItem> items,
        params (string Key, double? Known)[] wanted)
    {
        var missing = wanted.Where(w => w.Known is null && entry.MaybeNumber(w.Key) is null)
            .Select(w => w.Key).ToArray();
        if (missing.Length == 0)
            return [.. wanted.Select(w => entry.MaybeNumber(w.Key) ?? w.Known!.Value)];
        var near = NearestName.To(entry.Text("name"), items.SelectMany(i => i.Also.Prepend(i.Name)));
        throw entry.Error("name",
            $"'{ProfileError.OneLine(entry.Text("name"))}' is not in the catalogue, so its line needs {string.Join(", ", missing)}{(near is null ? "" : $"; or did you mean {near}?")}");
    }
}
