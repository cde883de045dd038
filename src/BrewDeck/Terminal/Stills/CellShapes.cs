namespace BrewDeck.Terminal.Stills;

/// <summary>Blocks and lines of a cell as rectangles, in parts of the cell.</summary>
internal static class CellShapes
{
    private const double Thin = 0.08;
    private const double Thick = 0.2;

    private static readonly Dictionary<string, (double X, double Y, double Width, double Height)[]> Shapes = new()
    {
        ["█"] = [(0, 0, 1, 1)],
        ["▀"] = [(0, 0, 1, 0.5)],
        ["▄"] = [(0, 0.5, 1, 0.5)],
        ["▌"] = [(0, 0, 0.5, 1)],
        ["▐"] = [(0.5, 0, 0.5, 1)],
        ["─"] = [Across(0, 1, Thin)],
        ["━"] = [Across(0, 1, Thick)],
        ["╸"] = [Across(0, 0.5, Thick)],
        ["│"] = [Down(0, 1, Thin)],
        ["┃"] = [Down(0, 1, Thick * 2)],
        ["┬"] = [Across(0, 1, Thin), Down(0.5, 1, Thin)],
        ["┯"] = [Across(0, 1, Thick), Down(0.5, 1, Thin)],
        ["╭"] = [Across(0.5, 1, Thin), Down(0.5, 1, Thin)],
        ["╮"] = [Across(0, 0.5, Thin), Down(0.5, 1, Thin)],
        ["╰"] = [Across(0.5, 1, Thin), Down(0, 0.5, Thin)],
        ["╯"] = [Across(0, 0.5, Thin), Down(0, 0.5, Thin)],
        ["·"] = [(0.42, 0.46, 0.16, 0.08)],
    };

    public static bool Has(string text) => Shapes.ContainsKey(text);

    public static (double X, double Y, double Width, double Height)[] Of(string text) => Shapes.GetValueOrDefault(text, []);

    private static (double X, double Y, double Width, double Height) Across(double from, double to, double height) =>
        (from, 0.5 - height / 2, to - from, height);

    /// <summary>A cell is twice as high as wide: a stroke down takes twice the part of the width.</summary>
    private static (double X, double Y, double Width, double Height) Down(double from, double to, double width) =>
        (0.5 - width, from, 2 * width, to - from);
}
