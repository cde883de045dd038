using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class SugarRows
{
    // the printed correction tables name no gravity; the correction moves by 0.0002 from 1.010 to 1.060
    private const double OrdinaryReadingSg = 1.040;

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["SG 20/20 to degrees Plato (ASBC polynomial)"] = row => GravityScales.AsbcPlato(row["SG"]),
            ["SG 20/20 to degrees Brix (NBS polynomial)"] = row => GravityScales.NbsBrix(row["SG"]),
            ["degrees Plato to SG 20/20 (inverse of ASBC polynomial)"] = row => GravityScales.AsbcSg(row["P"]),
            ["SG to degrees Brix"] = row => GravityScales.NbsBrix(row["SG(20/20 apparent)"]),
            ["SG to degrees Plato"] = row => GravityScales.AsbcPlato(row["SG(20/20 apparent)"]),
            ["SG to ICUMSA mass fraction"] = row => SugarSolution.PlatoFromSg(row["SG(20/20 apparent)"]),
            ["SG to degrees Plato (Lincoln equation)"] = row => GravityScales.LincolnPlato(row["SG"]),
            ["SG 60F/60F to degrees Plato (259 rule)"] = row => GravityScales.Rule259Plato(row["SG"]),
            ["SG to degrees Plato (259 rule), printed example"] = row => GravityScales.Rule259Plato(row["SG"]),
            ["SG 60F/60F to degrees Plato (Manning cubic)"] = row => GravityScales.ManningPlato(row["SG"]),
            ["degrees Plato to SG (rational form)"] = row => GravityScales.RationalSg(row["P"]),
            ["density of sucrose solution"] = row => SugarSolution.DensityKgPerM3(row["w"], row.Celsius("t")),
            ["true density of sucrose solution (stray entry of a printed table)"] = row =>
                SugarSolution.DensityKgPerM3(row["w"], row.Celsius("t")),
            ["apparent SG 20/20 of sucrose solution (weighed in air 1.2 kg/m3)"] = row =>
                SugarSolution.SgFromPlato(row["w"]),
            ["relative density 20/20 of sucrose solution (in vacuo)"] = row =>
                SugarSolution.RelativeDensity20(row["w"]),
            ["1000 x relative density 20/20 of sucrose solution (printed table)"] = row =>
                1000.0 * SugarSolution.RelativeDensity20(row["w"]),
            ["volume shrinkage on cooling sucrose solution to 20 degC"] = row => 100.0
                * SugarSolution.ShrinkageFraction(row["w"], row.Celsius("t_hot"), row.Celsius("t_cold")),
            ["refractive index nD20 of sucrose solution (printed table)"] = row =>
                Refractometer.RefractiveIndex(row["Brix"]),
            ["Brix from refractive index (published polynomial)"] = row => Refractometer.BrixFromIndex(row["nD20"]),
            ["refractometer reading to wort extract (unfermented)"] = row =>
                Refractometer.WortPlato(row["reading"], row["wort correction factor"]),
            ["final gravity from refractometer (linear correlation)"] = row =>
                Refractometer.FinalGravityLinearSg(row["initial"], row["final"]),
            ["final gravity from refractometer (cubic correlation)"] = row =>
                Refractometer.FinalGravityCubicSg(row["initial"], row["final"]),
            ["specific heat of sucrose solution (purity 1)"] = row =>
                SugarSolution.SpecificHeatJPerKgK(row["w"], row.Celsius("t")),
            ["specific heat of crystalline sucrose"] = row =>
                SugarSolution.CrystalSpecificHeatJPerKgK(row.Celsius("t")) / 1e3,
            ["boiling point elevation of sucrose solution (ideal dilute limit)"] = row =>
                SugarSolution.BoilingPointRiseK(row["w"]),
            ["hydrometer temperature correction (20 degC hydrometer)"] = row =>
                Hydrometer.TrueSg20(row["reading"], row.Celsius("sample t"), row.Celsius("calibration")),
            ["hydrometer temperature correction (15.56 degC / 60 degF hydrometer)"] = row =>
                Hydrometer.SgAtCalibration(row["reading"], row.Celsius("sample t"), row.Celsius("calibration")),
            ["hydrometer correction to add (60 degF hydrometer, cubic in degF)"] = row =>
                Hydrometer.LyonsCorrectionSg(row.Celsius("sample t")),
            ["hydrometer correction to add (20 degC hydrometer, printed table)"] = row => Correction(row, 20.0),
            ["hydrometer correction to add (60 degF hydrometer, printed table)"] = row =>
                Correction(row, Hydrometer.SixtyFahrenheitCelsius),
        };

    private static double Correction(ReferenceRow row, double calibrationCelsius) =>
        Hydrometer.SgAtCalibration(OrdinaryReadingSg, row.Celsius("sample t"), calibrationCelsius) - OrdinaryReadingSg;
}
