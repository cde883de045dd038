namespace BrewDeck.Core.Planning.Operations;

/// <summary>
/// How hot the strike liquor must be. The cold tun, the drift while it is moved and doughed in, and the heat that malt gives off when
/// it is wetted are all in it, because the transfer and the dough-in themselves are run on a copy of the plant.
/// </summary>
internal static class Strike
{
    /// <param name="spec">A <see cref="StepKind.HeatStrike"/>: mash temperature, litres, grist, tank and tun.</param>
    public static double TemperatureC(Workbench bench, StepSpec spec)
    {
        var tank = bench.Setting.IndexOf(spec.Vessel);
        var wanted = spec.TargetC!.Value;
        double hot = wanted + 8, slope = 0.85;
        for (var i = 0; i < 4; i++)
        {
            var gives = MashC(bench, spec, tank, hot);
            hot += (wanted - gives) / slope;
        }
        return hot;
    }

    private static double MashC(Workbench bench, StepSpec spec, int tank, double hotC)
    {
        var trial = bench.Trial();
        var tun = bench.Setting.IndexOf(spec.To);
        trial.Vessels[tank] = trial.Vessels[tank] with { TempC = hotC, HoldC = double.NaN };
        if (tun != tank)
        {
            trial.Vessels[tun] = trial.Vessels[tun] with { AtS = trial.Vessels[tank].AtS };
            Transfers.Strike(trial, spec with { Kind = StepKind.TransferStrike }, double.PositiveInfinity);
        }
        Mashing.DoughIn(trial, spec with { Vessel = spec.To, Kind = StepKind.DoughIn }, double.PositiveInfinity);
        return trial.Vessels[tun].TempC;
    }
}
