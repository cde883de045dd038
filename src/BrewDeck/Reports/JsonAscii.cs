using System.Globalization;
using System.Text;

namespace BrewDeck.Reports;

/// <summary>JSON with every character beyond ASCII written as an escape: it says the same, and no terminal obeys it.</summary>
internal static class JsonAscii
{
    public static string Of(string json)
    {
        var text = new StringBuilder(json.Length);
        foreach (var c in json)
        {
            if (c is '\n' or (>= ' ' and <= '~'))
                text.Append(c);
            else
                text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}");
        }

        return text.ToString();
    }
}
