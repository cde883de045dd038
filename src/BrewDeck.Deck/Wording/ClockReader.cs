using System.Globalization;

namespace BrewDeck.Deck.Wording;

/// <summary>Reads a time of day as typed: <c>14:30</c>, <c>1430</c>, <c>9</c>; the next such moment is meant.</summary>
public static class ClockReader
{
    /// <returns>Null when it is no time of day.</returns>
    public static DateTimeOffset? Next(string text, DateTimeOffset now, TimeZoneInfo zone)
    {
        if (Time(text.Trim()) is not { } time)
            return null;
        var local = TimeZoneInfo.ConvertTime(now, zone);
        var today = At(local.Date, time, zone);
        return today > now ? today : At(local.Date.AddDays(1), time, zone);
    }

    private static DateTimeOffset At(DateTime day, TimeSpan time, TimeZoneInfo zone)
    {
        var local = DateTime.SpecifyKind(day + time, DateTimeKind.Unspecified);
        // an hour that daylight saving leaves out is taken an hour later, as a wall clock would show it
        if (zone.IsInvalidTime(local))
            local = local.AddHours(1);
        return new DateTimeOffset(local, zone.GetUtcOffset(local));
    }

    private static TimeSpan? Time(string text)
    {
        var digits = text.Replace(":", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal);
        if (digits.Length is 0 or > 4 || !int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return null;
        var (hour, minute) = digits.Length <= 2 ? (number, 0) : (number / 100, number % 100);
        return hour < 24 && minute < 60 ? new TimeSpan(hour, minute, 0) : null;
    }
}
