using System.Globalization;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Reads what is typed into the day's choices.</summary>
internal sealed class DayTyping(Typed reader, Notation notation)
{
    private const double MetresPerFoot = 0.3048;

    public DayRow.Reader Quantity(ReadingKind kind, (double Least, double Most) bounds, Func<DayChoices, double, DayChoices> with) =>
        (DayChoices choices, string text, DateTimeOffset _, out string reason) =>
        {
            if (!reader.TryRead(kind, text, out var value, out reason))
                return null;
            if (value >= bounds.Least && value <= bounds.Most)
                return with(choices, value);
            reason = notation.Text($"{Write(kind, value)} is outside {Write(kind, bounds.Least)} to {Write(kind, bounds.Most)}.");
            return null;
        };

    /// <summary>Heights of places: the quantity reader's lengths are those of vessels and end at 1000 m.</summary>
    public DayChoices? Height(DayChoices choices, string text, DateTimeOffset now, out string reason)
    {
        var (lowest, highest) = DayBounds.AltitudeM;
        var typed = text.Trim().ToLowerInvariant();
        var feet = typed.EndsWith("ft", StringComparison.Ordinal) || (notation.Units == UnitSystem.Us && !typed.EndsWith('m'));
        reason = notation.Text($"Type a height from {notation.Height(lowest)} to {notation.Height(highest)}, such as 350 m or 1200 ft.");
        if (Number(typed.Replace("ft", "", StringComparison.Ordinal).Replace("m", "", StringComparison.Ordinal)) is not { } number)
            return null;
        var metres = feet ? number * MetresPerFoot : number;
        return metres >= lowest && metres <= highest ? choices with { AltitudeM = metres } : null;
    }

    public DayRow.Reader Clock(Func<DayChoices, DateTimeOffset?, DayChoices> with) =>
        (DayChoices choices, string text, DateTimeOffset now, out string reason) =>
        {
            reason = notation.Text("Type a time of day such as 8:30, or nothing.");
            if (text.Trim().Length == 0)
                return with(choices, null);
            return ClockReader.Next(text, now, notation.Zone) is { } at ? with(choices, at) : null;
        };

    public DayRow.Reader Percent(Func<DayChoices, double?, DayChoices> with) =>
        (DayChoices choices, string text, DateTimeOffset _, out string reason) =>
        {
            reason = notation.Text("Type percent, 0 to 25, such as 4.5, or nothing.");
            if (text.Trim().Length == 0)
                return with(choices, null);
            return Number(text.Replace("%", "", StringComparison.Ordinal)) is { } number and >= 0 and <= 25 ? with(choices, number / 100) : null;
        };

    /// <summary>Something of the catalogue in place of what the recipe names.</summary>
    public static DayRow.Reader OnHand<T>(Func<string, T?> find, Func<DayChoices, T?, DayChoices> with, Notation notation)
        where T : class =>
        (DayChoices choices, string text, DateTimeOffset _, out string reason) =>
        {
            reason = notation.Text($"'{text.Trim()}' is not in the catalogue; type a name that is, or nothing.");
            if (text.Trim().Length == 0)
                return with(choices, null);
            return find(text.Trim()) is { } found ? with(choices, found) : null;
        };

    private string Write(ReadingKind kind, double value) => ReadingWords.Value(kind, value, notation);

    private static double? Number(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : null;
}
