using BrewDeck.Simulator.Nature;

namespace BrewDeck.Simulator.Plant;

/// <content>What flows: pours, grist, run-off and cast-out.</content>
public sealed partial class VirtualPlant
{
    private GristOnTheWay? _gristComing;

    private RunOff? _runOff;

    private CastOut? _castOut;

    private MashMove? _mashMoves;

    /// <summary>Held, or ended before all of it had come.</summary>
    private readonly List<Pour> _stopped = [];

    private MashMove? _stoppedMash;

    /// <summary>The part of the grist that is being boiled; null: none.</summary>
    private Grist? _boiled;

    /// <summary>Hoses and chiller still to fill with wort, litres.</summary>
    private double _hoseFreeL;

    /// <summary>Water or liquor is on its way.</summary>
    public bool Pouring => _pours.Count > 0 || _mashMoves is not null;

    public bool DoughingIn => _gristComing is not null;

    public bool RunsOff => _runOff is not null;

    /// <summary>The tun gives no more though the valve is open.</summary>
    public bool RunDry => _runOff is not null && _bed.FreeL < 0.01 && _runOff.SpargeKg <= 0;

    public bool CastsOut => _castOut is not null;

    private void MoveLiquids(double seconds)
    {
        for (var i = _pours.Count - 1; i >= 0; i--)
            Pass(_pours[i], seconds);
        if (_mashMoves is not null)
            MoveMash(_mashMoves, seconds);
        if (_gristComing is not null)
            BringGrist(seconds);
        if (_runOff is not null)
            Lauter(_runOff, seconds);
        if (_castOut is not null)
            Send(_castOut, seconds);
    }

    private void Pass(Pour pour, double seconds)
    {
        if (pour.From >= 0 && Faults.PumpShare <= 0)
            return;
        var kg = Math.Min(pour.LeftKg, pour.KgPerS * seconds);
        if (pour.From >= 0)
            kg = Math.Min(kg * Faults.PumpShare, AvailableKg(_tanks[pour.From]));
        Deliver(pour, kg);
        pour.LeftKg -= kg;
        if (pour.LeftKg <= 1e-9 || kg <= 0)
            _pours.Remove(pour);
    }

    private void Deliver(Pour pour, double kg)
    {
        if (pour.To == _tun)
            _bed.Stir();
        if (pour.From < 0)
        {
            Ledger.WaterInKg += kg;
            Ledger.BroughtJ += _tanks[pour.To].Add(kg, 0, 0, pour.TempC);
        }
        else
        {
            Move(_tanks[pour.From], _tanks[pour.To], kg);
        }
    }

    /// <summary>A share of liquid and grain; the vessel that it leaves is rinsed empty.</summary>
    private void MoveMash(MashMove move, double seconds)
    {
        Tank from = _tanks[move.From], to = _tanks[move.To];
        if (Faults.PumpShare <= 0)
            return;
        _bed.Stir();
        var litres = Math.Min(move.LPerS * Faults.PumpShare * seconds, move.LeftL);
        var share = Math.Min(1, litres / Math.Max(1e-9, from.StandsL));
        move.LeftL -= litres;
        double water = share * from.WaterKg, extract = share * from.ExtractKg, grain = share * from.GrainKg, celsius = from.TempC;
        from.Remove(water, extract);
        from.RemoveGrain(grain);
        to.Add(water, extract, grain, celsius);
        if (share < 1 && move.LeftL > 1e-9)
            return;
        if (move.IsWhole)
            _tun = move.To;
        else if (move.To == _tun)
            Rejoin();
        _mashMoves = null;
    }

    private void Rejoin()
    {
        if (_boiled is not null)
            _grist.Rejoin(_boiled);
        _boiled = null;
    }

    private static void Move(Tank from, Tank to, double kg)
    {
        if (kg <= 0)
            return;
        double share = kg / from.LiquidKg, water = share * from.WaterKg, extract = share * from.ExtractKg;
        from.Remove(water, extract);
        to.Add(water, extract, 0, from.TempC);
    }

    private static double AvailableKg(Tank tank) =>
        tank.LiquidKg <= 0 ? 0 : Math.Max(0, tank.LiquidKg * (1 - tank.Truth.DeadSpaceL / Math.Max(1e-9, tank.ColdL)));

    private void BringGrist(double seconds)
    {
        var coming = _gristComing!;
        var share = Math.Min(coming.Left, seconds / coming.Seconds);
        coming.Left -= share;
        var dry = share * (coming.WeighedKg - coming.WaterKg);
        _bed.Stir();
        Ledger.WaterInKg += share * coming.WaterKg;
        Ledger.DryInKg += dry;
        Ledger.BroughtJ += Tun.Add(share * coming.WaterKg, 0, dry, Truth.GrainC);
        var dissolvable = share * coming.ExtractKg * Truth.ConversionYield;
        var lumped = LumpShare() * dissolvable;
        LumpedKg += lumped;
        _grist.Add(share * coming.WeighedKg, dissolvable - lumped);
        Wet(share * coming.WeighedKg, coming.WaterKg / coming.WeighedKg);
        if (coming.Left <= 1e-12)
            _gristComing = null;
    }

