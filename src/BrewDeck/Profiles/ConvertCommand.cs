using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// <c>brewdeck convert</c>: a recipe from BeerJSON 1.0, BeerXML 1.0 or TOML, told apart by content, to TOML or
/// BeerJSON, by the ending of the output. What could not be carried over goes to the error stream line by line.
/// </summary>
internal static class ConvertCommand
{
    private const int Done = 0, Refused = 1, Usage = 2, BadInput = 3;

    /// <param name="inputPath">File to read.</param>
    /// <param name="outputPath">File to write, .toml or .json; it must not exist. Null: TOML to <paramref
    /// name="output"/>.</param>
    /// <returns>0 done, 1 refused, 2 usage, 3 bad input file.</returns>
    public static int Run(string inputPath, string? outputPath, TextWriter output, TextWriter error,
        Catalogue catalogue)
    {
        var ending = outputPath is null ? ".toml" : Path.GetExtension(outputPath).ToLowerInvariant();
        if (ending is not (".toml" or ".json"))
            return Told(error, Usage, $"{outputPath}: BeerJSON and TOML are written; end the name with .json or .toml");
        try
        {
            var converted = Read(inputPath, catalogue);
            if (outputPath is null && converted.Recipes.Length > 1)
                return Told(error, Usage,
                    $"{inputPath}: holds {converted.Recipes.Length} recipes; name a file to write them to");
            Report(error, inputPath, converted.Notes);
            return ending == ".json"
                ? Put(outputPath!, [(outputPath!, Json(converted, error))], error)
                : Toml(converted, outputPath, output, error);
        }
        catch (ProfileException e)
        {
            return Told(error, BadInput, e.Message);
        }
    }

    /// <exception cref="ProfileException">The file cannot be used.</exception>
    internal static Converted Read(string path, Catalogue catalogue)
    {
        var bytes = ProfileText.Bytes(path);
        var first = bytes.AsSpan().TrimStart("\uFEFF \t\r\n"u8);
        // FF and FE begin UTF-16, which only XML can declare
        if (first is [(byte)'<' or 0xFF or 0xFE, ..])
            return BeerXmlReader.Read(new MemoryStream(bytes), path, catalogue);
        var text = ProfileText.Decoded(bytes, path);
        return first is [(byte)'{', ..]
            ? BeerJsonReader.Read(text, path, catalogue)
            : new([RecipeFile.Read(text, path, catalogue)], []);
    }

    private static string Json(Converted converted, TextWriter error)
    {
        var written = BeerJsonWriter.Write(converted.Recipes);
        Report(error, "written", written.Notes);
        return written.Text;
    }

    private static int Toml(Converted converted, string? outputPath, TextWriter output, TextWriter error)
    {
        if (outputPath is not null)
            return Put(outputPath,
                [.. converted.Recipes.Select((r, i) => (Numbered(outputPath, i), RecipeFile.Write(r)))], error);
        output.Write(RecipeFile.Write(converted.Recipes[0]));
        return Done;
    }

    /// <summary>The second recipe of a document goes to name-2.toml, and so on.</summary>
    private static string Numbered(string path, int index) => index == 0
        ? path
        : Path.Combine(Path.GetDirectoryName(path) ?? "",
            $"{Path.GetFileNameWithoutExtension(path)}-{index + 1}{Path.GetExtension(path)}");

    private static int Put(string outputPath, (string Path, string Text)[] files, TextWriter error)
    {
        if (Array.Find(files, f => File.Exists(f.Path)) is { Path: { } there })
            return Told(error, Refused, $"{there}: is there already; remove it or choose another name");
        try
        {
            foreach (var (path, text) in files)
            {
                using var writer = new StreamWriter(new FileStream(path, FileMode.CreateNew, FileAccess.Write));
                writer.Write(text);
            }

            return Done;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Told(error, Refused, $"{outputPath}: cannot be written ({ProfileError.OneLine(e.Message)})");
        }
    }

    private static void Report(TextWriter error, string file, IEnumerable<string> notes)
    {
        foreach (var note in notes)
            error.WriteLine($"brewdeck: {file}: {note}");
    }

    private static int Told(TextWriter error, int code, string line)
    {
        error.WriteLine($"brewdeck: {line}");
        return code;
    }
}
