using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class HydraulicRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["hydrostatic pressure of a water column"] = row =>
                Hydraulics.HydrostaticPa(row["h"], Water.DensityKgPerM3(row.Celsius("t"))) / 1e3,
            ["load on a disc false bottom (full head below blocked bed)"] = row => Hydraulics.FalseBottomLoadN(
                row["head"], Water.DensityKgPerM3(row.Number(1)), row["disc diameter"]),
            ["Darcy friction factor, Colebrook-White"] = row => PipeFriction.Colebrook(row["Re"], row["eps/D"]),
            ["Darcy friction factor, Churchill 1977"] = row => PipeFriction.Churchill(row["Re"], row["eps/D"]),
            ["Darcy friction factor, Churchill 1977 (all regimes)"] = row =>
                PipeFriction.Churchill(row["Re"], row["eps/D"]),
            ["Darcy friction factor, laminar"] = row => PipeFriction.Laminar(row["Re"]),
            ["fully turbulent friction factor of clean commercial steel pipe"] = row =>
                PipeFriction.FullyRough(PipeFriction.CommercialSteelRoughnessM / row.Si("inside diameter")),
            ["mean velocity in a hose"] = row => Hydraulics.VelocityMPerS(Flow(row), row.Si("D")),
            ["Reynolds number in a hose"] = Reynolds,
            ["head loss in a hose"] = HoseLoss,
            ["pump shaft power"] = row => Pump(row) / row["efficiency"],
            ["pump hydraulic power"] = Pump,
            ["drain time of a tank through an orifice (to empty)"] = row => Hydraulics.DrainTimeS(
                row.Si("tank diameter"), row.Si("orifice"), row.Si("start level"), row["Cd"]),
            ["jet velocity at start (Torricelli)"] = row => Hydraulics.JetMPerS(row["level"]),
            // altitude m, water °C
            ["net positive suction head available"] = row => Hydraulics.SuctionHeadM(
                Atmosphere.PressureAtGeopotentialPa(row.Number(0)), row.Number(1),
                row["level above pump"], row["suction losses"]),
            ["flow through a grain bed (Darcy)"] = row => 60e3 * GrainBed.FlowM3PerS(
                row["permeability"], row["area"], row["pressure drop"], row.Si("viscosity"), row["depth"]),
            ["bed permeability (Kozeny-Carman)"] = row =>
                GrainBed.PermeabilityM2(row.Si("particle size"), row["porosity"]),
            ["run-off end point"] = _ => GrainBed.RunOffEndSg,
            ["run-off of test systems"] = row =>
                GrainBed.RunOffLPerMin(row.Number(0) * UsUnits.LitresPerGallon, 60.0 * row.Number(1))
                / UsUnits.LitresPerGallon,
        };

    private static double Flow(ReferenceRow row) => row.Si("Q") / 1e3;

    // "water at 66 degC" is the last number of these rows
    private static double WaterCelsius(ReferenceRow row) => ReferenceRow.NumbersIn(row.Inputs).Last();

    private static double Reynolds(ReferenceRow row)
    {
        var celsius = WaterCelsius(row);
        return Hydraulics.Reynolds(
            Water.DensityKgPerM3(celsius), Hydraulics.VelocityMPerS(Flow(row), row.Si("D")), row.Si("D"),
            Water.ViscosityPaS(celsius));
    }

    private static double HoseLoss(ReferenceRow row)
    {
        var celsius = WaterCelsius(row);
        return Hydraulics.HoseLossM(
            Flow(row), row.Si("D"), row.Si("L"), row.Si("roughness"), row["sum K"],
            Water.DensityKgPerM3(celsius), Water.ViscosityPaS(celsius));
    }

    private static double Pump(ReferenceRow row) =>
        Hydraulics.PumpWatts(Flow(row), row["H"], Water.DensityKgPerM3(WaterCelsius(row)));
}
