using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Name, number and size of the vessels.</summary>
internal static class VesselQuestions
{
    public static void Ask(SetUpSheet sheet, IReadOnlyCollection<string> names, Notation notation)
    {
        sheet.Ask(new SetUpQuestion.Line(
            "name", "What is the brewhouse called?", "The name shows on the deck, in the batch list and on its file.", Free(names, notation), "", "Garage 50",
            LineReaders.Name(names), UsualIs: default(Phrase)));
        sheet.Ask(new SetUpQuestion.Pick(
            "vessels", "How many vessels does it have?", "A false bottom or basket belongs to the vessel that it hangs in.",
            [
                new("four", "Four: hot liquor tank, mash tun, lauter tun, kettle"),
                new("three", "Three: hot liquor tank, mash tun, kettle"),
                new("two", "Two: kettle that also heats the liquor, mash tun"),
                new("one", "One: kettle with a basket that is lifted out"),
            ],
            "three"));
        var before = "45 cm";
        var high = "41 cm";
        foreach (var vessel in sheet.Vessels)
        {
            Size(sheet, vessel, before, high, vessel == sheet.Vessels[0] ? Typical.CommonPractice : "like the one before");
            (before, high) = (sheet[vessel.Id + ".diameter"], sheet[vessel.Id + ".height"]);
        }
        Rings(sheet);
        if (SetUpVessel.Lautering(sheet.Vessels) is { } lautering)
            Plate(sheet, lautering);
        sheet.Ask(new SetUpQuestion.Pick(
            "insulated", "Are the vessels insulated?", "A jacket, foam or a double wall; wood or bare steel is none.",
            [new("yes", "Yes"), new("no", "No, bare walls")], "yes"));
    }

    private static void Size(SetUpSheet sheet, SetUpVessel vessel, string usualDiameter, string usualHeight, Phrase like)
    {
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".diameter", $"How wide is the {vessel.Called} inside?", "Tape measure across the inside at the rim.", usualDiameter,
            "30 to 50 cm for 30 to 100 L", "45 cm, 17.7 in", LineReaders.Quantity(Dimension.Length, "cm", 5, 500, "45 cm"), UsualIs: like));
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".height", $"How high is the {vessel.Called} inside?",
            "Tape measure from the bottom to the brim, rings that are always on included. If you know how much it holds, type that.", usualHeight,
            "", "41 cm, 65 L", LineReaders.HeightOrVolume, UsualIs: like));
    }

    private static void Rings(SetUpSheet sheet)
    {
        sheet.Ask(new SetUpQuestion.Pick(
            "rings", "How many extension rings can the kettle take?", "Rings that are put on for a large batch. A plan takes no more than it needs.",
            [new("0", "None"), new("1", "One"), new("2", "Two"), new("3", "Three")], "0"));
        if (sheet["rings"] == "0")
            return;
        sheet.Ask(new SetUpQuestion.Line(
            "kettle.ring", "How high is a ring?", "Tape measure from rim to rim. If you know how much it adds, type that.", "10 cm", "8 to 15 cm", "10 cm, 15 L",
            LineReaders.HeightOrVolume));
    }

    private static void Plate(SetUpSheet sheet, SetUpVessel vessel)
    {
        sheet.Ask(new SetUpQuestion.Pick(
            vessel.Id + ".plate", $"Is there a false bottom in the {vessel.Called}?", "When the bed sticks, the pump pulls on it with its whole head.",
            [new("yes", "Yes"), new("no", "No: a braid, a pipe or slots")], "yes"));
        if (sheet[vessel.Id + ".plate"] == "no")
            return;
        var inside = sheet.DiameterM(vessel.Id);
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".plate_diameter", "How wide is the false bottom?", "Tape measure across the plate.", LineReaders.Kept(Math.Round(94 * inside), "cm"),
            "a little less than the vessel", "39 cm", LineReaders.Quantity(Dimension.Length, "cm", 5, 100 * inside, "39 cm")));
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".plate_load", "What load is the false bottom rated for?", "As its maker says. A plan warns where the pump could pull more on it.",
            LineReaders.Kept(10 * Math.Ceiling(0.1 * Typical.PlateLoadKg(sheet.Number(vessel.Id + ".plate_diameter", Dimension.Length))), "kg"), "", "420 kg",
            LineReaders.Quantity(Dimension.Mass, "kg", 10, 50_000, "420 kg"), UsualIs: Typical.Guess));
    }

    private static string Free(IReadOnlyCollection<string> names, Notation notation)
    {
        for (var i = 1; ; i++)
        {
            var name = i == 1 ? notation.Text("My brewhouse") : notation.Text($"My brewhouse {i}");
            if (!names.Contains(name, StringComparer.OrdinalIgnoreCase))
                return name;
        }
    }
}
