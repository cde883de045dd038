using BrewDeck.Simulator.Nature;

namespace BrewDeck.Simulator.Plant;

/// <content>What hands can do. Volumes are litres at 20 °C.</content>
public sealed partial class VirtualPlant
{
    private bool CoilRuns { get; set; }

    private bool FermenterChills { get; set; }

    /// <summary>What the fermenter's own cooling is set to, °C; NaN: it is off.</summary>
    private double FermenterSetC { get; set; } = double.NaN;

    /// <summary>Index of the tank that is pumped round; -1: none.</summary>
    private int PumpedRound { get; set; } = -1;

    /// <summary>Tap water into a vessel.</summary>
    public void FillFromTap(string vesselId, double litres, double litresPerMin) =>
        Begin(-1, vesselId, litres, litresPerMin, Truth.SourceWaterC);

    /// <summary>Water of a known temperature into a vessel within a minute.</summary>
    public void AddWater(string vesselId, double litres, double celsius) =>
        Begin(-1, vesselId, litres, Math.Max(litres, 5), Math.Min(celsius, Vapours.BoilingC(Truth.AirPa)));

    public void Transfer(string fromId, string toId, double litres, double litresPerMin) =>
        Begin(IndexOf(fromId), toId, litres, litresPerMin, 0);

    /// <summary>Everything on its way arrives now: the hands say that it has.</summary>
    public void FinishPours()
    {
        // what a pump without prime has not moved stays where it is, whatever the hands say
        if (Faults.PumpShare < 1)
            StopPours(p => p.From >= 0);
        while (_pours.Count > 0)
            Pass(_pours[^1], 1e9);
        if (_mashMoves is { } move)
            MoveMash(move, 1e9);
    }

    public void StopPours() => StopPours(_ => true);

    private void StopPours(Predicate<Pour> which)
    {
        _stopped.AddRange(_pours.FindAll(which));
        _pours.RemoveAll(which);
        (_stoppedMash, _mashMoves) = (_mashMoves ?? _stoppedMash, null);
    }

    /// <summary>What was stopped on this way flows on: the rest of it is still in the vessel that gives.</summary>
    /// <param name="fromId">Null: the tap or a jug.</param>
    public void GoOnPouring(string? fromId, string toId)
    {
        var (from, to) = (fromId is null ? -1 : IndexOf(fromId), IndexOf(toId));
        bool OnThisWay(Pour pour) => pour.From == from && pour.To == to;
        _pours.AddRange(_stopped.FindAll(OnThisWay));
        _stopped.RemoveAll(OnThisWay);
        if (_stoppedMash is { } mash && mash.From == from && mash.To == to)
            (_mashMoves, _stoppedMash) = (mash, null);
    }

    /// <summary>Mash with its grain into another vessel.</summary>
    public void TransferMash(string fromId, string toId, double litresPerMin) =>
        _mashMoves = new MashMove(IndexOf(fromId), IndexOf(toId), litresPerMin / 60) { IsWhole = true };

    /// <summary>Part of the mash with its grain into the kettle, to be boiled.</summary>
    /// <param name="litres">As they stand, grain included.</param>
    public void PullMash(string fromId, string toId, double litres, double litresPerMin)
    {
        _boiled = _grist.Take(Math.Clamp(litres / Math.Max(1e-9, this[fromId].StandsL), 0, 1));
        _mashMoves = new MashMove(IndexOf(fromId), IndexOf(toId), litresPerMin / 60) { LeftL = litres };
    }

    /// <summary>All of it comes back.</summary>
    public void ReturnMash(string fromId, string toId, double litresPerMin) =>
        _mashMoves = new MashMove(IndexOf(fromId), IndexOf(toId), litresPerMin / 60);

    /// <summary>All that runs out of a vessel into another.</summary>
    public void TransferWort(string fromId, string toId, double litresPerMin) =>
        _pours.Add(new Pour(IndexOf(fromId), IndexOf(toId), litresPerMin / 60 * this[fromId].LiquidKg / Math.Max(1e-9, this[fromId].ColdL), this[fromId].LiquidKg, 0));

