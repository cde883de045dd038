using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>A number and the unit text after it; the unit is empty for a bare number.</summary>
internal readonly record struct QuantityPart(double Number, string Unit);

/// <summary>A text cut into numbers and units, or why it cannot be.</summary>
internal readonly record struct QuantityParts(IReadOnlyList<QuantityPart> Items, string? Why)
{
    public static QuantityParts Of(string text, Dimension dimension, Notation notation)
    {
        var line = string.Concat(text.Select(Calmed)).Trim();
        if (line.Length == 0)
            return Refused(notation.Text("is empty"));
        if (dimension == Dimension.Time && line.Contains(':', StringComparison.Ordinal))
            return Clock(line, notation);
        var items = new List<QuantityPart>();
        var read = "";
        for (var at = 0; at < line.Length;)
        {
            var number = NumberAt(line, at);
            if (number.Length == 0)
                return Refused(read.Length == 0 ? notation.Text("does not begin with a number") : notation.Text($"cannot be read after {read}"));
            read = number;
            at += number.Length;
            var unit = UnitAt(line, at);
            at += unit.Length;
            if (Value(number, dimension, notation.Tongue.DecimalMark) is not { } value)
                return Refused(notation.Text("may be read in two ways: leave thousands unseparated and mark decimals with a point"));
            items.Add(new(value, unit.Trim()));
        }

        return Checked(items, notation);
    }

    private static QuantityParts Checked(List<QuantityPart> items, Notation notation)
    {
        if (items.Any(i => !double.IsFinite(i.Number)))
            return Refused(notation.Text("is no finite number"));
        return items.SkipLast(1).Any(i => i.Unit.Length == 0)
            ? Refused(notation.Text("has a gap or a second number without a unit between"))
            : new(items, null);
    }

    /// <summary><c>1:30</c> is an hour and a half, <c>1:30:00</c> as well.</summary>
    private static QuantityParts Clock(string line, Notation notation)
    {
        var fields = line.Split(':');
        if (fields.Length > 3 || !fields.All(f => f.Length is 1 or 2 && f.All(char.IsAsciiDigit)))
            return Refused(notation.Text("is no time"));
        string[] units = ["h", "min", "s"];
        return new([.. fields
            .Select((f, i) => new QuantityPart(int.Parse(f, CultureInfo.InvariantCulture), units[i]))], null);
    }

    /// <summary>Every space becomes a plain one, every minus a hyphen.</summary>
    private static char Calmed(char c) => char.IsWhiteSpace(c) ? ' ' : c is '−' or '–' ? '-' : c;

    private static string NumberAt(string line, int start)
    {
        var at = start;
        if (at < line.Length && line[at] is '-' or '+')
            at++;
        var digits = at;
        while (at < line.Length && (char.IsAsciiDigit(line[at]) || line[at] is '.' or ',' or '_' or '\''
            && at + 1 < line.Length && char.IsAsciiDigit(line[at + 1])))
            at++;
        if (!line[digits..at].Any(char.IsAsciiDigit))
            return "";
        return line[start..(at + ExponentAt(line, at))];
    }

    private static int ExponentAt(string line, int at)
    {
        if (at >= line.Length || line[at] is not ('e' or 'E'))
            return 0;
        var end = at + 1;
        if (end < line.Length && line[end] is '-' or '+')
            end++;
        var digits = end;
        while (end < line.Length && char.IsAsciiDigit(line[end]))
            end++;
        return end > digits ? end - at : 0;
    }

    private static string UnitAt(string line, int start)
    {
        var at = start;
        while (at < line.Length
            && !(char.IsAsciiDigit(line[at]) || line[at] is '-' or '+' || IsPointedNumber(line, at)))
            at++;
        return line[start..at];
    }

    private static bool IsPointedNumber(string line, int at) =>
        line[at] is '.' or ',' && at + 1 < line.Length && char.IsAsciiDigit(line[at + 1]);

    /// <summary>Null when it can be read in two ways.</summary>
    /// <param name="mark">What this brewer marks decimals with: three digits after the other mark may be thousands.</param>
    private static double? Value(string number, Dimension dimension, char mark)
    {
        var marks = number.Count(c => c is '.' or ',' or '_' or '\'');
        if (marks > 1 || number.AsSpan().ContainsAny('_', '\''))
            return null;
        var pointed = number.Replace(',', '.');
        var value = double.Parse(pointed, NumberStyles.Float, CultureInfo.InvariantCulture);
        var isGravity = dimension == Dimension.Gravity && value is > 0.9 and < 1.3;
        return marks == 1 && !number.Contains(mark, StringComparison.Ordinal) && !isGravity
            && LooksLikeThousands(number.TrimStart('-', '+')) ? null : value;
    }

    private static bool LooksLikeThousands(string number)
    {
        var at = number.AsSpan().IndexOfAny('.', ',');
        return at is >= 1 and <= 3 && number[0] != '0' && number.Length - at - 1 == 3;
    }

    private static QuantityParts Refused(string why) => new([], why);
}
