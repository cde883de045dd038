using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

/// <summary>
/// Printed recipes: their figures from their ingredients, by the conventions that their sources name.
/// </summary>
internal static class RecipeRows
{
    // the guild course's two worked examples: 0.5 L each stay in the kettle and at packaging, and the first counts
    // a litre of starter in
    private const double CourseLossesL = 0.5 + 0.5;
    private const double CourseStarterL = 1.0;

    // a printed strike temperature without a grain temperature
    private const double RoomFahrenheit = 70.0;

    // where no pre-boil volume is printed: what six gallons into five, the magazines' habit, gives
    private const double UsualBoilDown = 6.0 / 5.0;

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["original gravity (printed)"] = row => Extract.SgFromPoints(Points(Recipe(row))),
            ["original gravity (printed, Plato)"] = row => SugarSolution.PlatoFromSg(Recipe(row).Printed("OG")),
            ["pre-boil gravity (printed)"] = row => Extract.SgFromPoints(PreBoilPoints(Recipe(row))),
            // the magazines' own short rule
            ["ABV from printed OG and FG"] = row =>
                Fermentation.AbvRule131(Recipe(row).Printed("OG"), Recipe(row).Printed("FG")),
            ["apparent attenuation from printed gravities"] = row =>
                100.0 * Fermentation.ApparentAttenuationSg(Recipe(row).Printed("OG"), Recipe(row).Printed("FG")),
            ["bitterness (printed)"] = row => TinsethIbu(Recipe(row)),
            ["bitterness range (printed)"] = row => TinsethIbu(Recipe(row)),
            ["colour (printed)"] = row => MoreySrm(Recipe(row)),
            ["strike temperature (printed)"] = row => StrikeFahrenheit(Recipe(row)),
            ["hop mass (printed)"] = row => HopMassG(Recipe(row)),
            ["grist mass (printed)"] = row => GristKg(Recipe(row)),
            ["strike water (printed)"] = row => StrikeL(Recipe(row)),
            ["total water (printed)"] = row => TotalL(Recipe(row)),
            ["sparge water (printed)"] = row => Liquor.SpargeL(TotalL(Recipe(row)), StrikeL(Recipe(row))),
        };

    private static PrintedRecipe Recipe(ReferenceRow row) => PrintedRecipe.ById(row.Text("recipe"));

    private static double Gallons(PrintedRecipe recipe) => recipe.VolumeL / UsUnits.LitresPerGallon;

    private static double Points(PrintedRecipe recipe) => recipe.Grist.Sum(malt => Extract.WortPoints(
        malt.MassKg / UsUnits.KgPerPound, malt.PotentialPoints,
        malt.NeedsMash ? recipe.EfficiencyPercent / 100.0 : 1.0, Gallons(recipe)));

    private static double PreBoilPoints(PrintedRecipe recipe) => Extract.PointsAfter(
        Gallons(recipe), Points(recipe), recipe.Printed("preboil_gal", Gallons(recipe) * UsualBoilDown));

    private static double TinsethIbu(PrintedRecipe recipe)
    {
        var boilSg = Extract.SgFromPoints((Points(recipe) + PreBoilPoints(recipe)) / 2.0);
        return recipe.Hops.Sum(hop => Bitterness.Ibu(
            hop.MassG, hop.AlphaPercent / 100.0, Bitterness.TinsethUtilisation(boilSg, hop.BoilMin), recipe.VolumeL));
    }

    private static double MoreySrm(PrintedRecipe recipe) => Colour.MoreySrm(
        recipe.Grist.Sum(malt => Colour.Mcu(malt.MassKg, malt.ColourLovibond, recipe.VolumeL)));

    private static double StrikeFahrenheit(PrintedRecipe recipe)
    {
        var pounds = recipe.Grist.Sum(malt => malt.MassKg) / UsUnits.KgPerPound;
        return MashConventions.StrikeTemp(
            MashConventions.PalmerQuartsPerPound, 4.0 * recipe.Printed("strike_gal") / pounds,
            RoomFahrenheit, recipe.Printed("mash_F"));
    }

    private static double HopMassG(PrintedRecipe recipe) => Bitterness.MassG(
        recipe.Printed("IBU"), recipe.Hops.Single().AlphaPercent / 100.0, recipe.Printed("hop_utilisation"),
        recipe.VolumeL);

    // the course takes °P as a quarter of the points
    private static double GristKg(PrintedRecipe recipe)
    {
        var extractKg = Extract.CourseExtractKg(
            Extract.Points(recipe.Printed("OG")) / 4.0, recipe.VolumeL, recipe.EfficiencyPercent / 100.0);
        var meanExtract = recipe.Grist.Sum(malt => malt.MassKg * malt.PotentialPoints / Extract.SucrosePointsGalPerLb)
            / recipe.Grist.Sum(malt => malt.MassKg);
        return Extract.GrainKg(extractKg, meanExtract, 1.0);
    }

    private static double StrikeL(PrintedRecipe recipe) =>
        Liquor.StrikeL(recipe.Grist.Sum(malt => malt.MassKg), recipe.Printed("thickness_L_kg"));

    private static double TotalL(PrintedRecipe recipe) => Liquor.TotalL(
        recipe.VolumeL, recipe.Grist.Sum(malt => malt.MassKg), Grain.AbsorptionLPerKg, recipe.Printed("boil_off_L"),
        CourseLossesL, recipe.Id == "GUILD-SMASH" ? CourseStarterL : 0.0);
}
