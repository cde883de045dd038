namespace BrewDeck.Simulator.Plant;

/// <summary>Some liquid on its way through the bed. Litres at 20 °C with constant partial volumes, so that volumes add.</summary>
internal readonly record struct Parcel(double WaterKg, double ExtractKg)
{
    public double Litres => BedLayer.Litres(WaterKg, ExtractKg);

    public static Parcel Water(double litres) => new(litres / BedLayer.WaterLPerKg, 0);

    public Parcel Share(double share) => new(share * WaterKg, share * ExtractKg);

    public static Parcel operator +(Parcel a, Parcel b) => new(a.WaterKg + b.WaterKg, a.ExtractKg + b.ExtractKg);
}

/// <summary>A slice of the bed: mobile liquor, and wort that the grain keeps.</summary>
internal struct BedLayer
{
    /// <summary>Partial volumes at 20 °C, L/kg.</summary>
    public const double WaterLPerKg = 1.0018;

    public const double ExtractLPerKg = 0.6165;

    private Parcel _mobile;

    private double _keptWaterKg;

    public double KeptExtractKg;

    public readonly double MobileL => _mobile.Litres;

    public readonly double KeptL => Litres(_keptWaterKg, KeptExtractKg);

    public static double Litres(double waterKg, double extractKg) => waterKg * WaterLPerKg + extractKg * ExtractLPerKg;

    /// <summary>Shares of a mixed mash.</summary>
    public static BedLayer Of(double waterKg, double extractKg, double mobileShare, double keptShare) => new()
    {
        _mobile = new Parcel(mobileShare * waterKg, mobileShare * extractKg),
        _keptWaterKg = keptShare * waterKg,
        KeptExtractKg = keptShare * extractKg,
    };

    /// <summary>Gives some litres below while a parcel comes from above; a layer that runs dry gives what it has.</summary>
    public Parcel Push(Parcel comes, double wantedL)
    {
        var own = MobileL;
        if (own >= wantedL)
        {
            var gives = _mobile.Share(own > 0 ? wantedL / own : 0);
            _mobile = _mobile + comes + gives.Share(-1);
            return gives;
        }
        var through = comes.Share(comes.Litres > 0 ? Math.Min(1, (wantedL - own) / comes.Litres) : 0);
        var all = _mobile + through;
        _mobile = comes + through.Share(-1);
        return all;
    }

    /// <summary>Swaps the same volume between neighbours.</summary>
    public static void Mix(ref BedLayer above, ref BedLayer below, double litres)
    {
        var swap = Math.Min(litres, 0.5 * Math.Min(above.MobileL, below.MobileL));
        if (swap <= 0)
            return;
        var down = above._mobile.Share(swap / above.MobileL);
        var up = below._mobile.Share(swap / below.MobileL);
        above._mobile = above._mobile + up + down.Share(-1);
        below._mobile = below._mobile + down + up.Share(-1);
    }

    /// <summary>Extract moves towards equal strength, water of the same volume the other way; exact for two compartments.</summary>
    /// <param name="rateTime">Exchange rate of the grain times the step.</param>
    public void Exchange(double rateTime)
    {
        double mobileL = MobileL, keptL = KeptL;
        if (mobileL < 1e-6 || keptL < 1e-6)
            return;
        var even = (_mobile.ExtractKg + KeptExtractKg) / (mobileL + keptL);
        var moves = (even * mobileL - _mobile.ExtractKg) * (1 - Math.Exp(-rateTime * (1 + keptL / mobileL)));
        var water = moves * ExtractLPerKg / WaterLPerKg;
        _mobile = new Parcel(_mobile.WaterKg - water, _mobile.ExtractKg + moves);
        KeptExtractKg -= moves;
        _keptWaterKg += water;
    }
}
