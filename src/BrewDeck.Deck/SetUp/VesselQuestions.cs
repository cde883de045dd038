namespace BrewDeck.Deck.SetUp;

/// <summary>Name, number and size of the vessels.</summary>
internal static class VesselQuestions
{
    public static void Ask(SetUpSheet sheet, IReadOnlyCollection<string> names)
    {
        sheet.Ask(new SetUpQuestion.Line(
            "name", "What is the brewhouse called?", "The name stands on the deck, in the batch list and on its file.", Free(names), "", "Garage 50",
            LineReaders.Name(names), UsualIs: ""));
        sheet.Ask(new SetUpQuestion.Pick(
            "vessels", "How many vessels does it have?", "A false bottom or basket belongs to the vessel that it hangs in.",
            [
                new("three", "Three: hot liquor tank, mash tun, kettle"),
                new("two", "Two: kettle that also heats the liquor, mash tun"),
                new("one", "One: kettle with a basket that is lifted out"),
            ],
            "three"));
        var before = "45 cm";
        var high = "41 cm";
        foreach (var vessel in sheet.Vessels)
        {
            Size(sheet, vessel, before, high, vessel == sheet.Vessels[0] ? "common practice" : "like the one before");
            (before, high) = (sheet[vessel.Id + ".diameter"], sheet[vessel.Id + ".height"]);
        }
        sheet.Ask(new SetUpQuestion.Pick(
            "insulated", "Are the vessels insulated?", "A jacket, foam or a double wall; wood or bare steel is none.",
            [new("yes", "Yes"), new("no", "No, bare walls")], "yes"));
    }

    private static void Size(SetUpSheet sheet, SetUpVessel vessel, string usualDiameter, string usualHeight, string like)
    {
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".diameter", $"How wide is the {vessel.Name} inside?", "Tape measure across the inside at the rim.", usualDiameter,
            "30 to 50 cm for 30 to 100 L", "45 cm or 17.7 in", LineReaders.Quantity(Dimension.Length, "cm", 5, 500, "45 cm"), UsualIs: like));
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".height", $"How high is the {vessel.Name} inside?",
            "Tape measure from the bottom to the brim, rings that are always on included. If you know how much it holds, type that.", usualHeight,
            "", "41 cm or 65 L", LineReaders.HeightOrVolume, UsualIs: like));
    }

    private static string Free(IReadOnlyCollection<string> names)
    {
        for (var i = 1; ; i++)
        {
            var name = i == 1 ? "My brewhouse" : $"My brewhouse {i}";
            if (!names.Contains(name, StringComparer.OrdinalIgnoreCase))
                return name;
        }
    }
}
