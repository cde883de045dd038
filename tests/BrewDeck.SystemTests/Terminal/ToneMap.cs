using System.Globalization;
using System.Text;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Stills;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// A screen as text and as tones: which tone on which surface each stretch of a row wears. A theme is a table from tone and surface to
/// colours, so the same map in every theme, and the table, say what each theme shows of each screen.
/// </summary>
internal static class ToneMap
{
    private const string Tones = ".mSdwA";
    private static readonly string[] Surfaces = ["", "p", "", "c", "f"];

    /// <summary>Text and tones at a size; fails where a theme shows another text or other tones than the dark one.</summary>
    public static string Of(Screen screen, int columns, int rows)
    {
        var dark = Drawn(screen, columns, rows, Theme.Dark);
        foreach (var theme in (Theme[])[Theme.Light, Theme.Contrast])
            Assert.Equal(dark, Drawn(screen, columns, rows, theme));
        return dark;
    }

    private static string Drawn(Screen screen, int columns, int rows, Theme theme)
    {
        var still = StillScreen.Of(screen, columns, rows, theme);
        return still.ToText() + "--- tones\n" + Map(still, Look.Of(theme));
    }

    private static string Map(StillScreen still, Look look)
    {
        var names = Names(look);
        var map = new StringBuilder();
        for (var row = 0; row < still.Rows; row++)
        {
            var runs = Runs(still, row, names);
            if (runs != "")
                map.Append(CultureInfo.InvariantCulture, $"{row + 1}: {runs}\n");
        }
        return map.ToString();
    }

    /// <summary>Empty for a row of plain text: the commonest.</summary>
    private static string Runs(StillScreen still, int row, Dictionary<Attribute, string> names)
    {
        var runs = new List<(string Name, int Cells)>();
        foreach (var (_, _, width, ink) in still.Row(row))
        {
            var name = names[ink];
            if (runs.Count > 0 && runs[^1].Name == name)
                runs[^1] = (name, runs[^1].Cells + width);
            else
                runs.Add((name, width));
        }
        return runs is [(".", _)] ? "" : string.Join(' ', runs.Select(r => $"{r.Name}{r.Cells}"));
    }

    /// <summary>What looks the same has one name: urgent text is the same on every surface but under large digits.</summary>
    private static Dictionary<Attribute, string> Names(Look look)
    {
        var names = new Dictionary<Attribute, string>();
        foreach (var surface in Enum.GetValues<Surface>())
        {
            foreach (var tone in Enum.GetValues<Tone>())
                names.TryAdd(look.Ink(tone, surface), Surfaces[(int)surface] + Tones[(int)tone]);
        }
        return names;
    }
}
