using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Deck.SetUp;

/// <summary>How the mash is heated, pumps, chiller, fermenter, and the usual batch.</summary>
internal static class PlantQuestions
{
    public static void Ask(SetUpSheet sheet)
    {
        sheet.Ask(new SetUpQuestion.Pick(
            "pumps", "How many pumps move liquor and wort?", "A pump that can be moved from hose to hose counts once.",
            [new("0", "None: by hand and by gravity"), new("1", "One"), new("2", "Two")], "1"));
        var ways = Ways(sheet).ToArray();
        sheet.Ask(new SetUpQuestion.Pick(
            "mash", "How is the mash heated from rest to rest?", "With one rest only it does not matter: the strike liquor sets it.", [.. ways], ways[0].Word));
        sheet.Ask(new SetUpQuestion.Pick(
            "chiller", "What cools the wort?", "",
            [new("counterflow", "A counterflow or plate chiller on the way to the fermenter"), new("immersion", "A coil that hangs in the kettle")],
            sheet.Vessels.Length == 1 ? "immersion" : "counterflow"));
        var usual = Math.Round(0.9 * sheet.CapacityL("kettle"));
        sheet.Ask(new SetUpQuestion.Line(
            "fermenter", "How much does the fermenter hold?", "To the brim; about a tenth of it is kept free for foam. Wheat beer and warm ale foam more: then write a tenth less.", LineReaders.Kept(usual, "L"), "",
            "60 L, 15 gal", LineReaders.Quantity(Dimension.Volume, "L", 2, 10_000, "60 L")));
        sheet.Ask(new SetUpQuestion.Pick(
            "cooling", "What cools the fermenter?", "With it a lager can be cast out as cold as the water allows, and cooled on before the yeast.",
            [new("none", "Nothing but the room"), new("cabinet", "A cold cabinet that it stands in"), new("jacket", "A jacket or a coil of its own, with cold liquid")],
            "none"));
    }

    /// <summary>Asked last: what fits follows from all the rest.</summary>
    public static SetUpQuestion Batch(SetUpSheet sheet)
    {
        var fits = sheet.Complete ? sheet.Fits.Litres : 0;
        // stronger beers than the yardstick need a fuller tun
        var usual = Math.Max(1, Math.Floor(0.8 * fits));
        return new SetUpQuestion.Line(
            "batch", "How much do you usually brew?",
            "Cold wort into the fermenter. Stronger beers need a fuller tun, so a usual batch is less than what fits.",
            LineReaders.Kept(usual, "L"), "", "20 L, 5 gal", LineReaders.Quantity(Dimension.Volume, "L", 1, 5000, "20 L"), UsualIs: "four fifths of what fits");
    }

    private static IEnumerable<PickOption> Ways(SetUpSheet sheet)
    {
        var tun = sheet.Vessels.First(v => v.Roles.HasFlag(VesselRoles.Mash));
        if (sheet.Heat(tun.Id).Count > 0)
            yield return new("direct", "By its own heat, the wort pumped round or stirred");
        if (sheet.Vessels.Length > 1)
            yield return new("hot water", "By adding hot water");
        if (sheet.Vessels.Length >= 3 && sheet["pumps"] != "0")
            yield return new("coil", "Pumped through a coil in the hot liquor tank");
    }
}
