using System.Globalization;

namespace BrewDeck.Tests.Reference;

/// <summary>
/// The band a row allows: absolute ("0.05"), relative ("0.1 %", "5e-5 relative") or a printed range ("a..b" with
/// "range", or widened by the tolerance where one is given). Words after the number explain it.
/// </summary>
internal static class RowTolerance
{
    public static (double Low, double High) Band(ReferenceRow row)
    {
        var ends = row.Expected.Split("..").Select(Parse).ToArray();
        var (low, high) = (ends[0], ends[^1]);
        if (row.Tolerance == "range") return (low, high);
        var words = row.Tolerance.Split(' ');
        var number = Parse(words[0]);
        var share = words.ElementAtOrDefault(1) switch
        {
            "%" => number / 100.0,
            "relative" => number,
            _ => 0.0,
        };
        return share > 0.0
            ? (low - share * Math.Abs(low), high + share * Math.Abs(high))
            : (low - number, high + number);
    }

    public static bool Allows(ReferenceRow row, double value)
    {
        var (low, high) = Band(row);
        // the band's own ends are decimals that a double cannot hold exactly
        var slack = 1e-12 * Math.Max(1.0, Math.Max(Math.Abs(low), Math.Abs(high)));
        return value >= low - slack && value <= high + slack;
    }

    private static double Parse(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
