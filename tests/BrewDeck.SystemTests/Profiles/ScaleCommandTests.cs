using System.Text.Json;
using BrewDeck.Commands;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Profiles;

public sealed class ScaleCommandTests : IDisposable
{
    private readonly TempFolder _data = new();
    private readonly StringWriter _output = new();
    private readonly StringWriter _error = new();

    public void Dispose()
    {
        _data.Dispose();
        _output.Dispose();
        _error.Dispose();
    }

    [Fact]
    public void Both_sides_and_what_was_kept_are_in_the_json()
    {
        Assert.Equal(ExitCode.Done, Run("--to", "quayside-one-vessel", "--json"));

        using var json = JsonDocument.Parse(_output.ToString());
        var root = json.RootElement;
        Assert.Equal(["gravity", "bitterness", "colour"], root.GetProperty("kept").EnumerateArray().Select(e => e.GetString()!));
        var (old, moved) = (root.GetProperty("old"), root.GetProperty("new"));
        Assert.Equal(Number(old, "original_gravity_sg"), Number(moved, "original_gravity_sg"));
        Assert.Equal(Number(old, "colour_ebc"), Number(moved, "colour_ebc"));
        Assert.True(Number(moved, "efficiency") < Number(old, "efficiency"));
        Assert.Contains("liquor to grist is not kept", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_new_recipe_is_written_once_and_the_planner_fits_it_to_what_was_shown()
    {
        var file = Path.Combine(_data.Path, "small.toml");
        Assert.Equal(ExitCode.Done, Run("--to", "quayside-35", "--batch", "15 L", "--output", file));
        Assert.Contains("Quayside 35", _output.ToString(), StringComparison.Ordinal);

        var written = RecipeFile.Read(File.ReadAllText(file), file, Catalogue.Empty);
        Assert.Equal((15, 1.048, 30, 3), (written.BatchL, written.OriginalGravitySg, written.BitternessIbu, written.MashThicknessLPerKg));
        Assert.Equal(ExitCode.BadInput, Run("--to", "quayside-35", "--output", file));
        Assert.Contains("is there already", _error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ExitCode.Usage, "write some of gravity,bitterness,colour,ratio", "--to", "quayside-35", "--keep", "gravity,strength")]
    [InlineData(ExitCode.Refused, "Brew a smaller batch", "--to", "quayside-35", "--batch", "40 L")]
    [InlineData(ExitCode.BadInput, "nowhere", "--to", "nowhere")]
    public void What_cannot_be_done_is_one_clear_line(int code, string why, params string[] arguments)
    {
        Assert.Equal(code, Run(arguments));
        Assert.Contains(why, _error.ToString(), StringComparison.Ordinal);
    }

    private int Run(params string[] arguments) =>
        CommandTable.Root(TimeProvider.System, _output, _error).Parse(["scale", .. arguments, "--logbook", _data.Path]).Invoke();

    private static double Number(JsonElement side, string name) => side.GetProperty(name).GetDouble();
}
