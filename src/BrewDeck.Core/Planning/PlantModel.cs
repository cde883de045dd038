using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Planning;

/// <summary>What a step made of the plant.</summary>
/// <param name="State">The plant when the step ended or was cut.</param>
/// <param name="StartS">Seconds since the start of the day.</param>
/// <param name="Left">What is left of the step; null when it came to its end.</param>
/// <param name="TargetC">Temperature aimed at, °C.</param>
/// <param name="VolumeL">Volume moved or reached, litres at 20 °C.</param>
public sealed record StepOutcome(
    PlantState State, double StartS, double DurationS, StepSpec? Left, double? TargetC, double? VolumeL)
{
    public double EndS => StartS + DurationS;
}

/// <summary>
/// The one model: what a step makes of the plant. The plan folds it over the run sheet; recalculation folds it from the measured
/// state over what is left. Pure: the same state and step always give the same outcome.
/// </summary>
public static class PlantModel
{
    /// <summary>Before anything is done: vessels empty and at the temperature of the room.</summary>
    public static PlantState Empty(PlantSetting setting) => new()
    {
        Vessels = [.. Enumerable.Repeat(new VesselState(0, 0, 0, setting.AmbientC), setting.FermenterIndex + 1)],
        CircuitFreeS = [.. setting.Circuits.Select(_ => 0.0)],
        PlugAt = setting.Wiring.AtFirst(setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id)),
    };

    /// <summary>Runs a step to its end as soon as its vessels, its circuit and the hands are free, and marks them busy.</summary>
    /// <param name="notBeforeS">Seconds since the start of the day.</param>
    public static StepOutcome After(PlantSetting setting, StepSpec spec, PlantState state, double notBeforeS)
    {
        var vessels = VesselsOf(setting, spec);
        var start = Math.Max(notBeforeS, EarliestStartS(setting, spec, state, vessels));
        var outcome = Run(setting, spec, state, start, double.PositiveInfinity, vessels);
        return outcome with { State = Occupied(setting, spec, outcome) };
    }

    /// <summary>Runs a step from a moment on, for at most so many seconds.</summary>
    public static StepOutcome Run(PlantSetting setting, StepSpec spec, PlantState state, double startS, double limitS) =>
        Run(setting, spec, state, startS, limitS, VesselsOf(setting, spec));

    private static StepOutcome Run(PlantSetting setting, StepSpec spec, PlantState state, double startS, double limitS, ImmutableArray<int> vessels)
    {
        var bench = new Workbench(setting, state);
        foreach (var vessel in vessels)
            bench.Wait(vessel, startS);
        var progress = Operate(bench, spec, limitS);
        foreach (var vessel in vessels)
            bench.Vessels[vessel] = bench.Vessels[vessel] with { AtS = startS + progress.ElapsedS };
        return new(bench.ToState(), startS, progress.ElapsedS, progress.Left, progress.TargetC, progress.VolumeL);
    }

    /// <summary>Every vessel waits until a moment; those known beyond it stay as they are.</summary>
    public static PlantState WaitUntil(PlantSetting setting, PlantState state, double untilS)
    {
        var bench = new Workbench(setting, state);
        for (var i = 0; i < bench.Vessels.Length; i++)
            bench.Wait(i, untilS);
        return bench.ToState();
    }

    /// <summary>The vessels of a step that is over wait until a moment; the others stay as they are.</summary>
    public static PlantState WaitUntil(PlantSetting setting, PlantState state, double untilS, StepSpec spec)
    {
        var bench = new Workbench(setting, state);
        foreach (var i in VesselsOf(setting, spec))
        {
            bench.Wait(i, untilS);
            bench.Vessels[i] = bench.Vessels[i] with { AtS = untilS };
        }
        return bench.ToState();
    }

    /// <summary>Vessels that a step works in, draws from or fills.</summary>
    public static ImmutableArray<int> VesselsOf(PlantSetting setting, StepSpec spec)
    {
        if (spec.Kind == StepKind.MovePlug)
            return [];
        Span<int> found = stackalloc int[5];
        var count = 0;
        if (spec.Vessel.Length > 0)
            found[count++] = setting.IndexOf(spec.Vessel);
        // The strike heat names the tun only to aim at it.
        if (spec.To.Length > 0 && spec.Kind != StepKind.HeatStrike && spec.To != spec.Vessel)
            found[count++] = setting.IndexOf(spec.To);
        if (spec.SpargeL > 0)
            found[count++] = setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id);
        if (spec.Kind == StepKind.FreeBed && spec.VolumeL > 0)
            found[count++] = setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id);
        if (spec.Kind is StepKind.Ramp or StepKind.HeatMash && setting.Habits.MashHeating == MashHeating.Coil)
            found[count++] = setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id);
        return [.. found[..count]];
    }

    /// <summary>Index of the vessel that a step heats; -1: none.</summary>
    public static int HeatedVessel(PlantSetting setting, StepSpec spec)
    {
        if (!spec.Kind.Heats())
            return -1;
        if (spec.Kind is StepKind.Ramp or StepKind.HeatMash && setting.Habits.MashHeating == MashHeating.Coil)
            return setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id);
        return setting.IndexOf(spec.HeatsIn());
    }

    /// <summary>Power that a step draws from each circuit in use, W.</summary>
    public static ImmutableArray<double> LoadsW(PlantSetting setting, StepSpec spec, PlantState state) => LoadsW(setting, HeatedVessel(setting, spec), state);

    /// <summary>Power that a vessel draws with all its heat on, W.</summary>
    /// <param name="vessel">Negative: none.</param>
    public static ImmutableArray<double> LoadsW(PlantSetting setting, int vessel, PlantState state)
    {
        var loads = new double[setting.Circuits.Length];
        if (vessel >= 0 && vessel < setting.Wiring.Leads.Length)
        {
            foreach (var lead in setting.Wiring.Leads[vessel])
                loads[lead.Circuit] += setting.Wiring.Feeds(lead, state.PlugAt) ? lead.Element.PowerW : 0;
        }
        return [.. loads];
    }

    /// <summary>A vessel that no step heats, and whose heat is full on all the same: it boils on between two steps, or is well below what it is kept at.</summary>
    public static bool HeatsOn(PlantSetting setting, in VesselState v) => v.HoldC - v.TempC > WellBelowK || Boiling.IsKeptAtTheBoil(setting, v);

    /// <summary>A thermostat's own play, K; common practice, no source.</summary>
    private const double WellBelowK = 1;

    /// <summary>When the vessels, the circuit and the hands that a step needs are free, seconds since the start of the day.</summary>
    public static double EarliestStartS(PlantSetting setting, StepSpec spec, PlantState state) => EarliestStartS(setting, spec, state, VesselsOf(setting, spec));

    private static double EarliestStartS(PlantSetting setting, StepSpec spec, PlantState state, ImmutableArray<int> vessels)
    {
        var start = spec.HandsS > 0 ? state.HandsFreeS : 0;
        foreach (var vessel in vessels)
            start = Math.Max(start, state.Vessels[vessel].AtS);
        foreach (var circuit in Plugs.UsedBy(setting, spec, state))
            start = Math.Max(start, state.CircuitFreeS[circuit]);
        return start;
    }

    private static PlantState Occupied(PlantSetting setting, StepSpec spec, StepOutcome outcome)
    {
        var state = outcome.State;
        if (spec.HandsS > 0)
            state = state with { HandsFreeS = Math.Max(state.HandsFreeS, outcome.StartS + HandsS(spec, outcome)) };
        foreach (var circuit in Plugs.UsedBy(setting, spec, state))
            state = state with { CircuitFreeS = state.CircuitFreeS.SetItem(circuit, outcome.EndS) };
        return state;
    }

    /// <summary>Hands are bound for what the step says, but not longer than an attended step takes.</summary>
    private static double HandsS(StepSpec spec, StepOutcome outcome) =>
        spec.Kind.EndsBy() == EndsBy.Act ? spec.HandsS : Math.Min(spec.HandsS, outcome.DurationS);

    private static Progress Operate(Workbench bench, StepSpec spec, double limitS) => spec.Kind switch
    {
        StepKind.Fill => Transfers.Fill(bench, spec, limitS),
        StepKind.HeatStrike => HeatStrike(bench, spec, limitS),
        StepKind.HeatSparge => HeatLiquor(bench, spec, spec.TargetC!.Value, limitS),
        StepKind.TransferStrike => Transfers.Strike(bench, spec, limitS),
        StepKind.Infuse => Infusing.Run(bench, spec, limitS),
        StepKind.TransferMash => Transfers.Mash(bench, spec, limitS),
        StepKind.TransferWort => Cooling.PumpOver(bench, spec, limitS),
        StepKind.LiftBasket => Lautering.LiftBasket(bench, spec, limitS),
        StepKind.PullDecoction => Decocting.Pull(bench, spec, limitS),
        StepKind.HeatDecoction => Decocting.Heat(bench, spec, limitS),
        StepKind.BoilDecoction => Decocting.Boil(bench, spec, limitS),
        StepKind.ReturnDecoction => Decocting.Return(bench, spec, limitS),
        StepKind.DoughIn => Mashing.DoughIn(bench, spec, limitS),
        StepKind.Rest or StepKind.Vorlauf => Mashing.Rest(bench, spec, limitS),
        StepKind.Ramp or StepKind.HeatMash => Mashing.Ramp(bench, spec, limitS),
        StepKind.Lauter or StepKind.RunOff => Lautering.Run(bench, spec, limitS),
        StepKind.BatchSparge => Lautering.BatchSparge(bench, spec, limitS),
        StepKind.HeatToBoil => Boiling.HeatToBoil(bench, spec, limitS),
        StepKind.HotBreak => Boiling.HotBreak(bench, spec, limitS),
        StepKind.Boil => Boiling.Roll(bench, spec, limitS),
        StepKind.AddFirstWortHops or StepKind.AddToBoil or StepKind.AddToWhirlpool or StepKind.AddExtract =>
            Boiling.Add(bench, spec),
        StepKind.Drain => Transfers.Drain(bench, spec, limitS),
        StepKind.AddWater => Transfers.AddWater(bench, spec),
        StepKind.KnockOut or StepKind.Whirlpool or StepKind.Stand => Cooling.Stand(bench, spec, limitS),
        StepKind.ChillInKettle => Cooling.InKettle(bench, spec, limitS),
        StepKind.CastOut => Cooling.CastOut(bench, spec, limitS),
        StepKind.CoolInFermenter => FermenterCooling.Run(bench, spec, limitS),
        StepKind.FreeBed => Lautering.FreeBed(bench, spec, limitS),
        StepKind.MovePlug => Plugs.Move(bench, spec, limitS),
        _ => Progress.ByClock(spec, limitS),
    };

    /// <summary>What the mash asks for is told, for the limits; hotter than the boil no liquor gets.</summary>
    private static Progress HeatStrike(Workbench bench, StepSpec spec, double limitS)
    {
        var asked = Strike.TemperatureC(bench, spec);
        return HeatLiquor(bench, spec, Math.Min(asked, bench.Setting.BoilingC), limitS) with { TargetC = asked };
    }

    private static Progress HeatLiquor(Workbench bench, StepSpec spec, double targetC, double limitS)
    {
        var tank = bench.Setting.IndexOf(spec.Vessel);
        return Heating.To(bench, tank, spec, targetC, limitS, bench.NetHeatW(tank) > 0);
    }
}
