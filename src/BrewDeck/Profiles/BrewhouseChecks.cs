using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Profiles;

/// <summary>What no single key can tell: ids, roles, and numbers that must fit each other.</summary>
internal static class BrewhouseChecks
{
    private static readonly (VesselRoles Role, string Word)[] Roles =
        [
            (VesselRoles.HotLiquor, "liquor"), (VesselRoles.Mash, "mash"), (VesselRoles.Boil, "boil"), (VesselRoles.Lauter, "lauter"),
            (VesselRoles.Whirlpool, "whirlpool"),
        ];

    private const VesselRoles MayBeLeftOut = VesselRoles.Lauter | VesselRoles.Whirlpool;

    public static void Run(SchemaEntry entry, Brewhouse brewhouse)
    {
        foreach (var section in (string[])["vessel", "circuit", "pump"])
            NoDoubles(entry.Many(section), section);
        EachRoleOnce(entry, brewhouse);
        foreach (var (vessel, lines) in brewhouse.Vessels.Zip(entry.Many("vessel")))
        {
            Volumes(vessel, lines);
            foreach (var (element, elementLines) in vessel.Elements.Zip(lines.Many("element")))
                Heat(vessel, element, elementLines, brewhouse);
        }

        Heated(entry, brewhouse);
        Pipes(entry, brewhouse);
        Pumps(entry, brewhouse);
        if (brewhouse.Fermenter.HeadspaceL >= brewhouse.Fermenter.CapacityL)
            throw entry.One("fermenter")!.Error("headspace",
                "fermenter.headspace leaves no room below it; it must be less than capacity");
    }

