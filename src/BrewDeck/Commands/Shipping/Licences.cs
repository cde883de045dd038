namespace BrewDeck.Commands.Shipping;

/// <summary>What the program is built from: each package with version, licence and holder, and the texts of those licences.</summary>
internal static class Licences
{
    /// <summary>Name, version, licence (SPDX), holder, tab between.</summary>
    public static string[][] Rows => [.. Embedded("licences.tsv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t'))];

    public static string Text()
    {
        var rows = Rows;
        var wide = rows.Max(r => r[0].Length);
        var lines = rows.Select(r => $"{r[0].PadRight(wide)}  {r[1],-10}  {r[2],-12}  {r[3]}");
        return "BrewDeck is under the MIT licence. It is built from:\n\n" + string.Join('\n', lines) + "\n\n" + Embedded("licence-texts.txt");
    }

    private static string Embedded(string name)
    {
        using var stream = typeof(Licences).Assembly.GetManifestResourceStream("shipping/" + name)
            ?? throw new InvalidOperationException($"{name} is not in the program");
        return new StreamReader(stream).ReadToEnd();
    }
}
