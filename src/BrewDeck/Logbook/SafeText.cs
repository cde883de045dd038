using System.Globalization;
using System.Text;

namespace BrewDeck.Logbook;

/// <summary>Text that somebody typed, made harmless for where it is written to.</summary>
internal static class SafeText
{
    /// <summary>
    /// For a terminal: one line, nothing that a terminal obeys. Control characters become spaces; format characters, among them
    /// the overrides of writing direction, are dropped.
    /// </summary>
    public static string OneLine(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            Put(safe, rune);
        return safe.ToString();
    }

    /// <summary>
    /// For a spreadsheet: one field of RFC 4180. A leading = + - @, also a wide one of East Asian type, would be run as a
    /// formula: an apostrophe before it keeps it text.
    /// </summary>
    public static string CsvField(string text)
    {
        var safe = OneLine(text);
        if (safe.TrimStart() is { Length: > 0 } shown && "=+-@|%＝＋－＠".Contains(shown[0], StringComparison.Ordinal))
            safe = "'" + safe;
        return safe.AsSpan().ContainsAny(",\"; ") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    private static void Put(StringBuilder safe, Rune rune)
    {
        switch (Rune.GetUnicodeCategory(rune))
        {
            case UnicodeCategory.Control:
            case UnicodeCategory.LineSeparator:
            case UnicodeCategory.ParagraphSeparator:
                safe.Append(' ');
                break;
            case UnicodeCategory.Format:
                break;
            default:
                safe.Append(rune);
                break;
        }
    }
}
