using System.Net;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>
/// A piece of HTML. Text becomes one only by being escaped, controls and overrides of writing direction dropped: nothing that a brewer
/// typed can run or turn the page.
/// </summary>
internal readonly record struct Markup
{
    private readonly string? _html;

    private Markup(string html) => _html = html;

    public static Markup Nothing => default;

    /// <param name="html">A constant, or what a plotting library wrote with its texts escaped.</param>
    public static Markup Raw(string html) => new(html);

    /// <param name="tag">Name and fixed attributes, such as <c>td class="at"</c>.</param>
    public static Markup Tag(string tag, params IEnumerable<Markup> children) =>
        new($"<{tag}>{string.Concat(children)}</{tag.Split(' ', 2)[0]}>");

    public static Markup Join(IEnumerable<Markup> parts) => new(string.Concat(parts));

    public static implicit operator Markup(string text) => new(WebUtility.HtmlEncode(SafeText.OneLine(text)));

    public override string ToString() => _html ?? "";
}
