namespace BrewDeck.Simulator.Plant;

/// <summary>One addition: its alpha and iso-alpha acids in the kettle and in the fermenter, g.</summary>
internal sealed class HopLot(double alphaG)
{
    private static readonly double _makePerMin = HopBoil.MakePerMin(100);

    private static readonly double _losePerMin = HopBoil.LosePerMin(100);

    /// <summary>When iso-alpha acids peak at 100 °C, minutes.</summary>
    private static readonly double _peakMin = Math.Log(_makePerMin / _losePerMin) / (_makePerMin - _losePerMin);

    private double _addedG = alphaG;

    private double _alphaG = alphaG;

    private double _isoG;

    private double _arrivedG;

    private double _arrivedIsoG;

    private double _gravityWeight;

    private double _gravitySum;

    /// <summary>One step, exact for constant rates.</summary>
    /// <param name="make">Isomerisation rate times the step.</param>
    /// <param name="lose">Loss rate times the step.</param>
    public void Pass(double make, double lose, double gravitySg)
    {
        double keptAlpha = Math.Exp(-make), keptIso = Math.Exp(-lose);
        _isoG = _isoG * keptIso + _alphaG * make * (keptAlpha - keptIso) / (lose - make);
        _alphaG *= keptAlpha;
        _gravityWeight += make;
        _gravitySum += make * gravitySg;
    }

    public void Leave(double share, double arriving)
    {
        _arrivedG += arriving * _addedG;
        _arrivedIsoG += arriving * _isoG;
        _addedG *= 1 - share;
        _alphaG *= 1 - share;
        _isoG *= 1 - share;
    }

    /// <summary>
    /// Bittering matter in the fermenter on the scale of the Tinseth utilisation, so that it can be held against a plan: the minutes at
    /// 100 °C that would give the iso-alpha share reached, through his curve of time and the gravity that this lot really saw. The
    /// curve is calibrated on finished beer, so it stands for what later steps lose.
    /// </summary>
    public double BitterG()
    {
        if (_arrivedG <= 0 || _gravityWeight <= 0)
            return 0;
        var minutes = MinutesAtBoil(_arrivedIsoG / _arrivedG);
        var bigness = 1.65 * Math.Pow(0.000125, _gravitySum / _gravityWeight - 1);
        return _arrivedG * bigness * (1 - Math.Exp(-0.04 * minutes)) / 4.15;
    }

    /// <summary>Minutes at 100 °C after which a share of the alpha acids is present as iso-alpha acids; at most the peak.</summary>
    private static double MinutesAtBoil(double isoShare)
    {
        double low = 0, high = _peakMin;
        for (var i = 0; i < 50; i++)
        {
            var middle = 0.5 * (low + high);
            if (IsoShare(middle) < isoShare)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    private static double IsoShare(double minutes) => _makePerMin / (_losePerMin - _makePerMin)
        * (Math.Exp(-_makePerMin * minutes) - Math.Exp(-_losePerMin * minutes));
}
