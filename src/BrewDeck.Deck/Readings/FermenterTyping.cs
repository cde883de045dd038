using System.Globalization;
using System.Text.RegularExpressions;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Readings;

/// <summary>What is typed after the day: gravities with their instrument, additions, a rating with a note.</summary>
internal sealed partial class FermenterTyping(Typed reader, FermentState state, Notation notation)
{
    /// <returns>Null when it cannot be taken; <paramref name="reason"/> then says why.</returns>
    public FermenterReading? Read(FermenterFigure figure, string text, DateTimeOffset now, out string reason)
    {
        var typed = text.Trim();
        if (typed.LastIndexOf(' ') is var gap and >= 0 && DateTyping.IsDate(typed[(gap + 1)..]))
        {
            reason = notation.Text("Write the day as year, month and day, such as 2026-12-07.");
            return DateTyping.Date(typed[(gap + 1)..]) is { } day && OfNow(figure, typed[..gap].TrimEnd(), out reason) is { } dated
                ? dated with { AsTyped = typed, TakenMs = Taken(day, now) }
                : null;
        }
        return OfNow(figure, typed, out reason);
    }

    /// <summary>Noon of a day, on the day of the pitch not before it; null: today, which is now.</summary>
    private long? Taken(DateTime day, DateTimeOffset now)
    {
        if (day == notation.Local(now.ToUnixTimeMilliseconds()).Date)
            return null;
        var noon = DateTyping.Noon(day, notation);
        return state.PitchedMs is { } pitched && day == notation.Local(pitched).Date ? Math.Max(noon, pitched) : noon;
    }

    private FermenterReading? OfNow(FermenterFigure figure, string typed, out string reason)
    {
        if (figure == FermenterFigure.Gravity)
            return Gravity(typed, out reason);
        var kind = figure == FermenterFigure.Temperature ? ReadingKind.Temperature : ReadingKind.Ph;
        return reader.TryRead(kind, typed, out var value, out reason) ? new(figure, value, typed) : null;
    }

    /// <summary>"80 g Cascade", "80g Cascade", "2 each vanilla pod".</summary>
    public static DatedAddition? Addition(string text, Notation notation, out string reason)
    {
        reason = notation.Text("Write how much of what, such as 80 g Cascade.");
        var typed = text.Trim();
        // a unit glued to its number
        var digits = typed.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',').Count();
        var parts = $"{typed[..digits]} {typed[digits..]}".Split(' ', 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return parts.Length == 3 && Number(parts[0]) is { } amount and > 0 ? new DatedAddition(parts[2], amount, parts[1]) : null;
    }

    /// <summary>"4 clean, dry" and "4/5 clean, dry" rate and note, "4" only rates; without a leading 1 to 5 it only notes.</summary>
    /// <returns>Null: a number that is no rating.</returns>
    public static (string Text, int? Rating)? Tasting(string text)
    {
        var typed = text.Trim();
        if (Rated().Match(typed) is { Success: true } rated)
            return (typed[rated.Length..].Trim(), typed[0] - '0');
        return OtherScale().IsMatch(typed) ? null : (typed, null);
    }

    /// <summary>1 to 5, also of 5.</summary>
    [GeneratedRegex(@"^[1-5](\s*/\s*5)?($|\s+|[,:;](?!\d))")]
    private static partial Regex Rated();

    /// <summary>A number alone, a fraction or a decimal in front of the words: 8, 4.5 or 7/10.</summary>
    [GeneratedRegex(@"^\d+\s*([-/.,]\s*\d+|$)")]
    private static partial Regex OtherScale();

    private FermenterReading? Gravity(string typed, out string reason)
    {
        if (typed.EndsWith("bx", StringComparison.OrdinalIgnoreCase))
            return Refracted(typed, out reason);
        var parts = typed.Split('@');
        var celsius = 20.0;
        if (parts.Length > 2 || (parts.Length == 2 && !reader.TryRead(ReadingKind.Temperature, parts[1].Trim(), out celsius, out reason)))
        {
            reason = notation.Text("Write a gravity such as 1.012, 1.012@22 (sample at 22 °C) or 6.5bx.");
            return null;
        }
        return reader.TryRead(ReadingKind.Gravity, parts[0].Trim(), out var value, out reason)
            ? new(FermenterFigure.Gravity, parts.Length == 2 ? Hydrometer.TrueSg20(value, celsius) : value, typed)
            : null;
    }

    private FermenterReading? Refracted(string typed, out string reason)
    {
        reason = notation.Text("A refractometer reads 0 to 32 bx.");
        return Number(typed[..^2].TrimEnd(' ', '°')) is { } brix and >= 0 and <= 32
            ? new(FermenterFigure.Gravity, FermentFigures.ByRefractometerSg(state.OriginalSg, brix), typed) { Brix = brix }
            : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : null;
}
