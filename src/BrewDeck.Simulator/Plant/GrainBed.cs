using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>
/// The settled mash as a bed with two kinds of liquid (the dual-porosity column of Coats and Smith 1964): mobile liquor moves down and
/// mixes back between neighbouring layers (the back-mixing cells of Roemer and Durbin 1967, an advection-dispersion equation in
/// slices), immobile wort inside the grain only exchanges extract with the mobile liquor beside it. Above the bed stands liquor
/// without grain, below it the dead space, mixed.
/// <para>
/// How the profile's washing stages become back-mixing and exchange: a row of S ideal stages spreads the residence time with a relative
/// variance of 1/S. At the profile's flow the bed is given half of that, because what drains after the sparge goes on washing here:
/// then the extract left in a drained bed lies within 0.3 points on average (1.1 points root mean square) of what S ideal stages leave
/// that drain at the strength of their outlet, over 1 to 4 stages and 0.4 to 1.1 volumes of liquor (measured; a test repeats it). Three
/// tenths of the variance come from the exchange (2·f/(rate·time) for an immobile share f), the rest from back-mixing and the dead
/// space. The course of the runnings, the flow and the depth act by these equations, and the truth's factors move both.
/// </para>
/// </summary>
internal sealed class GrainBed
{
    private const int Layers = 24;

    /// <summary>Variance of the sparge against that of the profile's stages, which count sparge and draining together.</summary>
    private const double VarianceFactor = 0.5;

    /// <summary>Share of the variance that belongs to the exchange with the grain.</summary>
    private const double ExchangeShare = 0.3;

    private readonly BedLayer[] _layers = new BedLayer[Layers];

    private BedLayer _base;

    private double _backMixing;

    private double _exchangePerS;

    public bool Settled { get; private set; }

    /// <summary>Liquid that runs when the valve is opened, litres at 20 °C.</summary>
    public double FreeL
    {
        get
        {
            var sum = 0.0;
            foreach (ref readonly var layer in _layers.AsSpan())
                sum += layer.MobileL;
            return sum;
        }
    }

    public void Stir() => Settled = false;

    /// <summary>Lets a mixed mash settle: the grain keeps its wort, the dead space fills, the rest is free.</summary>
    public void Settle(double waterKg, double extractKg, double weighedKg, double deadSpaceL, BedTruth truth, double flowLPerMin)
    {
        var all = BedLayer.Litres(waterKg, extractKg);
        var kept = Math.Min(truth.AbsorptionLPerKg * weighedKg, 0.95 * all);
        var dead = Math.Min(deadSpaceL, 0.5 * (all - kept));
        var free = all - kept - dead;
        var bare = LayersWithoutGrain(free, weighedKg);
        for (var i = 0; i < Layers; i++)
        {
            _layers[i] = BedLayer.Of(waterKg, extractKg, free / Layers / all, i < bare ? 0 : kept / (Layers - bare) / all);
        }
        _base = BedLayer.Of(waterKg, extractKg, dead / all, 0);
        Fit(truth, kept / all, dead / all, 60 * all / flowLPerMin);
        Settled = true;
    }

    /// <summary>Extract that dissolves while the bed is settled appears inside the grain.</summary>
    public void Dissolve(double kg)
    {
        var kept = 0.0;
        foreach (ref readonly var layer in _layers.AsSpan())
            kept += layer.KeptL;
        foreach (ref var layer in _layers.AsSpan())
            layer.KeptExtractKg += kept > 0 ? kg * layer.KeptL / kept : kg / Layers;
    }

    /// <summary>Runs some litres off below while liquor follows above.</summary>
    /// <param name="outL">Wanted below, litres at 20 °C; less comes when the bed runs dry.</param>
    /// <param name="inL">Water that follows above, litres at 20 °C.</param>
    /// <returns>Water and extract that ran off, kg.</returns>
    public (double WaterKg, double ExtractKg) Run(double outL, double inL, double seconds)
    {
        var pieces = Pieces(outL);
        double water = 0, extract = 0;
        for (var i = 0; i < pieces; i++)
        {
            var parcel = Piece(outL / pieces, inL / pieces);
            Exchange(seconds / pieces);
            water += parcel.WaterKg;
            extract += parcel.ExtractKg;
        }
        return (water, extract);
    }

    /// <summary>Liquor above the bed: what is beyond the pores, which take 0.7 L a kg of grist (common practice, no source).</summary>
    private static int LayersWithoutGrain(double freeL, double weighedKg)
    {
        var pores = Math.Min(freeL, 0.7 * weighedKg);
        return Math.Clamp((int)Math.Round(Layers * (1 - pores / Math.Max(freeL, 1e-9))), 0, Layers - 4);
    }

    private void Fit(BedTruth truth, double keptShare, double deadShare, double timeS)
    {
        var variance = VarianceFactor / Math.Max(1, truth.Stages);
        _exchangePerS = truth.ExchangeFactor * 2 * keptShare / (ExchangeShare * variance * timeS);
        var moving = 1 - deadShare;
        var wanted = ((1 - ExchangeShare) * variance - deadShare * deadShare) / (moving * moving);
        _backMixing = truth.MixingFactor * BackMixing(wanted);
    }

    /// <summary>Back-mixing ratio that gives a row of closed cells a relative variance (Roemer and Durbin 1967).</summary>
    private static double BackMixing(double variance)
    {
        const double n = Layers;
        double low = 0, high = 30;
        for (var i = 0; i < 40; i++)
        {
            var b = 0.5 * (low + high);
            var gives = (1 + 2 * b) / n - 2 * b * (1 + b) / (n * n) * (1 - Math.Pow(b / (1 + b), n));
            if (gives < variance)
                low = b;
            else
                high = b;
        }
        return low;
    }

    /// <summary>So many that no layer gives more than it holds.</summary>
    private int Pieces(double outL)
    {
        var largest = 0.0;
        foreach (ref readonly var layer in _layers.AsSpan())
            largest = Math.Max(largest, layer.MobileL);
        return Math.Clamp((int)Math.Ceiling(outL * (1 + 2 * _backMixing) / Math.Max(largest, 1e-3)), 1, 50);
    }

    private Parcel Piece(double outL, double inL)
    {
        var parcel = Parcel.Water(inL);
        var wanted = outL;
        foreach (ref var layer in _layers.AsSpan())
            parcel = layer.Push(parcel, wanted);
        for (var i = 1; i < Layers; i++)
            BedLayer.Mix(ref _layers[i - 1], ref _layers[i], _backMixing * outL);
        return _base.Push(parcel, parcel.Litres);
    }

    private void Exchange(double seconds)
    {
        foreach (ref var layer in _layers.AsSpan())
            layer.Exchange(_exchangePerS * seconds);
    }
}
