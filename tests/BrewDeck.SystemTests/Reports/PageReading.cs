using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace BrewDeck.SystemTests.Reports;

/// <summary>Reads a page as strictly as XML: markup that came in through a text would show as an element or break it.</summary>
internal static partial class PageReading
{
    private static readonly HashSet<string> Elements =
    [
        "html", "head", "meta", "title", "style", "body", "header", "section", "div", "span", "p", "bdi", "h1", "h2", "table", "colgroup", "col",
        "thead", "tbody", "tr", "th", "td", "figure", "figcaption", "svg", "g", "defs", "clipPath", "rect", "polyline", "polygon", "line", "ellipse", "text",
    ];

    private static readonly HashSet<string> Attributes =
    [
        "lang", "charset", "http-equiv", "content", "name", "class", "colspan", "viewBox", "role", "version", "xlink", "xmlns", "id", "x", "y", "width", "height",
        "points", "style", "clip-path", "cx", "cy", "rx", "ry", "x1", "x2", "y1", "y2", "transform", "shape-rendering", "dominant-baseline", "text-anchor",
        "font-family", "font-size", "font-weight", "fill",
    ];

    public static XElement Parse(string page)
    {
        Assert.StartsWith("<!doctype html>\n", page, StringComparison.Ordinal);
        var root = XElement.Parse(Void().Replace(page["<!doctype html>\n".Length..], "<$1$2/>"));
        foreach (var element in root.DescendantsAndSelf())
        {
            Assert.Contains(element.Name.LocalName, Elements);
            Assert.All(element.Attributes(), a => Assert.Contains(a.Name.LocalName, Attributes));
        }

        return root;
    }

    /// <summary>Nothing in it moves a cursor, turns the writing direction or ends a line.</summary>
    public static void AssertPlain(string text) => Assert.All(
        text.EnumerateRunes().Where(r => r.Value != '\n'),
        r => Assert.False(
            Rune.GetUnicodeCategory(r) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator, $"U+{r.Value:X4}"));

    [GeneratedRegex("<(meta|col)\\b([^>]*)>")]
    private static partial Regex Void();
}
