using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>
/// Large digits of 3 by 5 points. Points are whole blocks where they can be, so that a terminal without half blocks still
/// shows them.
/// </summary>
internal static class BigText
{
    private const int PointRows = 5;

    private static readonly Dictionary<char, string[]> Font = new()
    {
        ['0'] = ["###", "#.#", "#.#", "#.#", "###"],
        ['1'] = [".#.", "##.", ".#.", ".#.", "###"],
        ['2'] = ["###", "..#", "###", "#..", "###"],
        ['3'] = ["###", "..#", ".##", "..#", "###"],
        ['4'] = ["#.#", "#.#", "###", "..#", "..#"],
        ['5'] = ["###", "#..", "###", "..#", "###"],
        ['6'] = ["###", "#..", "###", "#.#", "###"],
        ['7'] = ["###", "..#", "..#", "..#", "..#"],
        ['8'] = ["###", "#.#", "###", "#.#", "###"],
        ['9'] = ["###", "#.#", "###", "..#", "###"],
        [':'] = [".", "#", ".", "#", "."],
        ['.'] = [".", ".", ".", ".", "#"],
        [','] = [".", ".", ".", ".", "#"],
        ['-'] = ["...", "...", "###", "...", "..."],
        ['−'] = ["...", "...", "###", "...", "..."],
        ['+'] = ["...", ".#.", "###", ".#.", "..."],
        [' '] = [".", ".", ".", ".", "."],
        ['°'] = ["##", "##", "..", "..", ".."],
        ['%'] = ["#.#", "..#", ".#.", "#..", "#.#"],
    };

    public static bool Has(string text) => text.All(Font.ContainsKey);

    public static int Width(string text, BigScale scale) =>
        text.Sum(c => Font[c][0].Length * scale.Cells) + Math.Max(0, text.Length - 1) * scale.Gap;

    public static ImmutableArray<Line> Lines(string text, BigScale scale, Tone tone) =>
        [.. Enumerable.Range(0, scale.Rows).Select(row => Line.Of(Row(text, scale, row), tone))];

    private static string Row(string text, BigScale scale, int row) =>
        string.Join(new string(' ', scale.Gap), text.Select(c => GlyphRow(Font[c], scale, row)));

    private static string GlyphRow(string[] glyph, BigScale scale, int row) =>
        string.Concat(Enumerable.Range(0, glyph[0].Length).Select(column =>
            new string(
                Block(Lit(glyph, scale, 2 * row, column), Lit(glyph, scale, 2 * row + 1, column)), scale.Cells)));

    private static bool Lit(string[] glyph, BigScale scale, int halfRow, int column) =>
        halfRow / scale.HalfRows is var point && point < PointRows && glyph[point][column] == '#';

    private static char Block(bool upper, bool lower) => (upper, lower) switch
    {
        (true, true) => '█',
        (true, false) => '▀',
        (false, true) => '▄',
        _ => ' ',
    };
}

/// <summary>How large the points of large digits are.</summary>
/// <param name="Cells">Width of a point.</param>
/// <param name="HalfRows">Height of a point, in half rows: a cell is about twice as high as wide.</param>
/// <param name="Gap">Cells between two digits.</param>
internal readonly record struct BigScale(int Cells, int HalfRows, int Gap)
{
    public static readonly BigScale Smallest = new(1, 1, 1);

    public static readonly BigScale[] LargestFirst =
        [new(6, 6, 5), new(4, 4, 4), new(3, 3, 3), new(3, 3, 2), new(2, 2, 2), new(2, 2, 1), Smallest];

    public int Rows => (5 * HalfRows + 1) / 2;
}
