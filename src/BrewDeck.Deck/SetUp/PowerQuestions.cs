using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Circuits, and what hangs on them.</summary>
internal static class PowerQuestions
{
    private const double ContinuousFactor = 0.8;

    /// <summary>Depth of liquid that covers a usual element, m.</summary>
    private const string UsualCover = "6 cm";

    public static void Ask(SetUpSheet sheet)
    {
        var most = Math.Min(3, sheet.Vessels.Length + 1);
        sheet.Ask(new SetUpQuestion.Pick(
            "circuits", "How many circuits feed it?",
            "A circuit is a breaker with its socket. With fewer circuits than vessels the plug is moved during the day, as the plan says.",
            [.. Enumerable.Range(1, most).Select(n => new PickOption(Text(n), Count(n)))],
            "1"));
        sheet.Ask(Volts());
        var amps = "16 A";
        var circuits = new List<Circuit>();
        for (var i = 0; i < int.Parse(sheet["circuits"], CultureInfo.InvariantCulture); i++)
        {
            var id = ((char)('A' + i)).ToString();
            sheet.Ask(Breaker(id, amps));
            amps = sheet["amps." + id];
            circuits.Add(new(id, sheet.Number("volts", Dimension.Voltage), sheet.Number("amps." + id, Dimension.Current), ContinuousFactor));
        }
        sheet.Wire(circuits);
        foreach (var vessel in sheet.Vessels)
            Heat(sheet, vessel);
    }

    private static SetUpQuestion.Line Volts() => new(
        "volts", "How many volts is the mains?", "As printed on the element, or as your wiring has it.", "230 V", "120, 230 or 240 V", "230 V",
        LineReaders.Quantity(Dimension.Voltage, "V", 90, 480, "230 V"));

    private static SetUpQuestion.Line Breaker(string id, string usual) => new(
        "amps." + id, $"How many amps is the breaker of circuit {id}?",
        "As printed on the breaker. Elements draw for hours, so the plan uses 80 % of it; wiring is for a licensed electrician.", usual,
        "10 to 32 A", "16 A", LineReaders.Quantity(Dimension.Current, "A", 1, 400, "16 A"),
        UsualIs: id == "A" ? Typical.CommonPractice : "like the one before");

    private static void Heat(SetUpSheet sheet, SetUpVessel vessel)
    {
        var circuits = sheet.CircuitsOf(vessel.Id);
        var carries = Math.Floor(circuits[0].ContinuousW / 500) / 2 * 1000;
        var usual = HeatText.Of(vessel.UsualHeat)!;
        var fits = usual.Watts <= circuits[0].ContinuousW ? usual : usual with { Watts = Math.Max(100, carries) };
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".heat", $"How many watts heat the {vessel.Called}?",
            $"As printed on the element; several are written 2 x 3.5 kW, gas as gas 8 kW, steam as steam 45 kW{(vessel.MayBeCold ? ", an unheated tun as none" : default(Phrase))}.",
            fits.ToString(), "2 to 6 kW", "5.5 kW", LineReaders.Heat(circuits, vessel.MayBeCold)));
        if (sheet.Heat(vessel.Id).Count == 0)
            return;
        sheet.Ask(new SetUpQuestion.Line(
            vessel.Id + ".cover", $"At what depth is the heat of the {vessel.Called} covered?",
            "Tape measure from the bottom to 2 cm above the top of the element. Below that the plan never heats: a dry element burns out.", UsualCover,
            "4 to 10 cm", "6 cm", LineReaders.Quantity(Dimension.Length, "cm", 0, 100, "6 cm")));
    }

    /// <summary>Litres in the vessel at that depth.</summary>
    public static double CoverL(SetUpSheet sheet, string vesselId) =>
        Cylinder.VolumeL(sheet.DiameterM(vesselId), sheet.Number(vesselId + ".cover", Dimension.Length));

    private static Phrase Count(int n) => n switch
    {
        1 => "One",
        2 => "Two",
        _ => "Three",
    };

    private static string Text(int n) => n.ToString(CultureInfo.InvariantCulture);
}
