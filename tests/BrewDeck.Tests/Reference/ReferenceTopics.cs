using BrewDeck.Tests.Reference.Topics;

namespace BrewDeck.Tests.Reference;

/// <summary>Which function of the core answers which quantity: one table for each topic.</summary>
internal static class ReferenceTopics
{
    public static readonly IReadOnlyDictionary<string, IReadOnlyDictionary<string, Func<ReferenceRow, double>>> All =
        new Dictionary<string, IReadOnlyDictionary<string, Func<ReferenceRow, double>>>
        {
            ["01_water"] = WaterRows.Kernels,
            ["02_sugar_solutions"] = SugarRows.Kernels,
            ["03_extract"] = ExtractRows.Kernels,
            ["04_mash_heat"] = MashRows.Kernels,
            ["05_hops"] = HopRows.Kernels,
            ["06_colour"] = ColourRows.Kernels,
            ["07_water_chemistry"] = ChemistryRows.Kernels,
            ["08_boil"] = BoilRows.Kernels,
            ["09_heat"] = HeatRows.Kernels,
            ["10_hydraulics"] = HydraulicRows.Kernels,
            ["11_yeast_carbonation"] = YeastRows.Kernels,
            ["12_electrical"] = ElectricalRows.Kernels,
            ["13_recipes"] = RecipeRows.Kernels,
        };

    /// <summary>What the core says, in the unit of the row.</summary>
    public static double Answer(ReferenceRow row) =>
        All[row.Topic].TryGetValue(row.Quantity, out var kernel)
            ? kernel(row)
            : throw new KeyNotFoundException($"no function answers '{row.Quantity}' ({row.Topic}.csv:{row.Line})");
}
