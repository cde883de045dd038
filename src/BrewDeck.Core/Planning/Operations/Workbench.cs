using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>A plant state taken apart so that an operation can change it in place; put together again at the end.</summary>
internal sealed class Workbench
{
    /// <summary>Over two kelvin the rate of isomerisation is as good as straight: its mean is that of the mean temperature to 0.2 %.</summary>
    private const double PieceK = 2;

    private readonly PlantState _from;

    public Workbench(PlantSetting setting, PlantState state)
    {
        Setting = setting;
        _from = state;
        Vessels = [.. state.Vessels];
        Hops = state.Hops.IsEmpty ? [] : [.. state.Hops];
        ColourKgEbc = state.ColourKgEbc;
        ColouredKg = state.ColouredKg;
        KnockedOutL = state.KnockedOutL;
        LineFilledL = state.LineFilledL;
        PlugAt = state.PlugAt;
        Kettle = setting.IndexOf(setting.Brewhouse.Kettle.Id);
    }

    public PlantSetting Setting { get; }

    public VesselState[] Vessels { get; }

    public HopDose[] Hops { get; private set; }

    public int Kettle { get; }

    public double ColourKgEbc { get; private set; }

    public double ColouredKg { get; private set; }

    public double KnockedOutL { get; set; }

    public double LineFilledL { get; set; }

    public ImmutableArray<int> PlugAt { get; set; }

    /// <summary>The bench is over with it: they share vessels and hops, copies of which were a third of all that a fold of the day allocated.</summary>
    public PlantState ToState() => _from with
    {
        Vessels = ImmutableCollectionsMarshal.AsImmutableArray(Vessels),
        Hops = ImmutableCollectionsMarshal.AsImmutableArray(Hops),
        ColourKgEbc = ColourKgEbc,
        ColouredKg = ColouredKg,
        KnockedOutL = KnockedOutL,
        LineFilledL = LineFilledL,
        PlugAt = PlugAt,
    };

    /// <summary>The colour of a malt or an extract.</summary>
    public void Colour(Charge charge)
    {
        ColourKgEbc += charge.ColourKgEbc;
        ColouredKg += charge.ColouredKg;
    }

    /// <summary>Another bench on which things stand as on this one, to try something.</summary>
    public Workbench Trial() => new(Setting, ToState());

    public void AddHops(HopDose dose) => Hops = [.. Hops, dose];

    public double Wall(int vessel) => Setting.HeatCapacityJPerK(vessel);

    /// <summary>Lets a vessel wait until a time: it holds or drifts towards the room, and what goes on in it goes on.</summary>
    public void Wait(int vessel, double untilS)
    {
        var seconds = untilS - Vessels[vessel].AtS;
        if (seconds <= 0)
            return;
        if (Boiling.BoilsOn(this, vessel, seconds))
            return;
        if (Vessels[vessel] is { Open: true, HoldsTemperature: false })
            Cooling.StandOpen(this, vessel, seconds);
        else
            Pass(vessel, seconds, Vessels[vessel].HoldC);
    }

    /// <summary>
    /// Time passes in a vessel, kept at a temperature or (NaN) left alone. What happens meanwhile goes by the temperature of each piece: by the mean of
    /// the ends alone, first-wort hops in a kettle that heats up and then waits gave 0.4 IBU less than when a reading cut that time.
    /// </summary>
    public void Pass(int vessel, double seconds, double holdC)
    {
        var start = Vessels[vessel];
        double At(double s) => TempAfter(vessel, start, s, holdC);
        var changesS = Math.Min(seconds, SecondsToHold(vessel, start, holdC));
        var pieces = changesS > 0 ? 1 + (int)(Math.Abs(At(changesS) - start.TempC) / PieceK) : 0;
        var from = start.TempC;
        for (var i = 1; i <= pieces; i++)
        {
            var to = At(changesS * i / pieces);
            Happen(vessel, changesS / pieces, 0.5 * (from + to));
            from = to;
        }
        if (seconds > changesS)
            Happen(vessel, seconds - changesS, holdC);
        Vessels[vessel] = Vessels[vessel] with { TempC = At(seconds), AtS = start.AtS + seconds, HoldC = holdC };
    }

    /// <summary>What time at a temperature does besides changing it: the mash dissolves extract, hops isomerise, a lid lets steam by.</summary>
    public void Happen(int vessel, double seconds, double celsius)
    {
        LetSteam(vessel, seconds, celsius);
        if (Vessels[vessel].UndissolvedKg > 0)
            Vessels[vessel] = Conversion.After(Vessels[vessel], seconds, celsius);
        if (Hops.Length > 0 && KnockedOutL == 0 && vessel == HoppedWort())
            Expose(Vessels[vessel], seconds, celsius);
    }

    /// <summary>The kettle, or while that is still to be filled from one that has failed, the vessel that its wort waits in.</summary>
    private int HoppedWort()
    {
        for (var i = 0; Vessels[Kettle].ExtractKg <= 0 && i < Setting.FermenterIndex; i++)
        {
            if (Vessels[i] is { ExtractKg: > 0, GrainKg: <= 0 })
                return i;
        }
        return Kettle;
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
        if (Hops.Length == 0)
            return;
        var minutes = seconds / 60 * Isomerisation.RelativeRate(celsius);
        var gravity = SugarSolution.SgFromPlato(wort.Plato);
        for (var i = 0; i < Hops.Length; i++)
            Hops[i] = Hops[i].Exposed(minutes, gravity);
    }

    /// <summary>Heat that reaches the liquid now, W.</summary>
    public double NetHeatW(int vessel) => Setting.NetHeatW(vessel, Contents.StandsL(Vessels[vessel]), PlugAt);

    /// <summary>Until it holds its temperature; infinite for a vessel that is left alone or never gets there.</summary>
    private double SecondsToHold(int vessel, in VesselState v, double holdC)
    {
        if (double.IsNaN(holdC))
            return double.PositiveInfinity;
        double capacity = Contents.CapacityJPerK(v, Wall(vessel), v.TempC), loss = Setting.LossWPerK(vessel);
        return v.TempC > holdC
            ? HeatFlow.CoolingTimeS(capacity, loss, Setting.AmbientC, v.TempC, holdC)
            : HeatFlow.HeatingTimeS(capacity, loss, Setting.AmbientC, v.TempC, holdC, NetHeatW(vessel));
    }

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
