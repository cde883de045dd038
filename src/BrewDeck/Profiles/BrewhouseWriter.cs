using System.Globalization;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Profiles;

/// <summary>Writes a brewhouse as commented TOML, key by key from the schema.</summary>
/// <param name="notes">Where a number comes from, by vessel id or table and key.</param>
internal sealed class BrewhouseWriter(IReadOnlyDictionary<string, string> notes)
{
    public string Write(Brewhouse house, DateTimeOffset now)
    {
        var toml = new TomlText(BrewhouseSchema.Keys);
        toml.Remark(string.Create(CultureInfo.InvariantCulture, $"Made in the program {now:yyyy-MM-dd}. In brackets: where a number comes from."));
        toml.Remark("Mains next to water: each circuit behind a residual-current device, wired by a licensed electrician.");
        toml.Put("name", house.Name);
        toml.Put("batch", house.UsualBatchL);
        foreach (var vessel in house.Vessels)
            Vessel(toml.Section("vessel"), vessel);
        foreach (var circuit in house.Circuits)
            Circuit(toml.Section("circuit"), circuit);
        foreach (var pump in house.Pumps)
            Pump(toml.Section("pump"), pump);
        if (house.Coil is { } coil)
            Coil(toml.Section("coil"), coil);
        Chiller(toml.Section("chiller"), house.Chiller);
        Fermenter(toml.Section("fermenter"), house.Fermenter);
        Habits(toml.Section("habits"), house.Habits);
        if (house.Spreads is { } own)
            Spreads(toml.Section("spread"), own);
        return toml.ToString();
    }

    private void Vessel(TomlText toml, Vessel v)
    {
        void Put(string key, double? value) => toml.Put(key, value, Note(v.Id, key));
        toml.Put("id", v.Id);
        toml.Put("name", v.Name);
        toml.Put("roles", BrewhouseFile.Words(v.Roles));
        Put("capacity", v.CapacityL);
        if (v.Rings > 0)
        {
            Put("ring", v.RingL);
            Put("rings", v.Rings);
        }
        Put("headroom", v.HeadroomL);
        Put("dead_space", v.DeadSpaceL);
        Put("diameter", v.DiameterM);
        Put("heat_capacity", v.HeatCapacityJPerK);
        Put("heat_loss", v.LossWPerK);
        foreach (var element in v.Elements)
            Element(toml.Section("element"), v.Id, element);
        if (v.Burner is { } burner)
            Burner(toml.Section("burner"), v.Id, burner);
        if (v.FalseBottom is { } plate)
            FalseBottom(toml.Section("false_bottom"), v.Id, plate);
    }

    private void Element(TomlText toml, string vessel, Element e)
    {
        toml.Put("power", e.PowerW, Note(vessel, "power"));
        toml.Put("net", e.NetFraction, Note(vessel, "net"));
        toml.Put("covered_at", e.CoverL, Note(vessel, "covered_at"));
        toml.Put("circuit", e.CircuitId);
    }

    private void Burner(TomlText toml, string vessel, Burner b)
    {
        toml.Put("medium", b.Medium == HeatMedium.Gas ? "gas" : "steam");
        toml.Put("net", b.NetW, Note(vessel, "net"));
        toml.Put("covered_at", b.CoverL, Note(vessel, "covered_at"));
    }

    private void FalseBottom(TomlText toml, string vessel, FalseBottom plate)
    {
        toml.Put("diameter", plate.DiameterM, Note(vessel, "plate_diameter"));
        toml.Put("rated_load", plate.RatedLoadKg, Note(vessel, "rated_load"));
    }

    private static void Circuit(TomlText toml, Circuit c)
    {
        toml.Put("id", c.Id);
        toml.Put("voltage", c.Volts);
        toml.Put("breaker", c.Amps);
        toml.Put("continuous", c.ContinuousFactor);
        toml.Put("sockets", c.Sockets);
    }

    private void Pump(TomlText toml, Pump p)
    {
        toml.Put("id", p.Id);
        toml.Put("shut_off_head", p.ShutOffHeadM, Note("pump", "shut_off_head"));
        toml.Put("flow", p.FlowLPerMin, Note("pump", "flow"));
        toml.Put("power", p.PowerW, Note("pump", "power"));
    }

    private void Coil(TomlText toml, Coil coil)
    {
        toml.Put("effectiveness", coil.Effectiveness, Note("coil", "effectiveness"));
        toml.Put("flow", coil.FlowLPerMin, Note("coil", "flow"));
        toml.Put("covered_at", coil.CoverL, Note("coil", "covered_at"));
    }

    private void Chiller(TomlText toml, Chiller chiller)
    {
        toml.Put("kind", chiller.IsCoil ? "immersion" : "counterflow");
        toml.Put("heat_transfer", chiller.UaWPerK, Note("chiller", "heat_transfer"));
        toml.Put("water_flow", chiller.WaterLPerMin, Note("chiller", "water_flow"));
        toml.Put("wort_flow", chiller.WortLPerMin, Note("chiller", "wort_flow"));
    }

    private void Fermenter(TomlText toml, Fermenter fermenter)
    {
        toml.Put("name", fermenter.Name);
        toml.Put("capacity", fermenter.CapacityL);
        toml.Put("headspace", fermenter.HeadspaceL, Note("fermenter", "headspace"));
        toml.Put("cooling", fermenter.CoolingW > 0 ? fermenter.CoolingW : null, Note("fermenter", "cooling"));
    }

    private void Habits(TomlText toml, Habits habits)
    {
        void Put(string key, double value) => toml.Put(key, value, Note("habits", key));
        Put("mash_thickness", habits.MashThicknessLPerKg);
        Put("conversion_yield", habits.ConversionYield);
        Put("grain_absorption", habits.AbsorptionLPerKg);
        Put("sparge_stages", habits.SpargeStages);
        Put("runoff", habits.RunoffLPerMin);
        Put("evaporation", habits.EvaporationKgPerH);
        Put("trub", habits.TrubL);
        Put("hop_absorption", habits.HopAbsorptionLPerKg);
        Put("line_loss", habits.LineLossL);
        Put("sparge_temperature", habits.SpargeC);
        Put("fill", habits.FillLPerMin);
        toml.Put("mash_heating", BrewhouseFile.Word(habits.MashHeating));
    }

    private static void Spreads(TomlText toml, DaySpreads own)
    {
        toml.Put("conversion_yield", own.ConversionYield);
        toml.Put("grain_absorption", own.Absorption);
        toml.Put("sparge_stages", own.SpargeStages);
        toml.Put("runoff", own.Runoff);
        toml.Put("evaporation", own.Evaporation);
        toml.Put("heat_transfer", own.ChillerTransfer);
    }

    private string? Note(string of, string key) => notes.GetValueOrDefault($"{of}.{key}");
}