    private static void NoDoubles(IReadOnlyList<SchemaEntry> entries, string section)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var entry in entries)
            if (!seen.TryAdd(entry.Text("id"), entry.LineOf("id")))
                throw entry.Error("id",
                    $"{section}.id '{entry.Text("id")}' is on line {seen[entry.Text("id")]} already; give each {section} its own");
    }

    private static void EachRoleOnce(SchemaEntry entry, Brewhouse brewhouse)
    {
        foreach (var (role, word) in Roles)
        {
            var with = brewhouse.Vessels.Zip(entry.Many("vessel")).Where(v => v.First.Roles.HasFlag(role)).ToArray();
            if (with.Length == 0 && !MayBeLeftOut.HasFlag(role))
                throw entry.Error("vessel",
                    $"no vessel has the role {word}; write roles = [\"{word}\"] in the one that does it");
            if (with.Length > 1)
                throw with[1].Second.Error("roles",
                    $"vessels {with[0].First.Id} and {with[1].First.Id} both have the role {word}; leave it to one");
        }
    }

    private static void Volumes(Vessel vessel, SchemaEntry entry)
    {
        if (vessel.HeadroomL >= vessel.CapacityL)
            throw entry.Error("capacity",
                $"capacity of {vessel.Id} is {vessel.CapacityL} L, not above its headroom of {vessel.HeadroomL} L; give the volume to the brim");
        if (vessel.DeadSpaceL >= vessel.WorkingL)
            throw entry.Error("dead_space",
                $"dead_space of {vessel.Id} is {vessel.DeadSpaceL} L of {vessel.WorkingL} L to work with; it is what stays below the outlet");
    }

    private static void Heat(Vessel vessel, Element element, SchemaEntry entry, Brewhouse brewhouse)
    {
        if (element.CoverL > vessel.WorkingL)
            throw entry.Error("covered_at",
                $"covered_at is {element.CoverL} L, more than the {vessel.WorkingL} L that {vessel.Id} may hold");
        var circuit = brewhouse.Circuits.FirstOrDefault(c => c.Id == element.CircuitId)
            ?? throw entry.Error("circuit",
                $"circuit '{ProfileError.OneLine(element.CircuitId)}' is not in this file; the circuits are {string.Join(", ", brewhouse.Circuits.Select(c => c.Id))}");
        if (element.PowerW > circuit.ContinuousW)
            throw entry.Error("power",
                $"power is {element.PowerW} W, but circuit {circuit.Id} carries {circuit.ContinuousW:F0} W for hours ({circuit.Volts} V x {circuit.Amps} A x {circuit.ContinuousFactor}); a smaller element or a larger circuit is needed");
    }

    /// <summary>Fixed pipes lead on, never round.</summary>
    private static void Pipes(SchemaEntry entry, Brewhouse brewhouse)
    {
        foreach (var (vessel, lines) in brewhouse.Vessels.Zip(entry.Many("vessel")))
        {
            var way = new List<string> { vessel.Id };
            for (var at = vessel; at.PipedTo.Length > 0; way.Add(at.Id))
            {
                at = brewhouse.Vessels.FirstOrDefault(v => v.Id == at.PipedTo)
                    ?? throw lines.Error("piped_to",
                        $"piped_to is '{ProfileError.OneLine(at.PipedTo)}', which is not in this file; the vessels are {string.Join(", ", brewhouse.Vessels.Select(v => v.Id))}");
                if (way.Contains(at.Id))
                    throw lines.Error("piped_to",
                        $"the pipes go round: {string.Join(" to ", way)} to {at.Id}; what is in there never gets on, so leave out piped_to of one");
            }
        }
    }

    private static void Pumps(SchemaEntry entry, Brewhouse brewhouse)
    {
        foreach (var (pump, lines) in brewhouse.Pumps.Zip(entry.Many("pump")))
        {
            if (pump.FreeFlowLPerMin is not { } free)
                continue;
            if (free <= pump.FlowLPerMin)
                throw lines.Error("free_flow",
                    $"free_flow is {free} L/min, not above flow of {pump.FlowLPerMin} L/min; it is what the pump gives without hoses");
            if (Core.Planning.Plumbing.Coefficients(pump, Core.Planning.Plumbing.HoseOf(brewhouse)) < 0)
                throw (entry.One("hose") ?? lines).Error(entry.One("hose") is null ? "flow" : "bore",
                    $"pump {pump.Id} cannot give {pump.FlowLPerMin} L/min through that hose; give a wider bore, a shorter length or the flow as measured");
        }
    }

    private static void Heated(SchemaEntry entry, Brewhouse brewhouse)
    {
        var vessels = entry.Many("vessel");
        foreach (var vessel in (Vessel[])[brewhouse.HotLiquorTank, brewhouse.Kettle])
            if (!vessel.IsHeated)
                throw vessels[brewhouse.Vessels.IndexOf(vessel)].Error("id",
                    $"vessel {vessel.Id} has nothing to heat with; begin an element with [[vessel.element]], or steam or gas with [vessel.burner]");
        if (brewhouse.Habits.MashHeating == MashHeating.Direct && !brewhouse.MashTun.IsHeated)
            throw entry.One("habits")!.Error("mash_heating",
                $"mash_heating is direct, but {brewhouse.MashTun.Id} has nothing to heat with; write mash_heating = \"hot water\" or give it one");
        if (brewhouse.Habits.MashHeating == MashHeating.Coil && brewhouse.Coil is null)
            throw entry.One("habits")!.Error("mash_heating", "mash_heating is coil, but there is none; describe it with [coil]");
        if (brewhouse.Coil is { } coil && coil.CoverL > brewhouse.HotLiquorTank.WorkingL)
            throw entry.One("coil")!.Error("covered_at",
                $"covered_at is {coil.CoverL} L, more than the {brewhouse.HotLiquorTank.WorkingL} L that {brewhouse.HotLiquorTank.Id} may hold");
        if (brewhouse.Habits.MashHeating != MashHeating.Direct && brewhouse.HotLiquorTank == brewhouse.MashTun)
            throw entry.One("habits")!.Error("mash_heating",
                $"{brewhouse.MashTun.Id} is liquor tank and mash tun in one; write mash_heating = \"direct\"");
    }
}