    /// <summary>What runs out of a vessel runs away.</summary>
    public void Drain(string vesselId)
    {
        var tank = this[vesselId];
        var share = AvailableKg(tank) / Math.Max(1e-9, tank.LiquidKg);
        double water = share * tank.WaterKg, extract = share * tank.ExtractKg;
        Ledger.DrainedWaterKg += water;
        Ledger.DrainedExtractKg += extract;
        Ledger.DrainedJ += tank.Remove(water, extract);
    }

    /// <summary>From now on wort is boiled, and if the kettle was the whirlpool too, cast out, here.</summary>
    public void BoilIn(string vesselId)
    {
        if (_whirlpool == _kettle)
            _whirlpool = IndexOf(vesselId);
        _kettle = IndexOf(vesselId);
    }

    /// <summary>The basket has drained: it takes the grain and what that keeps with it.</summary>
    public void LiftBasket()
    {
        var kept = Math.Min(1, Truth.Bed.AbsorptionLPerKg * _grist.WeighedKg / Math.Max(1e-9, Tun.ColdL));
        Ledger.LiftedWaterKg += kept * Tun.WaterKg;
        Ledger.LiftedDryKg += kept * Tun.ExtractKg + Tun.GrainKg;
        Ledger.LiftedJ += Tun.Remove(kept * Tun.WaterKg, kept * Tun.ExtractKg) + Tun.RemoveGrain(Tun.GrainKg);
        _grist.Leave();
        _bed.Stir();
    }

    /// <summary>Temperature up to which wort is pumped through the coil, by the tun's probe, °C; NaN: not.</summary>
    private double CoilSetC { get; set; } = double.NaN;

    public void PumpThroughCoil(string? tunId, double setC) => CoilSetC = tunId is null ? double.NaN : setC;

    /// <param name="setC">Thermostat as its own probe shows it, °C; beyond the boiling point: full on.</param>
    /// <param name="allowedW">Electrical power at most, W.</param>
    public void Heat(string vesselId, double setC, double allowedW)
    {
        this[vesselId].SetC = setC;
        this[vesselId].AllowedW = allowedW;
    }

    public void HeatOff(string vesselId) => this[vesselId].SetC = double.NaN;

    /// <summary>Something that heats this vessel has its plug in.</summary>
    public bool Powers(string vesselId) => _board.Powers(IndexOf(vesselId));

    /// <summary>Moves the plug of a circuit; what it leaves is switched off.</summary>
    public void MovePlug(string circuitId, string toId)
    {
        var from = _board.MovePlug(circuitId, IndexOf(toId));
        if (from >= 0 && from != IndexOf(toId) && !_board.Powers(from))
            _tanks[from].SetC = double.NaN;
    }

    public void AllOff()
    {
        foreach (var tank in _tanks)
            tank.SetC = double.NaN;
        (CoilRuns, FermenterChills) = (false, false);
        (CoilSetC, FermenterSetC) = (double.NaN, double.NaN);
        PumpedRound = -1;
        CloseRunOff();
        _castOut = null;
        StopPours();
    }

    /// <summary>Grist into the tun, evenly over some seconds.</summary>
    /// <param name="extractKg">Laboratory extract in it, kg.</param>
    public void DoughIn(double weighedKg, double waterKg, double extractKg, double seconds)
    {
        GristTodayKg = Math.Max(GristTodayKg, weighedKg);
        if (weighedKg > 0)
            _gristComing = new GristOnTheWay(weighedKg, waterKg, extractKg, Math.Max(1, seconds));
    }

    /// <summary>Grist of the largest dough-in, kg: how thick the mash is counts for all of it.</summary>
    private double GristTodayKg { get; set; }

    /// <summary>Extract inside lumps that stayed dry, kg.</summary>
    private double LumpedKg { get; set; }