    /// <summary>
    /// Grain that stays dry inside lumps: from 2.4 L of liquid for each kg of all the grist downwards, an eighth for each litre less.
    /// Common practice says that a mash that thick cannot be mixed by hand; the eighth has no source.
    /// </summary>
    private double LumpShare() => Math.Clamp(0.125 * (2.4 - Tun.LiquidL / Math.Max(1e-9, GristTodayKg)), 0, 0.2);

    private void Wet(double weighedKg, double moisture)
    {
        var joules = weighedKg * Heats.SlakingJPerKg(moisture) * Truth.SlakingFactor;
        Tun.Warm(joules);
        Ledger.WettingJ += joules;
    }

    private void Lauter(RunOff run, double seconds)
    {
        if (!_bed.Settled)
            Settle();
        var outL = Truth.RunoffLPerMin / 60 * seconds * Faults.BedShare * Faults.RunOffValve;
        if (outL <= 0)
            return;
        var liquor = _tanks[run.Liquor];
        var inKg = Math.Min(Liquids.WaterKg(outL), Math.Min(run.SpargeKg, AvailableKg(liquor)));
        run.SpargeKg = inKg > 0 ? run.SpargeKg - inKg : 0;
        var (water, extract) = _bed.Run(outL, inKg * BedLayer.WaterLPerKg, seconds);
        Tun.Remove(water, extract);
        _tanks[run.To].Add(water, extract, 0, Tun.TempC);
        Move(liquor, Tun, inKg);
    }

    private void Settle() => _bed.Settle(
        Tun.WaterKg, Tun.ExtractKg, _grist.WeighedKg, Tun.Truth.DeadSpaceL, Truth.Bed, Truth.Profile.Habits.RunoffLPerMin);

    private void Send(CastOut cast, double seconds)
    {
        if (Faults.CastOutStands)
            return;
        var free = CastTank.LiquidKg * Math.Max(0, 1 - KeptInKettleL() / Math.Max(1e-9, CastTank.ColdL));
        var perKgK = CastTank.ContentsJPerK / Math.Max(1e-9, CastTank.LiquidKg);
        var flow = FlowKgPerS(cast, perKgK);
        var kg = Math.Min(free, flow * seconds);
        if (kg <= 1e-9)
        {
            _castOut = null;
            return;
        }
        var hotC = CastTank.TempC;
        var outC = Chiller.IsCoil ? hotC : ChilledC(cast, flow, perKgK, hotC);
        Ledger.CoolingJ += kg * perKgK * (hotC - outC);
        Arrive(kg, outC);
    }

    private double ChilledC(CastOut cast, double flowKgPerS, double perKgK, double hotC)
    {
        var tap = WortCooler.TapTurnedDown(Chiller, flowKgPerS, perKgK, hotC, Truth.SourceWaterC, cast.WantedC);
        return WortCooler.OutC(tap, flowKgPerS, perKgK, hotC, Truth.SourceWaterC);
    }

    private void Arrive(double kg, double outC)
    {
        double share = kg / CastTank.LiquidKg, water = share * CastTank.WaterKg, extract = share * CastTank.ExtractKg;
        var litres = Liquids.ColdL(water, extract);
        var hose = Math.Min(1, _hoseFreeL / litres);
        _hoseFreeL = Math.Max(0, _hoseFreeL - litres);
        CastTank.Remove(water, extract);
        Ledger.LinesWaterKg += hose * water;
        Ledger.LinesExtractKg += hose * extract;
        Ledger.LinesJ += hose * (water * Heats.Water + extract * Heats.Extract) * outC;
        Fermenter.Add((1 - hose) * water, (1 - hose) * extract, 0, outC);
        _hops.Leave(share, share * (1 - hose));
    }

    private double FlowKgPerS(CastOut cast, double perKgK)
    {
        var full = Truth.Chiller.WortLPerMin / 60 * CastTank.LiquidKg / Math.Max(1e-9, CastTank.LiquidL);
        return Chiller.IsCoil
            ? full
            : WortCooler.FlowKgPerS(Chiller, full, perKgK, CastTank.TempC, Truth.SourceWaterC, cast.WantedC);
    }

    /// <summary>Trub, dead space and what the hops soaked up, litres at 20 °C.</summary>
    private double KeptInKettleL() =>
        Truth.TrubL + _tanks[_whirlpool].Truth.DeadSpaceL + _hops.MassKg * Truth.HopAbsorptionLPerKg;

    private Truth.ChillerTruth Chiller => Truth.Chiller with
    {
        UaWPerK = Truth.Chiller.UaWPerK * Faults.ChillerTransferShare,
        WaterLPerMin = Truth.Chiller.WaterLPerMin * Faults.ChillerWaterShare,
    };

    private Tank CastTank => _tanks[_whirlpool];

    private sealed record GristOnTheWay(double WeighedKg, double WaterKg, double ExtractKg, double Seconds)
    {
        public double Left { get; set; } = 1;
    }

    private sealed record MashMove(int From, int To, double LPerS)
    {
        /// <summary>Still to move, litres; infinite: all that is there.</summary>
        public double LeftL { get; set; } = double.PositiveInfinity;

        /// <summary>The mash goes on in the other vessel from then on.</summary>
        public bool IsWhole { get; init; }
    }

    private sealed record RunOff(int To, int Liquor)
    {
        public double SpargeKg { get; set; }
    }

    /// <param name="WantedC">True temperature that the brewer throttles to, °C.</param>
    private sealed record CastOut(double WantedC);
}
