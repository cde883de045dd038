using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class ConvertCommandTests : IDisposable
{
    private static readonly string Samples = Path.Combine(AppContext.BaseDirectory, "Profiles");

    private readonly string _folder = Directory.CreateTempSubdirectory("brewdeck-convert-").FullName;
    private readonly StringWriter _out = new();
    private readonly StringWriter _error = new();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Json_becomes_toml_on_the_output_and_notes_on_the_error_stream()
    {
        var input = Path.Combine(Samples, "BeerJson", "documents", "minimal-minimal_recipe.json");
        Assert.Equal(0, Run(input, null));
        Assert.Equal("N", RecipeFile.Read(_out.ToString(), "out", Catalogue.Empty).Name);
        Assert.Contains($"brewdeck: {input}: /beerjson/recipes/0/mash/name: 'M' not carried over\n", _error.ToString().ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Files/recipe.toml")]
    [InlineData("Files/recipe.xml")]
    [InlineData("BeerJson/documents/real-CheaterHops.json")]
    public void Any_kind_becomes_BeerJSON_and_toml(string input)
    {
        Assert.Equal(0, Run(Path.Combine(Samples, input), Made("a.json")));
        Assert.True(BeerJsonFiles.IsValid(File.ReadAllText(Made("a.json"))));
        Assert.Equal(0, Run(Made("a.json"), Made("b.toml")));
        Assert.Equal(0, Run(Path.Combine(Samples, input), Made("c.toml")));
        Assert.Equal(
            RecipeFile.Read(File.ReadAllText(Made("c.toml")), "c", Catalogue.Empty).Hops,
            RecipeFile.Read(File.ReadAllText(Made("b.toml")), "b", Catalogue.Empty).Hops);
    }

    [Fact]
    public void Several_recipes_go_into_numbered_files()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        File.WriteAllText(Made("all.json"), BeerJsonWriter.Write([.. profiles.Recipes().Select(profiles.Recipe)]).Text);
        Assert.Equal(2, Run(Made("all.json"), null));
        Assert.Contains("holds 4 recipes; name a file to write them to", _error.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, Run(Made("all.json"), Made("r.toml")));
        Assert.Equal(["r-2.toml", "r-3.toml", "r-4.toml", "r.toml"], Directory.EnumerateFiles(_folder, "r*.toml").Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_that_is_there_is_not_written_over()
    {
        File.WriteAllText(Made("mine.toml"), "precious");
        Assert.Equal(1, Run(Path.Combine(Samples, "Files", "recipe.toml"), Made("mine.toml")));
        Assert.Equal("precious", File.ReadAllText(Made("mine.toml")));
        Assert.Equal($"brewdeck: {Made("mine.toml")}: is there already; remove it or choose another name\n", _error.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told() =>
        Assert.Equal((1, true), (Run(Path.Combine(Samples, "Files", "recipe.toml"), Made("no/such/x.toml")), _error.ToString().Contains("cannot be written", StringComparison.Ordinal)));

    [Theory]
    [InlineData("x.xml")]
    [InlineData("x")]
    public void Only_toml_and_json_are_written(string name) =>
        Assert.Equal((2, false), (Run(Path.Combine(Samples, "Files", "recipe.toml"), Made(name)), File.Exists(Made(name))));

    [Fact]
    public void A_bad_input_file_is_3_and_one_line()
    {
        Assert.Equal(3, Run(Made("missing.json"), null));
        Assert.Equal($"brewdeck: {Made("missing.json")}: there is no such file; check the name\n", _error.ToString().ReplaceLineEndings("\n"));
        Assert.Equal("", _out.ToString());
    }

    private int Run(string input, string? output) =>
        ConvertCommand.Run(input, output, _out, _error, ProfileFolder.BesideProgram("/nowhere").Catalogue);

    private string Made(string name) => Path.Combine(_folder, name);
}
