using BrewDeck.Simulator.Nature;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>
/// The vessels as they really behave, integrated in small steps by the rehearsal's own equations. Hands act on it; instruments look at
/// it; it knows nothing of plans.
/// </summary>
public sealed partial class VirtualPlant
{
    /// <summary>Longest step, s: an eighth of the fastest time constant that is not solved exactly.</summary>
    public const double StepS = 5;

    private readonly Tank[] _tanks;

    private readonly double[] _netW;

    private readonly PowerBoard _board;

    private readonly List<Pour> _pours = [];

    private readonly Grist _grist = new();

    private readonly GrainBed _bed = new();

    private readonly HopBoil _hops = new();

    /// <summary>The tank that the mash is in: the mash tun, later perhaps the lauter tun.</summary>
    private int _tun;

    /// <summary>The tank that wort is boiled in: the kettle, or what has taken its place.</summary>
    private int _kettle;

    /// <summary>The tank that is cast out: the kettle, or a whirlpool of its own.</summary>
    private int _whirlpool;

    private readonly int _tank;

    private readonly int _fermenter;

    private readonly double _startJ;

    public VirtualPlant(HiddenTruth truth)
    {
        Truth = truth;
        _tanks = [.. truth.Tanks.Select(t => new Tank(t, truth.AmbientC))];
        _netW = new double[_tanks.Length];
        _board = new PowerBoard(truth, Faults);
        _board.PlugIn(_tank);
        _tun = truth.IndexOf(truth.Profile.MashTun.Id);
        _kettle = truth.IndexOf(truth.Profile.Kettle.Id);
        _whirlpool = truth.IndexOf(truth.Profile.Whirlpool.Id);
        _tank = truth.IndexOf(truth.Profile.HotLiquorTank.Id);
        _fermenter = _tanks.Length - 1;
        _hoseFreeL = truth.LineLossL;
        _startJ = StoredJ();
    }

    public HiddenTruth Truth { get; }

    public Ledger Ledger { get; } = new();

    public PlantFaults Faults { get; } = new();

    /// <summary>Seconds since the start of the day.</summary>
    public double NowS { get; private set; }

    public Tank Tun => _tanks[_tun];

    public Tank Kettle => _tanks[_kettle];

    /// <summary>What the hot wort stands in: the kettle until it is pumped over.</summary>
    private Tank HotWort => _tanks[_tanks[_whirlpool].LiquidKg > _tanks[_kettle].LiquidKg ? _whirlpool : _kettle];

    public Tank Fermenter => _tanks[_fermenter];

    /// <exception cref="KeyNotFoundException">No such vessel.</exception>
    public Tank this[string vesselId] => _tanks[IndexOf(vesselId)];

    public bool Has(string vesselId) => Truth.IndexOf(vesselId) >= 0;

    /// <summary>Boiling point of what stands in a tank, °C.</summary>
    public double BoilingC(Tank tank) => Vapours.BoilingC(Truth.AirPa) + Vapours.RiseK(tank.WaterKg, tank.ExtractKg);

    /// <summary>Bitterness of the wort in the fermenter, on the scale of the Tinseth utilisation.</summary>
    public double BitternessIbu => Truth.UtilisationFactor * _hops.BitternessIbu(Fermenter.ColdL);

    /// <summary>What the heat ledger cannot account for, J.</summary>
    public double HeatResidualJ => StoredJ() - _startJ - Ledger.HeldJ;

    /// <summary>Water that the ledger cannot account for, kg.</summary>
    public double WaterResidualKg => _tanks.Sum(t => t.WaterKg) + Ledger.VapourKg + Ledger.LinesWaterKg + Ledger.LiftedWaterKg + Ledger.SpiltWaterKg + Ledger.DrainedWaterKg - Ledger.WaterInKg;

    /// <summary>Extract and grain that the ledger cannot account for, kg.</summary>
    public double DryResidualKg => _tanks.Sum(t => t.ExtractKg + t.GrainKg) + Ledger.LinesExtractKg + Ledger.LiftedDryKg + Ledger.SpiltExtractKg + Ledger.DrainedExtractKg - Ledger.DryInKg;

    public void Advance(double seconds)
    {
        for (var left = seconds; left > 0; left -= StepS)
            Step(Math.Min(StepS, left));
    }

    private void Step(double seconds)
    {
        MoveLiquids(seconds);
        Dissolve(seconds);
        _hops.Pass(seconds, HotWort.TempC, HotWort.GravitySg);
        _board.Share(_tanks, _netW);
        PassCoil();
        for (var i = 0; i < _tanks.Length; i++)
            PassHeat(i, seconds);
        NowS += seconds;
    }

