using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Profiles;

/// <summary>Reads a brewhouse file.</summary>
public static class BrewhouseFile
{
    private static readonly Dictionary<string, VesselRoles> Roles = new(StringComparer.Ordinal)
    {
        ["liquor"] = VesselRoles.HotLiquor,
        ["mash"] = VesselRoles.Mash,
        ["lauter"] = VesselRoles.Lauter,
        ["whirlpool"] = VesselRoles.Whirlpool,
        ["boil"] = VesselRoles.Boil,
    };

    private static readonly Dictionary<string, MashHeating> MashWays = new(StringComparer.Ordinal)
    {
        ["direct"] = MashHeating.Direct,
        ["hot water"] = MashHeating.HotWater,
        ["coil"] = MashHeating.Coil,
        ["decoction"] = MashHeating.Decoction,
    };

    /// <param name="text">TOML.</param>
    /// <param name="file">Name for messages.</param>
    /// <exception cref="Deck.ProfileException">The first thing wrong.</exception>
    public static Brewhouse Read(string text, string file)
    {
        var entry = SchemaReader.Read(text, file, BrewhouseSchema.Keys);
        var brewhouse = new Brewhouse
        {
            Name = entry.Text("name"),
            UsualBatchL = entry.MaybeNumber("batch"),
            Coil = entry.One("coil") is { } coil ? new(coil.Number("effectiveness"), coil.Number("flow"), coil.Number("covered_at")) : null,
            Vessels = [.. entry.Many("vessel").Select(Vessel)],
            Circuits = [.. entry.Many("circuit").Select(Circuit)],
            Pumps = [.. entry.Many("pump").Select(Pump)],
            Hose = entry.One("hose") is { } hose ? new(hose.Number("length"), hose.Number("bore")) : null,
            Chiller = Chiller(entry.One("chiller")!),
            Fermenter = Fermenter(entry.One("fermenter")!),
            Habits = Habits(entry.One("habits")!),
            Spreads = entry.One("spread") is { } spread ? Spreads(spread) : null,
        };
        BrewhouseChecks.Run(entry, brewhouse);
        return brewhouse;
    }

    internal static IEnumerable<string> Words(VesselRoles roles) => Roles.Where(r => roles.HasFlag(r.Value)).Select(r => r.Key);

    internal static string Word(MashHeating way) => MashWays.First(w => w.Value == way).Key;

    private static Vessel Vessel(SchemaEntry entry) => new()
    {
        Id = entry.Text("id"),
        Name = entry.Text("name"),
        Roles = entry.Texts("roles").Aggregate(VesselRoles.None, (all, word) => all | Roles[word]),
        CapacityL = entry.Number("capacity"),
        RingL = entry.MaybeNumber("ring") ?? 0,
        Rings = (int)entry.Number("rings"),
        HeadroomL = entry.Number("headroom"),
        DeadSpaceL = entry.Number("dead_space"),
        DiameterM = entry.MaybeNumber("diameter"),
        OutletM = entry.MaybeNumber("outlet_height"),
        InletM = entry.MaybeNumber("inlet_height"),
        PipedTo = entry.Text("piped_to"),
        HeatCapacityJPerK = entry.Number("heat_capacity"),
        LossWPerK = entry.Number("heat_loss"),
        Elements = [.. entry.Many("element").Select(Element)],
        Burner = entry.One("burner") is { } burner
            ? new(burner.Text("medium") == "gas" ? HeatMedium.Gas : HeatMedium.Steam, burner.Number("net"), burner.Number("covered_at")) : null,
        FalseBottom = entry.One("false_bottom") is { } plate
            ? new(plate.Number("diameter"), plate.Number("rated_load")) : null,
    };

    private static Element Element(SchemaEntry entry) =>
        new(entry.Number("power"), entry.Number("net"), entry.Number("covered_at"), entry.Text("circuit"));

    private static Circuit Circuit(SchemaEntry entry) =>
        new(entry.Text("id"), entry.Number("voltage"), entry.Number("breaker"), entry.Number("continuous"), (int)entry.Number("sockets"));

    private static Pump Pump(SchemaEntry entry) =>
        new(entry.Text("id"), entry.Number("shut_off_head"), entry.Number("flow"), entry.Number("power"))
        {
            FreeFlowLPerMin = entry.MaybeNumber("free_flow"),
            NeedsSuctionM = entry.Number("suction_head"),
            HeightM = entry.Number("height"),
        };

    private static Chiller Chiller(SchemaEntry entry) => new(
        entry.Text("kind") == "immersion" ? ChillerKind.Immersion : ChillerKind.Counterflow,
        entry.Number("heat_transfer"),
        entry.Number("water_flow"),
        entry.Number("wort_flow"));

    private static Fermenter Fermenter(SchemaEntry entry) =>
        new(entry.Text("name"), entry.Number("capacity"), entry.Number("headspace")) { CoolingW = entry.MaybeNumber("cooling") ?? 0 };

    private static DaySpreads Spreads(SchemaEntry entry) => new()
    {
        ConversionYield = entry.MaybeNumber("conversion_yield"),
        Absorption = entry.MaybeNumber("grain_absorption"),
        SpargeStages = entry.MaybeNumber("sparge_stages"),
        Runoff = entry.MaybeNumber("runoff"),
        Evaporation = entry.MaybeNumber("evaporation"),
        ChillerTransfer = entry.MaybeNumber("heat_transfer"),
    };

    private static Habits Habits(SchemaEntry entry) => new()
    {
        MashThicknessLPerKg = entry.Number("mash_thickness"),
        ConversionYield = entry.Number("conversion_yield"),
        AbsorptionLPerKg = entry.Number("grain_absorption"),
        SpargeStages = entry.Number("sparge_stages"),
        RunoffLPerMin = entry.Number("runoff"),
        EvaporationKgPerH = entry.Number("evaporation"),
        TrubL = entry.Number("trub"),
        HopAbsorptionLPerKg = entry.Number("hop_absorption"),
        LineLossL = entry.Number("line_loss"),
        SpargeC = entry.Number("sparge_temperature"),
        FillLPerMin = entry.Number("fill"),
        MashHeating = MashWays[entry.Text("mash_heating")],
    };
}
