using System.Collections.Immutable;
using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>Screens of an invented day at the Quayside brewhouse, of every kind and in the states that matter.</summary>
internal static class SampleScreens
{
    private const string Day = "Quayside Amber, 40 L   14:32:07";

    private static readonly ImmutableArray<KeyHint> DeckKeys =
    [
        new("space", "go on"), new("0-9", "reading"), new("u", "undo"), new("n", "note"), new("h", "hold"), new("?", "keys"), new("w", "wipe lock"),
    ];

    public static readonly DeckScreen Rest = new(
        "Mash · rest 2 of 3",
        Day,
        "23:41",
        "left of rest 2",
        Tone.Normal,
        Line.Of("HOLD 66 °C", Tone.Strong),
        [Line.Of("Keep the pump running. Stir at half time and look that the bed does not lift.")],
        [Line.Of("Wort at 66 °C scalds: lid on while the pump runs.")],
        new Line([new Span("hands needed in "), new Span("23 min", Tone.Strong)]),
        [new("14:55", "ramp to 76 °C by direct heat, pump on", "12 min"), new("15:10", "vorlauf until it runs clear", "15 min")],
        [Line.Of("sparge water heats in the liquor tank, 78 °C at 14:48", Tone.Muted)],
        [
            new("liquor", 0.63, "41 L  71.9 °C  heat on", Tone.Normal),
            new("tun", 0.68, "44 L  65.8 °C  pump on", Tone.Normal),
            new("kettle", 0, "empty", Tone.Muted),
        ],
        [new("circuit A", 0.99, "14.9 of 15 A", Tone.Normal), new("circuit B", 0, "0 of 15 A", Tone.Normal)],
        [
            new("gravity", "1.048", "1.046..1.050", Tone.Normal),
            new("into tank", "40.2 L", "39.1..41.0", Tone.Normal),
            new("bitterness", "32 IBU", "29..35", Tone.Normal),
            new("pitch", "18:25", "18:10..18:45", Tone.Normal),
        ],
        [new("set up", 0, 0.06), new("heat", 0.06, 0.2), new("mash", 0.2, 0.42), new("lauter", 0.42, 0.58), new("boil", 0.58, 0.8), new("cool", 0.8, 0.92), new("pitch", 0.92, 0.95), new("clean", 0.95, 1)],
        0.34,
        [
            Line.Of("14:14  rest 2 begun at 66.0 °C", Tone.Muted),
            Line.Of("14:10  tun 65.4 °C, 0.6 under: 4 min of heat chosen", Tone.Muted),
            Line.Of("13:58  rest 1 begun at 52.1 °C", Tone.Muted),
            Line.Of("13:52  grist in, 9.4 kg", Tone.Muted),
        ],
        DeckKeys);

    public static readonly DeckScreen Overdue = Rest with
    {
        Title = "Boil · addition 2 of 4",
        Big = "+02:13",
        BigLabel = "over time",
        BigTone = Tone.Alarm,
        Headline = Line.Of("ADD 45 g Perle NOW", Tone.Due),
        Sentences = [Line.Of("Element off, add in three portions, element on again."), Line.Of("Stay at the kettle until the foam has fallen.")],
        CautionLines =
        [
            Line.Of("Boil-over: hops seed foam. Keep the spray bottle at hand.", Tone.Warning),
            Line.Of("Steam and boiling wort scald: gloves and goggles on, stand to the side of the kettle, and do not lean over it."),
            Line.Of("Mains near water: the lead of the element stays dry and above the kettle's rim."),
        ],
        Hands = Line.Of("hands needed now", Tone.Due),
        Next = [new("16:40", "boil on", "15 min"), new("16:55", "add 30 g Saphir", "1 min")],
        Background = [],
        Vessels =
        [
            new("liquor", 0.1, "6 L  74.0 °C", Tone.Normal),
            new("tun", 0.4, "grain drains", Tone.Muted),
            new("kettle", 0.88, "57 L  boil-over near the rim", Tone.Alarm),
        ],
        Circuits = [new("circuit A", 1, "15.2 of 15 A, over", Tone.Warning), new("circuit B", 0.5, "7.4 of 15 A", Tone.Normal)],
        Outlook = [new("gravity", "1.051", "1.049..1.053", Tone.Warning), new("into tank", "37.9 L", "37.0..38.8", Tone.Warning), new("pitch", "18:31", "", Tone.Normal)],
        StripNow = 0.69,
        Notice = Line.Of("too much power on circuit A: kettle 1 set to 2.9 kW", Tone.Warning),
    };

    public static readonly DeckScreen LongHeat = Rest with
    {
        Title = "Liquor · heat strike water",
        Big = "1:04:32",
        BigLabel = "until strike heat",
        Headline = Line.Of("HEATING TO 72.4 °C", Tone.Strong),
        Sentences = [Line.Of("Nothing to do with the hands. Weigh in the grist meanwhile.")],
        CautionLines = [],
        Strip = Rest.Strip,
        StripNow = 0.11,
        Log = [],
        Background = [],
    };

