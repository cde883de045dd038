using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class MashRows
{
    // where a printed recipe names no grain temperature
    private const double RoomFahrenheit = 70.0;

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["malt specific heat relative to water"] = row => MashHeat.MaltRelativeHeat(row.Fraction("moisture")),
            ["slaking heat correction (temperature rise on mashing-in)"] = SlakingRise,
            ["malt specific heat relative to water implied by Palmer"] = _ => MashConventions.PalmerQuartsPerPound
                * UsUnits.LitresPerKgFromQuartsPerPound * Water.DensityKgPerM3(20.0) / 1000.0,
            ["second infusion volume"] = PalmerInfusionQuarts,
            ["third infusion volume"] = PalmerInfusionQuarts,
            ["total water after three infusions"] = _ => ThreeInfusionsQuarts(),
            ["strike water temperature (Palmer form)"] = row => MashConventions.StrikeTemp(
                MashConventions.PalmerQuartsPerPound, row["r"], row["grain"], row["target"]),
            ["strike water temperature (mass ratio)"] = row => MashConventions.StrikeTemp(
                row["grain specific heat"], row["water/grain"], row["grain"], row["target"]),
            ["strike water temperature with vessel heat capacity"] = StrikeWithVessel,
            ["strike temperature (0.382 worksheet)"] = row => MashConventions.StrikeTemp(
                MashConventions.WorksheetRelativeHeat, row["water"] / row["grain"], row.Number(1), row["target"]),
            ["boiling water mass for next rest (0.382 worksheet)"] = row => MashConventions.Infusion(
                MashConventions.WorksheetRelativeHeat, row["grain"], row["water"],
                row.Number(2), row.Number(3), row["boiling"]),
            ["water density used in the worksheet"] = _ =>
                Water.DensityKgPerM3(20.0) / 1000.0 * UsUnits.LitresPerGallon / UsUnits.KgPerPound,
            ["infusion water mass for a step"] = row => MashConventions.Infusion(
                row.Number(2), row["grain"], row["water in mash"], row.Number(3), row.Number(4), row["added water"]),
            ["strike temperature as printed in a recipe"] = row => MashConventions.StrikeTemp(
                MashConventions.PalmerQuartsPerPound, 4.0 * row["water"] / row["grist"], RoomFahrenheit, row["mash"]),
            ["strike to mash temperature difference (rule)"] = _ => UsualStrikeRiseFahrenheit(),
            ["decoction volume (ideal, no losses)"] = row =>
                MashHeat.DecoctionVolumeL(row["mash volume"], row.Number(1), row.Number(2), row.Number(3)),
            ["decoction fraction, ideal, for a printed recipe"] = row =>
                MashHeat.DecoctionFraction(row.Number(0), row.Number(1), row.Number(2)),
            ["decoction fraction as printed in a recipe"] = row => MashHeat.DecoctionFraction(
                row.Number(0), row.Number(1), Temperature.Fahrenheit(100.0)),
            ["decoction fraction, usual"] = _ => MashHeat.UsualDecoctionFraction,
            ["mash thickness, usual homebrew"] = _ =>
                Middle(MashConventions.ThickMashQuartsPerPound, MashConventions.ThinMashQuartsPerPound),
            ["mash temperature, usual"] = _ =>
                Temperature.Fahrenheit(Middle(MashConventions.UsualMashLowC, MashConventions.UsualMashHighC)),
            ["mash thickness, pale dry beers"] = _ => MashConventions.CourseThinLPerKg,
            ["mash thickness, course usual range midpoint"] = _ =>
                Middle(MashConventions.CourseThickLPerKg, MashConventions.CourseThinLPerKg),
            ["grain absorption"] = row => row.Unit == "L/kg"
                ? Grain.AbsorptionLPerKg
                : Grain.AbsorptionLPerKg / UsUnits.LitresPerKgFromQuartsPerPound,
            ["grain absorption, hand-book range"] = _ => Grain.AbsorptionLPerKg,
            ["mash volume with displacement"] = row =>
                Grain.MashVolumeL(row["water"], row["grain"], row["displacement"]),
            ["strike water (course example)"] = row => Liquor.StrikeL(row["grist"], row["thickness"]),
            ["total water (course example)"] = TotalWater,
            ["sparge water (course example)"] = row => Liquor.SpargeL(row["total"], row["mash water"]),
            ["first wort extract (forum worked example)"] = row =>
                Grain.FirstWortPlato(row["grain"], row["extract"], row["water"]),
            ["first wort extract"] = row => Grain.FirstWortPlato(row["grain"], row["as-is extract"], row["water"]),
            ["first wort gravity at usual ratios"] = FirstWortSg,
            ["extract recovered by one batch sparge"] = _ => TwoEqualRunningsPercent(),
            ["mixing temperature of two waters"] = row =>
                Water.MixTempC(row.Number(0), row.Number(1), row.Number(2), row.Number(3)),
        };

    private static double SlakingRise(ReferenceRow row)
    {
        // through the energy that plans use, back to a rise in the mash for which the table is read
        var moisture = row.Fraction("moisture");
        var mashJPerK = MashHeat.SlakingTableLiquorKgPerKg * MashHeat.ReferenceWaterJPerKgK
            + MashHeat.MaltSpecificHeatJPerKgK(moisture);
        return MashHeat.SlakingHeatJPerKg(moisture) / mashJPerK;
    }

    private static double PalmerInfusionQuarts(ReferenceRow row) => MashConventions.Infusion(
        MashConventions.PalmerQuartsPerPound, row["grain"], row["water in mash"],
        row.Number(2), row.Number(3), row.Number(4));

    // the printed example: 8 lb at 1 qt/lb, rests at 104, 140 and 158 °F, infusions at 210 °F
    private static double ThreeInfusionsQuarts()
    {
        const double poundsOfGrain = 8.0;
        var first = poundsOfGrain;
        var second = MashConventions.Infusion(
            MashConventions.PalmerQuartsPerPound, poundsOfGrain, first, 104, 140, 210);
        var third = MashConventions.Infusion(
            MashConventions.PalmerQuartsPerPound, poundsOfGrain, first + second, 140, 158, 210);
        return first + second + third;
    }

    // water kg, grain kg, relative heat, water's kJ/(kg K), grain °C, vessel kJ/K, vessel °C, target °C
    private static double StrikeWithVessel(ReferenceRow row) => MashConventions.StrikeTempWithVesselC(
        1e3 * row.Number(0) * row.Number(3),
        1e3 * row.Number(1) * row.Number(2) * row.Number(3),
        row.Number(4), row["target"], 1e3 * row.Number(5), row.Number(6));

    // Palmer's rule with Palmer's own formula, at the thick end of his range
    private static double UsualStrikeRiseFahrenheit()
    {
        var mash = Temperature.Fahrenheit(Middle(MashConventions.UsualMashLowC, MashConventions.UsualMashHighC));
        return MashConventions.StrikeTemp(
            MashConventions.PalmerQuartsPerPound, MashConventions.ThickMashQuartsPerPound, RoomFahrenheit, mash) - mash;
    }

    // packaged, absorption L/kg and grist kg, hours and L/h, kettle and packaging loss, starter where there is one
    private static double TotalWater(ReferenceRow row) => Liquor.TotalL(
        row["packaged"], row.Number(2), row["absorption"], row.Number(3) * row.Number(4),
        row["kettle loss"] + row["packaging loss"], row.Has("starter added") ? row["starter added"] : 0.0);

    private static double FirstWortSg(ReferenceRow row)
    {
        var waterKg = Middle(row.Number(1), row.Number(2)) * UsUnits.LitresPerKgFromQuartsPerPound
            * Water.DensityKgPerM3(20.0) / 1000.0;
        return SugarSolution.SgFromPlato(Grain.FirstWortPlato(
            1.0, row.Number(0) / 100.0, waterKg, Grain.UsualMoistureFraction));
    }

    // a mash of the course's middle thickness, its wort drained twice in equal volumes
    private static double TwoEqualRunningsPercent()
    {
        var wortL = Middle(MashConventions.CourseThickLPerKg, MashConventions.CourseThinLPerKg);
        var running = wortL - Grain.AbsorptionLPerKg;
        return 100.0 * Grain.BatchRecoveredFraction(wortL, Grain.AbsorptionLPerKg, running);
    }

    private static double Middle(double low, double high) => (low + high) / 2.0;
}
