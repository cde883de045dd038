using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>A plant state taken apart so that an operation can change it in place; put together again at the end.</summary>
internal sealed class Workbench
{
    private readonly PlantState _from;

    public Workbench(PlantSetting setting, PlantState state)
    {
        Setting = setting;
        _from = state;
        Vessels = [.. state.Vessels];
        Hops = [.. state.Hops];
        ColourKgEbc = state.ColourKgEbc;
        KnockedOutL = state.KnockedOutL;
        LineFilledL = state.LineFilledL;
        PlugAt = state.PlugAt;
        Kettle = setting.IndexOf(setting.Brewhouse.Kettle.Id);
    }

    public PlantSetting Setting { get; }

    public VesselState[] Vessels { get; }

    public List<HopDose> Hops { get; }

    public int Kettle { get; }

    public double ColourKgEbc { get; set; }

    public double KnockedOutL { get; set; }

    public double LineFilledL { get; set; }

    public ImmutableArray<int> PlugAt { get; set; }

    public PlantState ToState() => _from with
    {
        Vessels = [.. Vessels],
        Hops = [.. Hops],
        ColourKgEbc = ColourKgEbc,
        KnockedOutL = KnockedOutL,
        LineFilledL = LineFilledL,
        PlugAt = PlugAt,
    };

    public double Wall(int vessel) => Setting.HeatCapacityJPerK(vessel);

    /// <summary>Lets a vessel wait until a time: it holds or drifts towards the room, and what goes on in it goes on.</summary>
    public void Wait(int vessel, double untilS)
    {
        var seconds = untilS - Vessels[vessel].AtS;
        if (seconds <= 0)
            return;
        Pass(vessel, seconds, Vessels[vessel].HoldC);
    }

    /// <summary>Time passes in a vessel, kept at a temperature or (NaN) left alone.</summary>
    public void Pass(int vessel, double seconds, double holdC)
    {
        var v = Vessels[vessel];
        var mean = 0.5 * (v.TempC + TempAfter(vessel, v, seconds, holdC));
        Happen(vessel, seconds, mean);
        v = Vessels[vessel];
        Vessels[vessel] = v with { TempC = TempAfter(vessel, v, seconds, holdC), AtS = v.AtS + seconds, HoldC = holdC };
    }

    /// <summary>What time at a temperature does besides changing it: the mash dissolves extract, hops isomerise, a lid lets steam by.</summary>
    public void Happen(int vessel, double seconds, double celsius)
    {
        LetSteam(vessel, seconds, celsius);
        if (Vessels[vessel].UndissolvedKg > 0)
            Vessels[vessel] = Conversion.After(Vessels[vessel], seconds, celsius);
        if (vessel == Kettle && Hops.Count > 0 && KnockedOutL == 0)
            Expose(Vessels[vessel], seconds, celsius);
    }

    /// <summary>A bed of grain is covered by itself, a fermenter is shut.</summary>
    private void LetSteam(int vessel, double seconds, double celsius)
    {
        var v = Vessels[vessel];
        if (vessel == Setting.FermenterIndex || v.GrainKg > 0 || v.WaterKg <= 0)
            return;
        var openM2 = Setting.LidLeak * Setting.Brewhouse.Vessels[vessel].SurfaceM2;
        var kg = openM2 * Boil.StillSurfaceKgPerM2S(celsius, Setting.AmbientC) * seconds;
        Vessels[vessel] = v with { WaterKg = Math.Max(0, v.WaterKg - kg) };
    }

    /// <summary>Hops give bitterness to the wort that they are in.</summary>
    public void Expose(in VesselState wort, double seconds, double celsius)
    {
        if (Hops.Count == 0)
            return;
        var minutes = seconds / 60 * Isomerisation.RelativeRate(celsius);
        var gravity = SugarSolution.SgFromPlato(wort.Plato);
        for (var i = 0; i < Hops.Count; i++)
            Hops[i] = Hops[i].Exposed(minutes, gravity);
    }

    /// <summary>Heat that reaches the liquid now, W.</summary>
    public double NetHeatW(int vessel) => Setting.NetHeatW(vessel, Contents.StandsL(Vessels[vessel]), PlugAt);

    private double TempAfter(int vessel, in VesselState v, double seconds, double holdC)
    {
        var capacity = Contents.CapacityJPerK(v, Wall(vessel), v.TempC);
        var loss = Setting.LossWPerK(vessel);
        if (double.IsNaN(holdC) || v.TempC > holdC)
        {
            var drifted = HeatFlow.TempAfterC(capacity, loss, Setting.AmbientC, v.TempC, 0, seconds);
            return double.IsNaN(holdC) ? drifted : Math.Max(holdC, drifted);
        }
        var heated = HeatFlow.TempAfterC(capacity, loss, Setting.AmbientC, v.TempC, NetHeatW(vessel), seconds);
        return Math.Min(holdC, heated);
    }
}