    public static readonly DeckScreen Asked = Rest with
    {
        Overlay = new EntryOverlay("Reading of the tun", "6", Line.Of("°C, as in 66.2; understood as 6 °C"), Line.Of("6 °C is 59.8 under the rest: strike the rest of the number, or Enter twice", Tone.Warning)),
    };

    public static readonly DeckScreen Offered = Rest with
    {
        Overlay = new ChoiceOverlay(
            "The tun is 1.4 °C under the rest. Bring it back?",
            [Line.Of("All of these keep the batch at 40 L."), Line.Of("")],
            [new(["heat 6 min with the pump on"]), new(["add 1.8 L of boiling water"], Tone.Warning), new(["leave it: gravity 1.046 instead of 1.048"])],
            1),
    };

    public static readonly ListScreen Recipes = new(
        "Recipes",
        "Quayside   14:32",
        [new("recipe", 0), new("batch", 7, Right: true), new("gravity", 8, Right: true), new("day", 8, Right: true)],
        [
            new(["Quayside Amber", "40 L", "1.048", "6 h 10"]),
            new(["Harbour Lager, three rests", "40 L", "1.050", "7 h 25"]),
            new(["Long Pier Strong", "32 L", "1.092", "7 h 50"], Tone.Warning),
            new(["Lighthouse Pale, late hops", "40 L", "1.052", "6 h 30"]),
        ],
        1,
        [Line.Of("Harbour Lager, three rests", Tone.Strong), Line.Of("Pilsner malt 8.6 kg, Munich malt 1.2 kg; rests at 52, 63 and 72 °C, mash-out at 76 °C. Tettnanger at 60 and 10 minutes, 24 IBU."), Line.Of("Fits the brewhouse: tun 71 % full, 14.9 of 15 A.")],
        [new("Enter", "plan it"), new("↑ ↓", "choose"), new("i", "import"), new("?", "keys"), new("q", "leave")]);

    public static readonly ListScreen LongList = Recipes with
    {
        Title = "Batches",
        Rows = [.. Enumerable.Range(1, 20_000).Select(i => new Row([$"batch {i}", "40 L", "1.048", "6 h 10"]))],
        Selected = 14_999,
        Details = [],
    };

    public static readonly TextScreen Sheet = new(
        "Run sheet",
        Day,
        [.. Enumerable.Range(1, 60).Select(i => Line.Of($"{i,2}  step {i}: what the hands do, with its target and its time, and a caution where one is due"))],
        12,
        [new("↑ ↓", "scroll"), new("Esc", "back")]);

    private static readonly HourAxis Hours = new(7 * 3600, 2.5 * 3600, [.. Enumerable.Range(0, 7).Select(h => new HourMark(1800 + h * 3600, $"{9 + h:00}:00"))]);

    public static readonly ChartScreen Charts = new(
        "Charts: Quayside Amber",
        Day,
        [
            new CurveDrawing(
                new DayChart("Gravity", "SG", "0.000", 7 * 3600,
                [
                    new("tun", 1, [new(3600, 1.012), new(7200, 1.071), new(9000, 1.074), new(12000, 1.004)], [new(7000, 1.068)], [new(9000, 1.072), new(12600, 1.004)]),
                    new("kettle", 2, [new(9300, double.NaN), new(9600, 1.06), new(12000, 1.041), new(20000, 1.048)], [], [new(9600, 1.059), new(20600, 1.0474)]),
                ], new ChartBand(21000, 1.0455, 1.0492)),
                Hours),
            new TimetableDrawing(
            [
                new("Heat the strike liquor to 71.2 °C", new(0, 3400), new(120, 3700), "+5 min", Tone.Normal),
                new("Rest at 66 °C: saccharification", new(3800, 7400), new(4100, 7700), "+5 min", Tone.Strong),
                new("Vorlauf till clear", new(7400, 8600), null, "skipped", Tone.Warning),
                new("Heat the mash by 4 minutes of direct heat", null, new(7700, 7940), "put in", Tone.Normal),
                new("Lauter and sparge to 47.5 L in the kettle", new(8600, 12200), new(8700, 12300), "", Tone.Muted),
            ], Hours),
        ],
        0,
        0,
        [new("space", "next chart"), new("q", "back")]);

    public static readonly (string Name, Screen Screen)[] All =
    [
        ("rest", Rest), ("overdue", Overdue), ("long-heat", LongHeat), ("asked", Asked), ("offered", Offered), ("recipes", Recipes), ("long-list", LongList), ("sheet", Sheet), ("charts", Charts), ("timetable", Charts with { Selected = 1, Offset = 1 }),
    ];

}
