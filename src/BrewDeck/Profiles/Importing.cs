using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// What the readers of foreign documents share: notes, errors, and rules for what a document leaves open.
/// </summary>
internal sealed class Importing(string file, Catalogue catalogue)
{
    /// <summary>Density of liquid malt extract, kg/L; common practice, no source.</summary>
    public const double SyrupKgPerL = 1.4;

    private readonly List<string> _notes = [];

    public Catalogue Catalogue => catalogue;

    public void Note(SourceNode at, string what) => _notes.Add($"{at.Path}: {what}");

    public ProfileException Error(SourceNode at, string what) =>
        ProfileError.At(file, at.Line, $"{at.Path} {what}".TrimStart());

    /// <summary>
    /// A value that our own files would take: a slip of a unit is blamed where it stands, before a plan blames the
    /// brewhouse for it.
    /// </summary>
    /// <param name="shown">As the document has it, with its unit.</param>
    /// <param name="value">In the unit of the limits.</param>
    public double Held(SourceNode at, string shown, double value, SchemaKey.Quantity limits) =>
        value >= limits.Least && value <= limits.Most
            ? value
            : throw Error(at, $"is {shown}; it must be {SchemaExample.ForeignRange(limits)}");

    /// <summary>An amount that our own files would take.</summary>
    public double Held(SourceNode at, string shown, double amount, SchemaKey.Amount limits) =>
        amount > 0 && amount <= limits.Most
            ? amount
            : throw Error(at, $"is {shown}; it must be above 0 and at most {limits.Most} {string.Join(", ", limits.Units)}");

    /// <summary>Of a brewhouse: extract in the fermenter to extract in the malt; more than all of it cannot be.</summary>
    public static readonly SchemaKey.Quantity Efficiency = new("efficiency", Dimension.Fraction, "", 0.01, 1, "72 %",
        "Of the author's brewhouse.");

    /// <summary>Malt of one line; twice what the strongest wort a file may ask for takes.</summary>
    public const double MostMaltKgPerL = 2;

    /// <summary>Hops of one addition: several times the heaviest dry hopping; common practice, no source.</summary>
    public const double MostHopKgPerL = 0.1;

    /// <summary>A mass that fits the batch it is meant for: grams written where kilograms are meant do not.</summary>
    /// <param name="batchL">Null: not told, or not to be read.</param>
    public void HeldToBatch(SourceNode at, string shown, double massKg, double? batchL, double mostKgPerL)
    {
        if (batchL is { } litres && massKg > mostKgPerL * litres)
            throw Error(at, $"is {shown} in a batch of {SchemaExample.Written(litres, "L")}; it must be at most {SchemaExample.Written(mostKgPerL * litres, "kg")}");
    }

    /// <summary>A number that stands as such.</summary>
    public double Number(SourceNode node) => node.Take().Number
        ?? throw Error(node, $"is {node.Shown}; it must be a number");

    /// <summary>One of a few words, taken.</summary>
    public string Word(SourceNode node, params string[] words) =>
        words.FirstOrDefault(w => w == node.Text) is { } word && node.Take() == node
            ? word
            : throw Error(node, $"is {node.Shown}; it must be one of {string.Join(", ", words)}");

    /// <summary>All notes with those for what was left.</summary>
    /// <exception cref="ProfileException">No recipe in it.</exception>
    public Converted Finish(SourceNode root, IEnumerable<Recipe?> recipes)
    {
        var carried = recipes.OfType<Recipe>().ToArray();
        if (carried.Length == 0)
            throw ProfileError.At(file, 1, _notes.Count > 0
                ? $"no recipe in it can be carried over ({_notes[0]})"
                : "no recipe in it; a document with a list of recipes is wanted");
        var left = root.Left().Select(n => $"{n.Path}: {n.Shown} not carried over{LeftReasons.For(n)}");
        return new([.. carried], [.. _notes, .. left]);
    }

    /// <summary>Holds a recipe against the limits of our own files, which are the only ones.</summary>
    public Recipe Checked(SourceNode at, Recipe recipe)
    {
        try
        {
            return RecipeFile.Read(RecipeFile.Write(recipe), "", Catalogue.Empty);
        }
        catch (ProfileException e)
        {
            throw Error(at, $"cannot be brewed as it stands: {e.What}");
        }
    }

    /// <summary>The gravity that the author's brewhouse would have given; null when that is not told.</summary>
    /// <param name="efficiency">Extract in the fermenter to extract in the mash, 0..1.</param>
    public static double? ImpliedGravity(IEnumerable<GristLine> grist, double batchL, double? efficiency)
    {
        if (efficiency is not { } share || batchL <= 0)
            return null;
        var extractKg = grist.Sum(g => g.ExtractKg * (g.Use == GristUse.Mash ? share : 1));
        var plato = 12.0;
        for (var i = 0; i < 20; i++)
            plato = 100 * extractKg / SugarSolution.MassKg(batchL, plato, 20);
        return Math.Round(SugarSolution.SgFromPlato(plato), 4);
    }

    /// <summary>A document without a mash has grain all the same.</summary>
    public MashRest[] Rests(SourceNode recipe, MashRest[] rests)
    {
        if (rests.Length > 0)
            return rests;
        Note(recipe, "gives no rest: one of 66 °C for 60 min is assumed");
        return [new("conversion", 66, 60)];
    }

    public Yeast Yeast(SourceNode recipe, string? name, bool lager, double? attenuation, double? pitchC)
    {
        var type = catalogue.Yeast(name ?? "");
        var assumed = new List<string>();
        T Assume<T>(T? told, T usual, string what) where T : struct
        {
            if (told is null)
                assumed.Add(what);
            return told ?? usual;
        }

        var usual = lager ? (PitchC: 10.0, Rate: 1.5) : (PitchC: 18.0, Rate: 0.75);
        var yeast = new Yeast(
            name ?? (lager ? "lager yeast" : "ale yeast"),
            Assume(attenuation ?? type?.AttenuationFraction, 0.75, "attenuation 75 %"),
            Assume(pitchC ?? type?.PitchC, usual.PitchC, $"pitching at {usual.PitchC} °C"),
            type?.PitchRateMillionPerMlPlato ?? usual.Rate);
        if (name is null)
            assumed.Insert(0, yeast.Name);
        if (assumed.Count > 0)
            Note(recipe, $"does not give all about its yeast: {string.Join(", ", assumed)} assumed");
        return yeast;
    }
}
