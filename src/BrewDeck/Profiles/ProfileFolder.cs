using System.Text.RegularExpressions;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// The bundled profiles and the brewer's own. An own file counts before a bundled one of the same file name. The
/// bundled ones come from the folder beside the program when it is there, else from inside the program.
/// </summary>
/// <param name="bundledFolder">Holds brewhouses/, recipes/, waters/, water-targets/ and catalogue.toml; need not exist.</param>
/// <param name="ownFolder">The brewer's, of the same shape; need not exist.</param>
public sealed partial class ProfileFolder(string bundledFolder, string ownFolder) : IProfiles
{
    /// <summary>What commands take when nothing else is said, and what stands first of the bundled ones.</summary>
    public const string EverydayBrewhouse = "quayside-65", EverydayRecipe = "quayside-amber";

    private readonly Lazy<Catalogue> _catalogue = new(() => ReadCatalogue(bundledFolder, ownFolder));

    /// <summary>With the profiles that came with the program.</summary>
    public static ProfileFolder BesideProgram(string ownFolder) =>
        new(Path.Combine(AppContext.BaseDirectory, "profiles"), ownFolder);

    /// <exception cref="ProfileException">A catalogue file cannot be used.</exception>
    public Catalogue Catalogue => _catalogue.Value;

    public IReadOnlyList<ProfileEntry> Brewhouses() => List("brewhouses");

    public IReadOnlyList<ProfileEntry> Recipes() => List("recipes");

    public Brewhouse Brewhouse(ProfileEntry entry) => BrewhouseFile.Read(ProfileText.Of(entry.Path), entry.Path);

    public Recipe Recipe(ProfileEntry entry) => IsOther(entry.Path)
        ? throw new ProfileException($"{entry.Path}: is no TOML; make a recipe of it: {Converting(entry.Path)}")
        : RecipeFile.Read(ProfileText.Of(entry.Path), entry.Path, Catalogue);

    public IReadOnlyList<string> RecipesToConvert() => Directory.Exists(Path.Combine(ownFolder, "recipes"))
        ? [.. Directory.EnumerateFiles(Path.Combine(ownFolder, "recipes")).Where(f => IsOther(f) && !File.Exists(Path.ChangeExtension(f, ".toml"))).Select(f => ProfileError.OneLine(Path.GetFileName(f))).Order(StringComparer.Ordinal)]
        : [];

    public GristLine? GristOnHand(string name) => Catalogue.Fermentable(name) is { } f
        ? new GristLine(f.Name, 0, f.ExtractFraction, f.MoistureFraction, f.ColourEbc, f.Use)
        : null;

    public HopOnHand? HopOnHand(string name) => Catalogue.Hop(name) is { } h ? new HopOnHand(h.Name, h.AlphaFraction) : null;

    public IReadOnlyList<GristLine> CatalogueGrist() => [.. Catalogue.Fermentables
        .Select(f => new GristLine(f.Name, 0, f.ExtractFraction, f.MoistureFraction, f.ColourEbc, f.Use) { Kind = f.Kind })];

    public IReadOnlyList<HopOnHand> CatalogueHops() => [.. Catalogue.Hops.Select(h => new HopOnHand(h.Name, h.AlphaFraction))];

    public IReadOnlyList<Yeast> CatalogueYeasts() =>
        [.. Catalogue.Yeasts.Select(y => new Yeast(y.Name, y.AttenuationFraction, y.PitchC, y.PitchRateMillionPerMlPlato))];

    /// <summary>It came with the program.</summary>
    public bool IsBundled(string path) => ProfileText.IsBundled(path, bundledFolder);

    public IReadOnlyList<ProfileEntry> Waters() => List("waters");

    public IReadOnlyList<ProfileEntry> WaterTargets() => List("water-targets");

    public WaterSupply Water(ProfileEntry entry) => WaterFile.Read(ProfileText.Of(entry.Path), entry.Path);

    public WaterTarget WaterTarget(ProfileEntry entry) => WaterTargetFile.Read(ProfileText.Of(entry.Path), entry.Path);

    /// <summary>A water by path, file name without ending, or name.</summary>
    /// <exception cref="ProfileException">There is none.</exception>
    public ProfileEntry FindWater(string asked) => Find(asked, Waters(), "water");

