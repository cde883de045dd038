using BrewDeck.Deck;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>The keys of a brewhouse file.</summary>
internal static class BrewhouseSchema
{
    public static readonly SchemaKey[] Keys =
    [
        new Text("name", "Quayside 65", "Shown on the deck and in the batch list."),
        new Quantity("batch", Dimension.Volume, "L", 1, 5000, "40 L",
            "Cold wort of a usual batch here; without it as each recipe says.", Required: false),
        new Section("vessel", Vessel(), "The vessels, in the order in which liquor and wort pass them."),
        new Section("circuit", Circuit(), "The mains circuits that the elements are plugged into."),
        new Section("pump", Pump(), "The wort and liquor pumps.", Least: 0),
        new Section("hose", Hose(), "The hoses that liquor and wort are moved through; without it as usual for the flow.", Least: 0, Many: false),
        new Section("coil", Coil(), "A coil in the hot liquor tank, through which wort is pumped round from the mash.", Least: 0, Many: false),
        new Section("chiller", Chiller(), "How wort is cooled.", Many: false),
        new Section("fermenter", Fermenter(), "Where the wort goes.", Many: false),
        new Section("habits", Habits(), "What this brewhouse does with malt, water and wort.", Many: false),
        new Section("spread", Spread(), "How far a day lies from the numbers above, as its own batches have shown: two days in three lie nearer. Lessons write it.",
            Least: 0, Many: false),
    ];

    private static SchemaKey[] Vessel() =>
    [
        new Text("id", "tun", "Short name used in this file and on the deck.", Longest: 16),
        new Text("name", "mash tun", "Name in sentences."),
        new Choice("roles", ["liquor", "mash", "lauter", "boil", "whirlpool"],
            "What it does on a brew day; one vessel may do several. Without lauter the mash tun does it, without whirlpool the kettle.",
            Many: true),
        new Quantity("capacity", Dimension.Volume, "L", 1, 5000, "65 L", "To the brim, with the rings that are always on."),
        new Quantity("ring", Dimension.Volume, "L", 0.5, 500, "15 L", "What each extension ring of the kettle adds.", Required: false),
        new Quantity("rings", Dimension.Number, "", 0, 5, "3", "How many can be put on; a plan takes no more than it needs.",
            Required: false, Default: 0),
        new Quantity("headroom", Dimension.Volume, "L", 0, 1000, "4 L",
            "Kept free below the brim for foam and stirring."),
        new Quantity("dead_space", Dimension.Volume, "L", 0, 500, "1.5 L", "Stays behind below the outlet."),
        new Quantity("diameter", Dimension.Length, "m", 0.05, 5, "44 cm", "Inside diameter, for readings by depth.",
            Required: false),
        new Quantity("outlet_height", Dimension.Length, "m", 0, 20, "55 cm",
            "Of its outlet above the floor; with the inlet of the next vessel it gives the lift of a pump, or the fall without one.", Required: false),
        new Quantity("inlet_height", Dimension.Length, "m", 0, 20, "1.1 m", "Of the end that liquid comes in through, above the floor.",
            Required: false),
        new Text("piped_to", "kettle", "Id of the vessel that a fixed pipe leads to from its outlet: no hose is moved for it.",
            Required: false, Longest: 16),
        new Quantity("heat_capacity", Dimension.HeatCapacity, "J/K", 10, 1e6, "9 kJ/K",
            "Of the empty vessel with its fittings."),
        new Quantity("heat_loss", Dimension.HeatTransfer, "W/K", 0, 500, "4 W/K",
            "Heat lost to the room with the lid on."),
        new Section("element", Element(), "Its electric elements.", Least: 0),
        new Section("burner", Burner(), "Steam or gas, which need no circuit.", Least: 0, Many: false),
        new Section("false_bottom", FalseBottom(), "The perforated plate under the grain bed.", Least: 0, Many: false),
    ];