    private void Dissolve(double seconds)
    {
        if (_boiled is not null && _mashMoves is null)
            Ledger.WettingJ += Kettle.Dissolve(_boiled.Pass(seconds, Kettle.TempC, Truth.ConversionSpeed));
        if (_grist.UndissolvedKg <= 0 || Tun.LiquidKg <= 0 || _mashMoves is not null)
            return;
        var kg = _grist.Pass(seconds, Tun.TempC, Truth.ConversionSpeed);
        Ledger.WettingJ += Tun.Dissolve(kg);
        if (_bed.Settled)
            _bed.Dissolve(kg);
    }

    private void PassHeat(int i, double seconds)
    {
        var tank = _tanks[i];
        var coilW = ChilledW(i);
        var hose = i == PumpedRound ? Truth.HoseLossWPerK : 0;
        Ledger.RoomJ += tank.Pass(seconds, _netW[i] - coilW, hose, Truth.AmbientC);
        Ledger.ElementsJ += tank.LiquidKg > 0 ? _netW[i] * seconds : 0;
        Ledger.CoolingJ += coilW * seconds;
        // the mash is covered and gives off nothing until it boils
        if (tank.LiquidKg > 0 && (tank.GrainKg <= 0 || tank.TempC > BoilingC(tank)))
            Evaporate(tank, seconds);
    }

    /// <summary>Heat that cooling water, or the fermenter's own cooling, takes from a tank, W.</summary>
    private double ChilledW(int i)
    {
        var tank = _tanks[i];
        if (i == _fermenter && tank.TempC + tank.Truth.ThermometerBiasK > FermenterSetC)
            return Truth.FermenterCoolingW;
        if (i == _fermenter && FermenterChills && !Chiller.IsCoil)
        {
            var perKgK = tank.ContentsJPerK / Math.Max(1e-9, tank.LiquidKg);
            var kgPerS = Truth.Chiller.WortLPerMin / 60 * tank.LiquidKg / Math.Max(1e-9, tank.LiquidL);
            return kgPerS * perKgK * (tank.TempC - WortCooler.OutC(Chiller, kgPerS, perKgK, tank.TempC, Truth.SourceWaterC));
        }
        return (i == _whirlpool && CoilRuns) || (i == _fermenter && FermenterChills) ? WortCooler.CoilW(Chiller, tank.TempC, Truth.SourceWaterC) : 0;
    }

    /// <summary>Wort gains what the liquor round the coil loses; the pump stops at the temperature wanted.</summary>
    private void PassCoil()
    {
        if (Truth.Profile.Coil is not { } coil || double.IsNaN(CoilSetC) || _tanks[_tank].LiquidL < coil.CoverL)
            return;
        if (Tun.TempC + Tun.Truth.ThermometerBiasK >= CoilSetC || _tanks[_tank].TempC <= Tun.TempC)
            return;
        // transfer units of the coil, so that it gains its share at the profile's flow and more or less at another
        var units = -Math.Log(1 - Math.Min(0.99, coil.Effectiveness));
        var kgPerS = coil.FlowLPerMin * Truth.PumpFactor / 60 * Tun.LiquidKg / Math.Max(1e-9, Tun.LiquidL);
        var perK = kgPerS * (Heats.Water * Tun.WaterKg + Heats.Extract * Tun.ExtractKg) / Math.Max(1e-9, Tun.LiquidKg);
        var watts = perK * (1 - Math.Exp(-units / Truth.PumpFactor)) * (_tanks[_tank].TempC - Tun.TempC);
        _netW[_tun] += watts;
        _netW[_tank] -= watts;
    }

    private void Evaporate(Tank tank, double seconds)
    {
        var boilingC = BoilingC(tank);
        var boiled = tank.BoilOff(boilingC);
        if (boiled > 0)
            Ledger.VapourJ += boiled * (Vapours.LatentJPerKg(boilingC) + Heats.Water * tank.TempC);
        else
            boiled = Dry(tank, seconds);
        Ledger.VapourKg += boiled;
    }

    private double Dry(Tank tank, double seconds)
    {
        var openM2 = tank.Truth.SurfaceM2 * tank.OpenShare;
        var kg = Math.Min(Vapours.SurfaceKgPerM2S(tank.TempC, Truth.AmbientC) * openM2 * seconds, tank.WaterKg);
        double latentJ = kg * Vapours.LatentJPerKg(tank.TempC), airJ = Vapours.SurfaceWPerM2(tank.TempC, Truth.AmbientC) * openM2 * seconds;
        tank.Warm(-latentJ - airJ);
        Ledger.RoomJ += airJ;
        Ledger.VapourJ += latentJ + tank.Remove(kg, 0);
        return kg;
    }

    private double StoredJ() => _tanks.Sum(t => t.HeatJ);

    private int IndexOf(string vesselId)
    {
        var i = Truth.IndexOf(vesselId);
        return i >= 0 ? i : throw new KeyNotFoundException(vesselId);
    }
}