    /// <summary>Stirred with more liquor, four fifths of what stayed dry can dissolve after all (no source).</summary>
    internal void BreakLumps()
    {
        _bed.Stir();
        _grist.Add(0, 0.8 * LumpedKg);
        LumpedKg *= 0.2;
    }

    /// <summary>Foam takes wort over the rim of the kettle.</summary>
    /// <param name="litres">At 20 °C.</param>
    internal void Spill(double litres)
    {
        var share = Math.Min(0.5, litres / Math.Max(1e-9, Kettle.ColdL));
        double water = share * Kettle.WaterKg, extract = share * Kettle.ExtractKg;
        Ledger.SpiltWaterKg += water;
        Ledger.SpiltExtractKg += extract;
        Ledger.SpiltJ += Kettle.Remove(water, extract);
        _hops.Leave(share, 0);
    }

    /// <summary>Wort goes on being cast out, but this much warmer.</summary>
    internal void RunWarmer(double kelvin) => _castOut = _castOut is { } now ? now with { WantedC = now.WantedC + kelvin } : null;

    /// <summary>Circuit that feeds a vessel now; null: none does.</summary>
    internal string? CircuitOf(string vesselId) => _board.CircuitOf(IndexOf(vesselId));

    /// <summary>What has not gone in yet goes in now.</summary>
    public void FinishDoughIn()
    {
        if (_gristComing is not null)
            BringGrist(1e9);
    }

    public void PumpRound(string? vesselId) => PumpedRound = vesselId is null ? -1 : IndexOf(vesselId);

    public void StirMash() => _bed.Stir();

    public void SettleMash()
    {
        if (!_bed.Settled)
            Settle();
    }

    /// <summary>Opens the tun towards a vessel; liquor follows on the bed as fast as wort runs, as long as it lasts.</summary>
    public void OpenRunOff(string toId, string liquorId, double spargeL) =>
        _runOff = new RunOff(IndexOf(toId), IndexOf(liquorId)) { SpargeKg = Liquids.WaterKg(spargeL) };

    public void CloseRunOff() => _runOff = null;

    public double SpargeLeftL => _runOff is null ? 0 : _runOff.SpargeKg * BedLayer.WaterLPerKg;

    /// <summary>Hops into the kettle.</summary>
    /// <param name="alphaG">Alpha acids by the label, g.</param>
    public void AddHops(string name, double massKg, double alphaG) => _hops.Add(massKg, alphaG * Truth.AlphaFactor(name));

    /// <summary>Sugar or dried extract, at room temperature.</summary>
    public void AddExtract(string vesselId, double extractKg, double waterKg)
    {
        Ledger.WaterInKg += waterKg;
        Ledger.DryInKg += extractKg;
        Ledger.BroughtJ += this[vesselId].Add(waterKg, extractKg, 0, Truth.AmbientC);
    }

    /// <param name="openShare">Of the free surface, 0 (closed) to 1.</param>
    public void Lid(string vesselId, double openShare) => this[vesselId].OpenShare = Math.Max(Tank.LidOn, openShare);

    public void Coil(bool runs) => CoilRuns = runs;

    /// <summary>Wort in the fermenter goes round through the chiller, or has its coil in it.</summary>
    public void ChillFermenter(bool runs) => FermenterChills = runs;

    /// <summary>Its own cooling runs until its thermometer shows this; it goes on holding it when the brewer has gone.</summary>
    public void CoolFermenter(double setC) => FermenterSetC = setC;

    /// <summary>Kettle into the fermenter, through the counterflow chiller if there is one.</summary>
    /// <param name="wantedC">True temperature behind the chiller that the valve is set for.</param>
    public void OpenCastOut(double wantedC) => _castOut = new CastOut(wantedC);

    public void CloseCastOut() => _castOut = null;

    private void Begin(int from, string toId, double litres, double litresPerMin, double celsius)
    {
        if (litres > 0)
            _pours.Add(new Pour(from, IndexOf(toId), Liquids.WaterKg(litresPerMin) / 60, Liquids.WaterKg(litres), celsius));
    }
}