    private static SchemaKey[] Element() =>
    [
        new Quantity("power", Dimension.Power, "W", 100, 50_000, "5.5 kW", "Rating at the circuit's voltage."),
        new Quantity("net", Dimension.Fraction, "", 0.3, 1, "96 %", "Share of the rating that reaches the liquid.",
            Required: false, Default: 0.96),
        new Quantity("covered_at", Dimension.Volume, "L", 0, 2000, "8 L",
            "Litres in the vessel that cover it; it is never on below that."),
        new Text("circuit", "A", "Id of the circuit that it is plugged into.", Longest: 16),
    ];

    private static SchemaKey[] Burner() =>
    [
        new Choice("medium", ["steam", "gas"], "What heats."),
        new Quantity("net", Dimension.Power, "W", 100, 1e6, "45 kW", "What reaches the liquid at full heat."),
        new Quantity("covered_at", Dimension.Volume, "L", 0, 5000, "300 L",
            "Litres in the vessel that cover the heated wall; it is never on below that."),
    ];

    private static SchemaKey[] Coil() =>
    [
        new Quantity("effectiveness", Dimension.Fraction, "", 0.05, 0.99, "70 %",
            "Share of the difference between liquor and wort that the wort gains on its way."),
        new Quantity("flow", Dimension.Flow, "L/min", 0.5, 500, "8 L/min", "Wort pumped round."),
        new Quantity("covered_at", Dimension.Volume, "L", 0, 2000, "20 L", "Liquor in the tank that covers it."),
    ];

    private static SchemaKey[] FalseBottom() =>
    [
        new Quantity("diameter", Dimension.Length, "m", 0.05, 5, "39 cm", "Diameter of the plate."),
        new Quantity("rated_load", Dimension.Mass, "kg", 5, 50_000, "400 kg", "Load that it is rated for."),
    ];

    private static SchemaKey[] Circuit() =>
    [
        new Text("id", "A", "Short name.", Longest: 16),
        new Quantity("voltage", Dimension.Voltage, "V", 90, 480, "240 V", "Between its conductors."),
        new Quantity("breaker", Dimension.Current, "A", 1, 400, "30 A", "Rating of its breaker."),
        new Quantity("continuous", Dimension.Fraction, "", 0.3, 1, "80 %",
            "Share of the rating that may be drawn for hours; local codes decide.", Required: false, Default: 0.8),
        new Quantity("sockets", Dimension.Number, "", 1, 8, "1", "How many plugs fit.", Required: false, Default: 1),
    ];

    private static SchemaKey[] Pump() =>
    [
        new Text("id", "wort", "Short name.", Longest: 16),
        new Quantity("shut_off_head", Dimension.Length, "m", 0.2, 50, "3.4 m",
            "Head at which the flow stops, metres of water."),
        new Quantity("flow", Dimension.Flow, "L/min", 0.5, 500, "12 L/min", "Through the usual hoses."),
        new Quantity("power", Dimension.Power, "W", 1, 10_000, "90 W", "Electrical power."),
        new Quantity("free_flow", Dimension.Flow, "L/min", 0.5, 1000, "25 L/min",
            "Against no head at all, from its data sheet: with it transfers follow its curve, the hose and the lift.", Required: false),
        new Quantity("suction_head", Dimension.Length, "m", 0.05, 10, "0.5 m", "That it needs at its inlet not to cavitate.",
            Required: false, Default: Core.Brewhouses.Pump.UsualSuctionM),
        new Quantity("height", Dimension.Length, "m", 0, 10, "20 cm", "Of its inlet above the floor.",
            Required: false, Default: Core.Brewhouses.Pump.UsualHeightM),
    ];

    private static SchemaKey[] Hose() =>
    [
        new Quantity("length", Dimension.Length, "m", 0.1, 50, "2 m", "From outlet to inlet, the pump between them."),
        new Quantity("bore", Dimension.Length, "m", 0.003, 0.2, "13 mm", "Inside diameter."),
    ];

