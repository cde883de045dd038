namespace BrewDeck.Core.Physics;

/// <summary>The salts that brewers add to water, with their water of crystallisation.</summary>
public enum BrewingSalt
{
    Gypsum,
    CalciumChlorideDihydrate,
    CalciumChlorideAnhydrous,
    EpsomSalt,
    MagnesiumChlorideHexahydrate,
    TableSalt,
    BakingSoda,
    Chalk,
    SlakedLime,
    PotassiumChloride,
}

/// <summary>
/// What a salt brings into the water, by molar masses. Chalk is reckoned as fully dissolved, which it is not in plain
/// water. Calcium chloride takes up moisture: an opened bag is weaker than this. Slaked lime is caustic.
/// </summary>
public static class BrewingSalts
{
    private readonly record struct Part(Ion Ion, int Count);

    /// <summary>Molar mass in g/mol, with the water of crystallisation.</summary>
    public static double GramsPerMol(BrewingSalt salt)
    {
        var (parts, waters) = Formula(salt);
        var grams = waters * AtomicMass.Water;
        foreach (var part in parts) grams += part.Count * Ions.GramsPerMol(part.Ion);
        return grams;
    }

    /// <summary>Rise of an ion in mg/L from a salt in g in water in L.</summary>
    public static double IonMgPerL(BrewingSalt salt, Ion ion, double saltG, double litres)
    {
        var grams = 0.0;
        foreach (var part in Formula(salt).Parts)
            if (part.Ion == ion) grams += part.Count * Ions.GramsPerMol(ion);
        return 1000.0 * saltG * grams / GramsPerMol(salt) / litres;
    }

    private static (Part[] Parts, int Waters) Formula(BrewingSalt salt) => salt switch
    {
        BrewingSalt.Gypsum => ([new(Ion.Calcium, 1), new(Ion.Sulphate, 1)], 2),
        BrewingSalt.CalciumChlorideDihydrate => ([new(Ion.Calcium, 1), new(Ion.Chloride, 2)], 2),
        BrewingSalt.CalciumChlorideAnhydrous => ([new(Ion.Calcium, 1), new(Ion.Chloride, 2)], 0),
        BrewingSalt.EpsomSalt => ([new(Ion.Magnesium, 1), new(Ion.Sulphate, 1)], 7),
        BrewingSalt.MagnesiumChlorideHexahydrate => ([new(Ion.Magnesium, 1), new(Ion.Chloride, 2)], 6),
        BrewingSalt.TableSalt => ([new(Ion.Sodium, 1), new(Ion.Chloride, 1)], 0),
        BrewingSalt.BakingSoda => ([new(Ion.Sodium, 1), new(Ion.Bicarbonate, 1)], 0),
        BrewingSalt.Chalk => ([new(Ion.Calcium, 1), new(Ion.Carbonate, 1)], 0),
        BrewingSalt.SlakedLime => ([new(Ion.Calcium, 1), new(Ion.Hydroxide, 2)], 0),
        BrewingSalt.PotassiumChloride => ([new(Ion.Potassium, 1), new(Ion.Chloride, 1)], 0),
        _ => throw new ArgumentOutOfRangeException(nameof(salt), salt, "no such salt"),
    };
}
