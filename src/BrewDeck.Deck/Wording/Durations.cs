using System.Globalization;

namespace BrewDeck.Deck.Wording;

/// <summary>Lengths of time in words. In tables rounded to minutes from one minute on, in sentences from 100 seconds on.</summary>
public static class Durations
{
    private const double SecondsShownBelow = 100;

    /// <summary>For tables and gauges: <c>1 h 30 min</c>, <c>23 min</c>, <c>45 s</c>.</summary>
    public static string Short(double seconds)
    {
        if (seconds < 0)
            return "-" + Short(-seconds);
        if (Math.Round(seconds) < 60)
            return Text(Math.Round(seconds)) + " s";
        var length = TimeSpan.FromMinutes(Math.Round(seconds / 60, MidpointRounding.AwayFromZero));
        if (length.TotalHours < 1)
            return Text(length.TotalMinutes) + " min";
        return length.Minutes == 0
            ? Text(Math.Floor(length.TotalHours)) + " h"
            : $"{Text(Math.Floor(length.TotalHours))} h {Text(length.Minutes)} min";
    }

    /// <summary>For sentences: <c>1 hour and 30 minutes</c>, <c>23 minutes</c>. A negative length reads as nought.</summary>
    public static string Words(double seconds, Notation notation)
    {
        var length = Rounded(Math.Max(0, seconds));
        string[] parts =
        [
            .. Part((int)length.TotalHours, notation.Text("1 hour"), notation.Text($"{(int)length.TotalHours} hours")),
            .. Part(length.Minutes, notation.Text("1 minute"), notation.Text($"{length.Minutes} minutes")),
            .. Part(length.Seconds, notation.Text("1 second"), notation.Text($"{length.Seconds} seconds")),
        ];
        return parts.Length == 0 ? notation.Text("a moment") : string.Join(notation.Text(" and "), parts);
    }

    private static string[] Part(int count, string one, string many) => count switch
    {
        0 => [],
        1 => [one],
        _ => [many],
    };

    /// <summary>For big digits: <c>23:41</c> minutes and seconds up to 99:59, <c>2:05</c> hours and minutes beyond.</summary>
    public static string Digits(double seconds)
    {
        var whole = (long)Math.Floor(Math.Abs(seconds));
        return DigitsAreHours(seconds)
            ? $"{Text(whole / 3600)}:{Two(whole % 3600 / 60)}"
            : $"{Text(whole / 60)}:{Two(whole % 60)}";
    }

    /// <summary>Whether <see cref="Digits"/> shows hours and minutes.</summary>
    public static bool DigitsAreHours(double seconds) => Math.Floor(Math.Abs(seconds)) >= 6000;

    private static TimeSpan Rounded(double seconds) => seconds < SecondsShownBelow
        ? TimeSpan.FromSeconds(Math.Round(seconds))
        : TimeSpan.FromMinutes(Math.Round(seconds / 60, MidpointRounding.AwayFromZero));

    private static string Text(double number) => number.ToString("0", CultureInfo.InvariantCulture);

    private static string Two(long number) => number.ToString("00", CultureInfo.InvariantCulture);
}
