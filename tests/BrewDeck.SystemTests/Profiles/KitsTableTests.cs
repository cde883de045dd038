using BrewDeck.Commands;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>The table of the README is what the command prints today.</summary>
public sealed class KitsTableTests
{
    private const string Begin = "<!-- kits -->", End = "<!-- /kits -->";

    [Fact]
    public void The_table_of_kits_in_the_readme_is_fresh()
    {
        using var data = new TempFolder();
        using var output = new StringWriter();
        using var error = new StringWriter();
        var arguments = new[] { "kits", "--recipe", "harbour-lager", "--markdown", "--logbook", data.Path };
        Assert.Equal(0, CommandTable.Root(TimeProvider.System, output, error).Parse(arguments).Invoke());
        var readme = File.ReadAllText(Path.Combine(Root(), "README.md")).ReplaceLineEndings("\n");
        var at = readme.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        Assert.Equal(output.ToString().ReplaceLineEndings("\n").Trim(), readme[at..readme.IndexOf(End, StringComparison.Ordinal)].Trim());
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "BrewDeck.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("BrewDeck.sln");
    }
}