    private static SchemaKey[] Chiller() =>
    [
        new Choice("kind", ["counterflow", "immersion"], "Wort passes once through it, or it hangs in the kettle.",
            "counterflow"),
        new Quantity("heat_transfer", Dimension.HeatTransfer, "W/K", 10, 50_000, "900 W/K",
            "Overall: area times coefficient."),
        new Quantity("water_flow", Dimension.Flow, "L/min", 0.5, 500, "10 L/min", "Cooling water."),
        new Quantity("wort_flow", Dimension.Flow, "L/min", 0.2, 500, "5 L/min",
            "Wort through it at full throttle; for an immersion chiller the flow of the cast-out."),
    ];

    private static SchemaKey[] Fermenter() =>
    [
        new Text("name", "conical fermenter", "Name in sentences."),
        new Quantity("capacity", Dimension.Volume, "L", 1, 10_000, "85 L", "To the brim."),
        new Quantity("headspace", Dimension.Volume, "L", 0, 2000, "10 L", "Kept free for foam."),
        new Quantity("cooling", Dimension.Power, "W", 0, 100_000, "150 W",
            "Heat that a jacket, a coil of its own or its cold cabinet takes from the wort: 20 L that fall 2 °C in an hour give 50 W. With it a lager is cast out "
            + "as cold as the water allows, and cooled on before the yeast.",
            Required: false),
    ];

    private static SchemaKey[] Habits() =>
    [
        new Quantity("mash_thickness", Dimension.Thickness, "L/kg", 1.5, 8, "3 L/kg",
            "Strike liquor to grist; usual 2.5 to 4."),
        new Quantity("conversion_yield", Dimension.Fraction, "", 0.5, 1, "96 %",
            "Share of the laboratory extract that the mash dissolves; usual 92 to 99 %."),
        new Quantity("grain_absorption", Dimension.Thickness, "L/kg", 0.2, 3, "0.95 L/kg",
            "Wort kept by the drained grain as weighed; usual 0.8 to 1.2."),
        new Quantity("sparge_stages", Dimension.Number, "", 1, 12, "2.5",
            "How evenly sparge liquor pushes the wort out: 1 mixes fully, 6 is very even."),
        new Quantity("runoff", Dimension.Flow, "L/min", 0.1, 100, "1.2 L/min", "Flow from the tun while lautering."),
        new Quantity("evaporation", Dimension.Evaporation, "kg/h", 0.1, 500, "4.5 kg/h",
            "Water that leaves a rolling boil."),
        new Quantity("trub", Dimension.Volume, "L", 0, 500, "1.5 L",
            "Wort left in the kettle with trub, besides its dead space and what hops soak up."),
        new Quantity("hop_absorption", Dimension.Thickness, "L/kg", 0, 30, "7 L/kg",
            "Wort soaked up by hops; usual 5 to 10 for pellets, more for cones."),
        new Quantity("line_loss", Dimension.Volume, "L", 0, 100, "0.8 L",
            "Left in hoses, pump and chiller at cast-out."),
        new Quantity("sparge_temperature", Dimension.Temperature, "°C", 15, 82, "76 °C",
            "Sparge liquor; usual 75 to 78."),
        new Quantity("fill", Dimension.Flow, "L/min", 0.5, 1000, "10 L/min", "Source water into a vessel.",
            Required: false, Default: 10),
        new Choice("mash_heating", ["direct", "hot water", "coil", "decoction"],
            "From rest to rest by heat under or beside the mash with the wort pumped round, by additions of hot water, through the coil, or by boiling part of the mash in the kettle.",
            "direct"),
    ];

    private static SchemaKey[] Spread() =>
    [
        Own("conversion_yield", "0.8 %", "Of the mash yield, in points."),
        Own("grain_absorption", "3 %", "Of the wort that the grain keeps, as a share of it."),
        Own("sparge_stages", "12 %", "Of the washing stages."),
        Own("runoff", "6 %", "Of the run-off."),
        Own("evaporation", "3 %", "Of the evaporation."),
        Own("heat_transfer", "6 %", "Of the chiller."),
    ];

    private static Quantity Own(string name, string example, string meaning) =>
        new(name, Dimension.Fraction, "", 0.001, 0.5, example, meaning, Required: false);
}
