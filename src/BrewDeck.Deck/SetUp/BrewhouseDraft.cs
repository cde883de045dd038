using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Deck.SetUp;

/// <summary>Makes a brewhouse of the answers.</summary>
internal static class BrewhouseDraft
{
    private const double HeadspaceShare = 0.11;

    public static Brewhouse Of(SetUpSheet sheet) => House(sheet) with { UsualBatchL = sheet.Number("batch", Dimension.Volume) };

    /// <summary>Without its usual batch, which is asked last because it follows from all the rest.</summary>
    public static Brewhouse House(SetUpSheet sheet)
    {
        var fermenterL = sheet.Number("fermenter", Dimension.Volume);
        var coil = sheet["mash"] == "coil";
        return new()
        {
            Name = sheet["name"],
            Vessels = [.. sheet.Vessels.Select(v => Vessel(sheet, v))],
            Circuits = [.. sheet.Circuits],
            Pumps = [.. Pumps(sheet["pumps"])],
            Coil = coil ? new(0.7, 8, Math.Round(0.35 * sheet.CapacityL("liquor"), 1)) : null,
            Chiller = sheet["chiller"] == "immersion" ? new(ChillerKind.Immersion, 450, 10, 6) : new(ChillerKind.Counterflow, 900, 12, 5),
            Fermenter = new("fermenter", fermenterL, Math.Round(HeadspaceShare * fermenterL, 1)) { CoolingW = Math.Round(Typical.FermenterCoolingW(sheet["cooling"], fermenterL)) },
            Habits = Habits(sheet),
        };
    }

    private static Vessel Vessel(SetUpSheet sheet, SetUpVessel asked)
    {
        var capacity = Math.Round(sheet.CapacityL(asked.Id), 1);
        return new()
        {
            Id = asked.Id,
            Name = asked.Name,
            Roles = asked.Roles,
            CapacityL = capacity,
            RingL = asked.Id == "kettle" ? Math.Round(sheet.RingL, 1) : 0,
            Rings = asked.Id == "kettle" ? sheet.Rings : 0,
            HeadroomL = Math.Round(asked.Headroom * capacity, 1),
            DeadSpaceL = sheet.Number(asked.Id + ".dead", Dimension.Volume),
            DiameterM = sheet.DiameterM(asked.Id),
            HeatCapacityJPerK = Math.Round(sheet.HeatCapacityJPerK(asked.Id) / 100) * 100,
            LossWPerK = Math.Round(sheet.Number(asked.Id + ".loss", Dimension.HeatTransfer), 1),
            Elements = [.. Elements(sheet, asked.Id)],
            Burner = sheet.Heat(asked.Id).Medium is { } medium ? new(medium, sheet.NetW(asked.Id), Cover(sheet, asked.Id)) : null,
            FalseBottom = Plate(sheet, asked.Id),
        };
    }

    private static FalseBottom? Plate(SetUpSheet sheet, string id) => sheet.HasPlate(id)
        ? new(sheet.Number(id + ".plate_diameter", Dimension.Length), sheet.Number(id + ".plate_load", Dimension.Mass))
        : null;

    private static IEnumerable<Element> Elements(SetUpSheet sheet, string id)
    {
        var heat = sheet.Heat(id);
        return heat.Medium is not null ? [] : Enumerable.Range(0, heat.Count)
            .Select(e => new Element(heat.Watts, sheet.Number(id + ".net", Dimension.Fraction), Cover(sheet, id), sheet.CircuitsOf(id)[e].Id));
    }

    private static double Cover(SetUpSheet sheet, string id) => Math.Round(PowerQuestions.CoverL(sheet, id), 1);

    private static ImmutableArray<Pump> Pumps(string count) => count switch
    {
        "0" => [],
        "1" => [new("wort", 3, 8, 60)],
        _ => [new("liquor", 3, 8, 60), new("wort", 3, 8, 60)],
    };

    private static Habits Habits(SetUpSheet sheet)
    {
        var sparges = sheet.Vessels.Length >= 3;
        var bed = (SetUpVessel.Lautering(sheet.Vessels) ?? sheet.Vessels[0]).Id;
        return new()
        {
            MashThicknessLPerKg = sparges ? 3 : 4,
            ConversionYield = 0.95,
            AbsorptionLPerKg = sheet.Vessels.Length == 1 ? 0.85 : 0.95,
            SpargeStages = sparges ? 2.5 : 1,
            RunoffLPerMin = Math.Round(Typical.RunoffLPerMin(sheet.DiameterM(bed)) * (sparges ? 1 : 1.7), 1),
            EvaporationKgPerH = sheet.Number("evaporation", Dimension.Evaporation),
            TrubL = Math.Round(0.016 * sheet.CapacityL("kettle"), 1),
            HopAbsorptionLPerKg = 7,
            LineLossL = sheet["chiller"] == "immersion" ? 0.3 : 0.8,
            SpargeC = 76,
            MashHeating = sheet["mash"] switch { "coil" => MashHeating.Coil, "hot water" => MashHeating.HotWater, _ => MashHeating.Direct },
        };
    }
}
