using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Readings;

/// <summary>A date as typed: <c>2026-06-03</c>, <c>today</c>, <c>tomorrow</c>, <c>3 d</c>, <c>2 weeks</c> (from now).</summary>
internal static class DateTyping
{
    public static readonly Phrase HowTo = "2026-06-03, today, 3 d or 2 weeks from now";

    /// <returns>Noon of that day in Unix ms; null when it cannot be read.</returns>
    public static long? Read(string text, DateTimeOffset now, Notation notation)
    {
        var today = TimeZoneInfo.ConvertTime(now, notation.Zone).Date;
        var typed = text.Trim().ToLowerInvariant();
        if (Day(typed, today, notation) is not { } day || Math.Abs((day - today).TotalDays) > 400)
            return null;
        return Noon(day, notation);
    }

    /// <summary>Year, month and day in digits: meant as a date, right or not.</summary>
    public static bool IsDate(string typed) => typed.Count(c => c == '-') == 2 && typed.All(c => char.IsAsciiDigit(c) || c == '-');

    /// <returns>Null: no such day.</returns>
    public static DateTime? Date(string typed) =>
        DateTime.TryParseExact(typed, "yyyy-M-d", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    /// <summary>Of a day where the brewer is, Unix ms.</summary>
    public static long Noon(DateTime day, Notation notation)
    {
        var noon = DateTime.SpecifyKind(day.Date.AddHours(12), DateTimeKind.Unspecified);
        return new DateTimeOffset(noon, notation.Zone.GetUtcOffset(noon)).ToUnixTimeMilliseconds();
    }

    private static DateTime? Day(string typed, DateTime today, Notation notation)
    {
        if (typed == "today" || typed == notation.Name("today"))
            return today;
        if (typed == "tomorrow" || typed == notation.Name("tomorrow"))
            return today.AddDays(1);
        if (Date(typed) is { } date)
            return date;
        var read = QuantityReader.Read(typed.TrimStart('+'), Dimension.Time, "d", notation);
        return read.Ok ? today.AddDays(Math.Round(read.Value / 86_400)) : null;
    }
}