    /// <summary>A water target by path, file name without ending, or name.</summary>
    /// <exception cref="ProfileException">There is none.</exception>
    public ProfileEntry FindWaterTarget(string asked) => Find(asked, WaterTargets(), "water target");

    /// <summary>A brewhouse by path, file name without ending, or name.</summary>
    /// <exception cref="ProfileException">There is none.</exception>
    public ProfileEntry FindBrewhouse(string asked) => Find(asked, Brewhouses(), "brewhouse");

    /// <summary>A recipe by path, file name without ending, or name.</summary>
    /// <exception cref="ProfileException">There is none.</exception>
    public ProfileEntry FindRecipe(string asked) => Find(asked, Recipes(), "recipe");

    private static ProfileEntry Find(string asked, IReadOnlyList<ProfileEntry> entries, string what)
    {
        if (File.Exists(asked))
            return Entry(asked);
        var found = entries.FirstOrDefault(e => Same(Stem(e.Path), asked) || Same(e.Name, asked));
        if (found is not null)
            return found;
        var near = NearestName.To(asked, entries.Select(e => Stem(e.Path)));
        var right = near is null
            ? $"there are {string.Join(", ", entries.Select(e => Stem(e.Path)))}" : $"did you mean {near}?";
        throw new ProfileException($"{ProfileError.OneLine(asked)}: there is no such {what} file; {right}");
    }

    private List<ProfileEntry> List(string folder)
    {
        var bundled = Directory.Exists(bundledFolder) ? Files(bundledFolder, folder) : ProfileText.Inside(folder + "/");
        // own ones first; then the everyday pair, which can be brewed together, with what is a variant of it
        return [.. Files(ownFolder, folder).Concat(bundled.OrderBy(Rank).ThenBy(Stem, StringComparer.Ordinal)).DistinctBy(p => Stem(p), StringComparer.OrdinalIgnoreCase)
            .Select(Entry)];
    }

    private static int Rank(string path) => Stem(path) switch
    {
        EverydayBrewhouse or EverydayRecipe => 0,
        var stem when stem.StartsWith(EverydayBrewhouse + "-", StringComparison.Ordinal) => 1,
        _ => 2,
    };

    private static IEnumerable<string> Files(string root, string folder)
    {
        var path = Path.Combine(root, folder);
        return Directory.Exists(path) ? Directory.EnumerateFiles(path, "*.toml").Where(f => !OldVersion().IsMatch(f)).Order(StringComparer.Ordinal) : [];
    }

    private static ProfileEntry Entry(string path) => new(NamedAtTop(path) ?? Stem(path), path);

    /// <summary>
    /// The value of the first <c>name = "..."</c>: a list must not parse every file, and must show even a broken one.
    /// </summary>
    private static string? NamedAtTop(string path)
    {
        try
        {
            var line = ProfileText.Head(path).Split('\n').TakeWhile(l => !l.StartsWith('['))
                .FirstOrDefault(l => l.StartsWith("name", StringComparison.Ordinal));
            var parts = line?.Split('"');
            return parts is { Length: >= 3 } && parts[0].TrimEnd().EndsWith('=')
                ? ProfileError.OneLine(parts[1]) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>BeerXML or BeerJSON, by its ending.</summary>
    private static bool IsOther(string path) => Path.GetExtension(path).ToLowerInvariant() is ".xml" or ".json";

    private static string Converting(string path) => $"brewdeck convert \"{path}\" \"{Path.ChangeExtension(path, ".toml")}\"";

    private static Catalogue ReadCatalogue(string bundledFolder, string ownFolder)
    {
        var beside = Path.Combine(bundledFolder, "catalogue.toml");
        var bundled = File.Exists(beside) ? beside : ProfileText.Bundled + "catalogue.toml";
        var own = Path.Combine(ownFolder, "catalogue.toml");
        var catalogue = CatalogueFile.Read(ProfileText.Of(bundled), bundled);
        return File.Exists(own) ? catalogue.Under(CatalogueFile.Read(ProfileText.Of(own), own)) : catalogue;
    }

    /// <summary>FILE.DATE.toml: what stood there before a lesson was accepted.</summary>
    [GeneratedRegex(@"\.\d{4}-\d{2}-\d{2}(-\d+)?\.toml$")]
    private static partial Regex OldVersion();

    private static string Stem(string path) => Path.GetFileNameWithoutExtension(path);

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
