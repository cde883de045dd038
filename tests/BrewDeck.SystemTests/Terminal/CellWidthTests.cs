using System.Globalization;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.Text;

namespace BrewDeck.SystemTests.Terminal;

public sealed class CellWidthTests
{
    /// <summary>Against the toolkit's tables of widths and the framework's text segmentation (Unicode UAX 11 and UAX 29).</summary>
    [Fact]
    public void What_is_counted_by_its_length_is_one_cell_and_one_text_element_each()
    {
        var narrow = Enumerable.Range(0, 0x10000).Select(c => (char)c).Where(c => CellWidth.AllNarrow([c])).ToList();

        Assert.True(narrow.Count > 1000);
        Assert.All(narrow, c => Assert.Equal(1, c.ToString().GetColumns()));
        Assert.All(narrow, c => Assert.Equal(3, StringInfo.ParseCombiningCharacters($"a{c}a").Length));
    }
}
