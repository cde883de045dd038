using System.Text;

namespace BrewDeck.SystemTests.Fuzzing;

/// <summary>Makes a bad file of a good one: pieces lost, doubled, moved and put in that readers are known to fall over.</summary>
internal static class Mangling
{
    private const int LongestCase = 400_000;

    /// <summary>How many of the pieces are numbers or stand for them.</summary>
    private const int Numbers = 18;

    /// <summary>Numbers past all bounds, control characters, what ends or opens things, other scripts' digits, paths, half characters.</summary>
    private static readonly string[] Pieces =
    [
        "nan", "inf", "-inf", "NaN", "Infinity", "1e999", "-1e999", "1e-999", "4.9e-324", "-0", "0x7fffffff", "99999999999999999999", "-1", "1.5",
        "2147483648", "0", "1e308 L", "-273.16 C", "null", "true", "{}", "[]", "\"\"",
        "\0", "\u001b[31m", "\u0007", "\u202e", "\ufeff", "\u2028", "\r", "\n", "\r\n", "\ud800", "\udc00", "\\ud800", "\\u0000", "é", "😀", "１２", "٣", "½", "′", "″",
        "\"", "'", "\"\"\"", "'''", "[", "]", "[[", "]]", "{", "}", "<", ">", "</", "/>", "<!--", "-->", "<![CDATA[", "]]>", "<?xml version=\"1.0\" encoding=\"utf-7\"?>",
        "&", "&amp;", "&x;", "&#0;", "&#x1F;", "<!DOCTYPE a [<!ENTITY x \"xxxxxxxx\"><!ENTITY y \"&x;&x;&x;&x;\">]>", "<!DOCTYPE a SYSTEM \"file:///dev/zero\">",
        "=", ":", ",", ".", "#", "//", "\\", "%s", "{0}", "../../../etc/passwd", "/dev/zero", "recipes/../../x.toml", "C:\\CON", "file:///etc/passwd",
        "L", "gal", "°C", "°P", "SG", "h", "min", "%", "1979-05-27T07:32:00Z", "25:61", "1:2:3:4",
    ];

    public static string Of(string good, Random random)
    {
        var text = new StringBuilder(good);
        for (var changes = random.Next(1, 4); changes > 0; changes--)
        {
            if (random.Next(2) == 0)
                ChangeValue(text, random);
            else
                Change(text, random);
        }

        return text.ToString();
    }

    /// <summary>Bytes that are no text of any coding.</summary>
    public static byte[] Bytes(string text, Random random)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        for (var flips = random.Next(6) == 0 ? random.Next(1, 3) : 0; flips > 0 && bytes.Length > 0; flips--)
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        return bytes;
    }

    /// <summary>A number becomes another or something that is none; all around it stays good, so that it gets past the parser.</summary>
    private static void ChangeValue(StringBuilder text, Random random)
    {
        if (text.Length == 0)
            return;
        var from = random.Next(text.Length);
        while (from < text.Length && !char.IsAsciiDigit(text[from]))
            from++;
        var to = from;
        while (to < text.Length && (char.IsAsciiDigit(text[to]) || text[to] == '.'))
            to++;
        text.Remove(from, to - from).Insert(from, Pieces[random.Next(random.Next(2) == 0 ? Numbers : Pieces.Length)]);
    }

    private static void Change(StringBuilder text, Random random)
    {
        var at = random.Next(text.Length + 1);
        var length = Math.Min(text.Length - at, random.Next(1, random.Next(3) == 0 ? 400 : 8));
        switch (random.Next(8))
        {
            case 0:
                text.Remove(at, length);
                break;
            case 1:
                text.Insert(random.Next(text.Length + 1), text.ToString(at, length));
                break;
            case 2:
                text.Length = at;
                break;
            case 3 when text.Length < LongestCase && random.Next(20) == 0:
                var piece = Pieces[random.Next(Pieces.Length)];
                text.Insert(at, new StringBuilder(piece.Length * 2_000).Insert(0, piece, 2_000));
                break;
            default:
                text.Remove(at, Math.Min(length, random.Next(8))).Insert(at, Pieces[random.Next(Pieces.Length)]);
                break;
        }
    }
}
