using BrewDeck.Simulator.Nature;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>A vessel with its contents: one temperature for liquid and grain, another one for the wall.</summary>
public sealed class Tank
{
    private const double NothingKg = 1e-9;

    internal Tank(TankTruth truth, double ambientC)
    {
        Truth = truth;
        TempC = ambientC;
        WallC = ambientC;
    }

    public TankTruth Truth { get; }

    public double WaterKg { get; private set; }

    /// <summary>Dissolved.</summary>
    public double ExtractKg { get; private set; }

    /// <summary>Dry grain that has not dissolved, what still can dissolve included.</summary>
    public double GrainKg { get; private set; }

    /// <summary>Liquid and grain; of an empty tank the air in it.</summary>
    public double TempC { get; private set; }

    public double WallC { get; private set; }

    /// <summary>How much warmer than the whole the part is that the probe stands in, K: liquor that nobody stirs lies in layers.</summary>
    public double ProbeOffK { get; internal set; }

    /// <summary>What its probe shows, °C; its thermostat goes by it too.</summary>
    public double ProbeC => TempC + Truth.ThermometerBiasK + ProbeOffK;

    /// <summary>Thermostat; NaN: elements off.</summary>
    public double SetC { get; internal set; } = double.NaN;

    /// <summary>Electrical power that the brewer allows, W.</summary>
    public double AllowedW { get; internal set; }

    /// <summary>Free surface that is open, 0..1; a lid leaks a little.</summary>
    public double OpenShare { get; internal set; } = LidOn;

    public const double LidOn = 0.03;

    public double LiquidKg => WaterKg + ExtractKg;

    public double Plato => LiquidKg > NothingKg ? 100 * ExtractKg / LiquidKg : 0;

    public double GravitySg => Liquids.GravitySg(WaterKg, ExtractKg);

    /// <summary>Liquid alone as it stands, litres.</summary>
    public double LiquidL => Liquids.VolumeL(WaterKg, ExtractKg, TempC);

    /// <summary>Liquid alone, litres at 20 °C.</summary>
    public double ColdL => Liquids.ColdL(WaterKg, ExtractKg);

    /// <summary>All that stands in it, grain included, litres.</summary>
    public double StandsL => LiquidL + Liquids.GrainLPerKg * GrainKg;

    /// <summary>Contents against 0 °C with the wall, J.</summary>
    public double HeatJ => ContentsJPerK * TempC + Truth.WallJPerK * WallC;

    internal double ContentsJPerK => WaterKg * Heats.Water + ExtractKg * Heats.Extract + GrainKg * Heats.Grain;

    /// <summary>Mixes in what comes at a temperature; returns the heat that it brings against 0 °C, J.</summary>
    internal double Add(double waterKg, double extractKg, double grainKg, double celsius)
    {
        var brings = waterKg * Heats.Water + extractKg * Heats.Extract + grainKg * Heats.Grain;
        var was = ContentsJPerK;
        if (was + brings > 0)
            TempC = (was * TempC + brings * celsius) / (was + brings);
        WaterKg += waterKg;
        ExtractKg += extractKg;
        GrainKg += grainKg;
        return brings * celsius;
    }

    /// <summary>Takes liquid out at the tank's temperature; returns the heat that leaves, J.</summary>
    internal double Remove(double waterKg, double extractKg)
    {
        WaterKg = Math.Max(0, WaterKg - waterKg);
        ExtractKg = Math.Max(0, ExtractKg - extractKg);
        return (waterKg * Heats.Water + extractKg * Heats.Extract) * TempC;
    }

    /// <summary>Takes grain out at the tank's temperature; returns the heat that leaves, J.</summary>
    internal double RemoveGrain(double kg)
    {
        GrainKg = Math.Max(0, GrainKg - kg);
        return kg * Heats.Grain * TempC;
    }

    /// <summary>Grain becomes extract at the tank's temperature; returns the heat that this books as wetting, J.</summary>
    internal double Dissolve(double kg)
    {
        GrainKg -= kg;
        ExtractKg += kg;
        return kg * (Heats.Extract - Heats.Grain) * TempC;
    }

    /// <summary>Heat into the contents at once, J.</summary>
    internal void Warm(double joules)
    {
        if (ContentsJPerK > 0)
            TempC += joules / ContentsJPerK;
    }

    /// <summary>
    /// One implicit Euler step of contents and wall (two coupled linear equations solved exactly): stable for any step, and the loss it
    /// returns is the one it used, so that heat is conserved.
    /// </summary>
    /// <returns>Heat lost to the room, J.</returns>
    internal double Pass(double seconds, double netW, double hoseWPerK, double ambientC)
    {
        double c = ContentsJPerK, wall = Truth.WallJPerK;
        double k = c > 0 ? seconds * Truth.WallWPerK : 0, loss = seconds * Truth.LossWPerK, hose = c > 0 ? seconds * hoseWPerK : 0;
        var wallSum = wall + k + loss;
        var wallDrive = wall * WallC + loss * ambientC;
        if (c > 0)
            TempC = (c * TempC + seconds * netW + hose * ambientC + k * wallDrive / wallSum) / (c + hose + k - k * k / wallSum);
        WallC = (wallDrive + k * TempC) / wallSum;
        if (c <= 0)
            TempC = WallC;
        return loss * (WallC - ambientC) + (c > 0 ? hose * (TempC - ambientC) : 0);
    }

    /// <summary>Boils off what the heat above the boiling point raises; returns kg of vapour.</summary>
    internal double BoilOff(double boilingC)
    {
        if (TempC <= boilingC)
            return 0;
        var latent = Vapours.LatentJPerKg(boilingC);
        var vapourKg = Math.Min(WaterKg, ContentsJPerK * (TempC - boilingC) / latent);
        TempC -= vapourKg * latent / ContentsJPerK;
        WaterKg -= vapourKg;
        return vapourKg;
    }
}
