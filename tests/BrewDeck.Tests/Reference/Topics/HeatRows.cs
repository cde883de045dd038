using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class HeatRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["heating time of water (enthalpy form)"] = WaterHeatingMin,
            ["heating time, constant specific heat"] = row => HeatFlow.HeatingTimeS(
                row["m"] * 1e3 * row["c"], 0.0, 20.0, row.Number(2), row.Number(3), row.Si("P")) / 60.0,
            ["heating time with vessel heat capacity"] = row => HeatFlow.HeatingTimeS(
                1e3 * (row["m"] * row["c"] + row["vessel"]), 0.0, 20.0, 20.0, 20.0 + row["dT"], row.Si("P")) / 60.0,
            ["heating time with losses (lumped)"] = row => HeatFlow.HeatingTimeS(
                row.Si("heat capacity"), row["UA"], row.Celsius("ambient"),
                row.Number(3), row.Number(4), row["P"]) / 60.0,
            ["temperature after passive cooling (Newton)"] = row => HeatFlow.TempAfterC(
                row.Si("heat capacity"), row["UA"], row.Celsius("ambient"), row.Celsius("start"), 0.0, row.Si("time")),
            ["heat exchanger effectiveness"] = row => Effectiveness(row.Text("arrangement"))(
                row["NTU"], row.Has("Cr") ? row["Cr"] : 0.0),
            ["hot outlet temperature"] = row => Condenser.From(row).HotOutletC,
            ["capacity ratio"] = row => Condenser.From(row).CapacityRatio,
            ["NTU"] = row => Condenser.From(row).Ntu,
            ["log-mean temperature difference"] = row => Exchanger.LogMeanDifferenceK(
                row.Number(0) - row.Number(3), row.Number(1) - row.Number(2)),
            // wort kg/s, °C, J/(kg K); water kg/s, °C, J/(kg K); W/K
            ["wort outlet of a counterflow chiller"] = row => Chiller.CounterflowOutletC(
                row.Number(0) * row.Number(2), row.Number(1), row.Number(3) * row.Number(5), row.Number(4), row["UA"]),
            ["batch cooling time with immersion coil"] = row => Coil.From(row).Seconds / 60.0,
            ["cooling water used by an immersion coil"] = row => Coil.From(row).WaterKg,
        };

    private static double WaterHeatingMin(ReferenceRow row)
    {
        var waterKg = SugarSolution.MassKg(row["V"], 0.0, row.Number(1));
        var joules = HeatFlow.WaterHeatJ(waterKg, row.Number(1), row.Number(2));
        return HeatFlow.TimeForHeatS(joules, row.Si("power") * row["efficiency"]) / 60.0;
    }

    private static Func<double, double, double> Effectiveness(string arrangement) => arrangement switch
    {
        "counterflow" => Exchanger.CounterflowEffectiveness,
        "parallel" => Exchanger.ParallelEffectiveness,
        "crossflow, both unmixed" => Exchanger.CrossflowUnmixedEffectiveness,
        "shell and tube, one shell" => Exchanger.ShellAndTubeEffectiveness,
        "boiler, condenser or stirred batch (Cr=0)" => (ntu, _) => Exchanger.StirredEffectiveness(ntu),
        _ => throw new KeyNotFoundException(arrangement),
    };

    // hot kg/s, J/(kg K), °C in; cold kg/s, J/(kg K), °C in and out
    private sealed record Condenser(double HotWPerK, double HotInC, double ColdWPerK, double ColdInC, double ColdOutC)
    {
        public static Condenser From(ReferenceRow row) => new(
            row.Number(0) * row.Number(1), row.Number(2), row.Number(3) * row.Number(4), row.Number(5), row.Number(6));

        public double HotOutletC => Exchanger.OutletC(HotInC, ColdWPerK * (ColdOutC - ColdInC), HotWPerK);

        public double CapacityRatio => ColdWPerK / HotWPerK;

        public double Ntu => Exchanger.CrossflowMaxMixedNtu((ColdOutC - ColdInC) / (HotInC - ColdInC), CapacityRatio);
    }

    // wort kg, J/(kg K); water kg/s, °C (J/(kg K) in some rows, the same in all); W/K; from and to °C
    private sealed record Coil(ReferenceRow Row, double[] Numbers)
    {
        private const double WaterJPerKgK = 4186.0;

        public static Coil From(ReferenceRow row) => new(row, [.. ReferenceRow.NumbersIn(row.Inputs)]);

        public double Seconds => Chiller.CoilTimeS(
            Numbers[0] * Numbers[1], Numbers[2] * WaterJPerKgK, Numbers[3], Row["UA"], Numbers[^2], Numbers[^1]);

        public double WaterKg => Numbers[2] * Seconds;
    }
}
