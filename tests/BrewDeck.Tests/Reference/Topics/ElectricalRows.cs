using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class ElectricalRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["current of a resistive load"] = row => Electrical.CurrentA(row["P"], row["U"]),
            ["power of a resistive element off its rated voltage"] = row =>
                Electrical.WattsAtVoltage(row.Number(0), row.Number(1), row["supply"]),
            ["resistance of an element"] = row => Electrical.ResistanceOhm(row.Number(0), row.Number(1)),
            ["low end of supply voltage"] = row => Electrical.LowestSupplyVolts(row.Number(0)),
            ["high end of supply voltage"] = row => Electrical.HighestSupplyVolts(row.Number(0)),
            ["continuous load definition"] = _ => Electrical.ContinuousHours,
            ["minimum rating for a continuous load"] = row => Electrical.RatingForContinuousA(row.Number(0)),
            ["required rating"] = row => Electrical.RatingForContinuousA(row.Number(0)),
            ["minimum conductor ampacity factor"] = _ => Electrical.RatingForContinuousA(100.0),
            ["continuous load allowed on a breaker"] = row =>
                Electrical.ContinuousWatts(row.Number(0), row.Number(1)),
            ["full load of a breaker"] = row => Electrical.CircuitWatts(row.Number(0), row.Number(1)),
            ["80 % continuous power of a circuit"] = row =>
                Electrical.ContinuousWatts(row.Number(0), row.Number(1)),
            ["socket or plug rated current"] = row => Plugs.RatedA(PlugOf(row.Text("type"))),
            ["rated residual current of a personal-protection RCD"] = _ =>
                1e3 * Electrical.PersonalProtectionResidualA,
        };

    private static Plug PlugOf(string type) => type switch
    {
        "UK BS 1363 plug (fused)" => Plug.Bs1363,
        "Schuko CEE 7/4" => Plug.Schuko,
        "IEC 60309 blue, large" => Plug.Iec60309Blue32,
        "NEMA 5-15" => Plug.Nema515,
        "NEMA 5-20" => Plug.Nema520,
        "NEMA L6-30" => Plug.NemaL630,
        "NEMA 14-30" => Plug.Nema1430,
        "NEMA 14-50" => Plug.Nema1450,
        "AU/NZ AS 3112 standard" => Plug.As3112,
        "IEC C13/C14 (international)" => Plug.IecC13,
        _ => throw new KeyNotFoundException(type),
    };
}
