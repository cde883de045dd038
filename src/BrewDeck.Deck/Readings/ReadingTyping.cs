using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Readings;

/// <summary>
/// A reading as typed, with what its instrument needs: <c>1.046@40</c> (hydrometer in a sample of 40 °C), <c>11.8bx</c>
/// (refractometer), <c>41@77</c> (litres of hot liquid), <c>32cm</c> (depth in a vessel of known diameter).
/// </summary>
public sealed class ReadingTyping(Typed reader, Brewhouse brewhouse, Notation notation)
{
    private const double MetresPerInch = 0.0254;

    /// <returns>Null when it cannot be taken; <paramref name="reason"/> then says why.</returns>
    public Reading? Read(ReadingPlace place, string text, out string reason)
    {
        var typed = text.Trim();
        if (typed.Length == 0)
        {
            reason = notation.Text("Type a value.");
            return null;
        }
        var at = typed.IndexOf(Reading.AtMark, StringComparison.Ordinal);
        if (at >= 0)
            return At(place, typed, typed[..at], typed[(at + 1)..], out reason);
        double value;
        var understood = place.Kind switch
        {
            ReadingKind.Gravity when Number(typed, out value, Reading.BrixMarks.AsSpan()) => Refracted(ref value, out reason),
            ReadingKind.Volume when Number(typed, out value, "cm") => Depth(place, ref value, 0.01, out reason),
            ReadingKind.Volume when Number(typed, out value, "in", "\"") => Depth(place, ref value, MetresPerInch, out reason),
            _ => reader.TryRead(place.Kind, typed, out value, out reason),
        };
        return understood ? new Reading(place.Kind, place.Vessel, value, typed) : null;
    }

    private Reading? At(ReadingPlace place, string typed, string left, string right, out string reason)
    {
        if (place.Kind is not (ReadingKind.Gravity or ReadingKind.Volume))
        {
            reason = notation.Text("Only a gravity or a volume is read at a temperature.");
            return null;
        }
        if (!reader.TryRead(place.Kind, left.Trim(), out var value, out reason))
            return null;
        if (!reader.TryRead(ReadingKind.Temperature, right.Trim(), out var atC, out reason))
        {
            reason = notation.Text($"After @ comes the temperature of what is read: {reason}");
            return null;
        }
        return place.Kind == ReadingKind.Volume
            ? new Reading(place.Kind, place.Vessel, value, typed) { AtC = atC }
            : new Reading(place.Kind, place.Vessel, Hydrometer.TrueSg20(value, atC), typed);
    }

    /// <summary>In a hotter sample a hydrometer reads poorly, however it is corrected; °C, common practice, no source.</summary>
    private const double PoorC = 40;

    /// <summary>A hydrometer's reading that its own text says was taken hot.</summary>
    public bool IsOfHotSample(Reading reading) => reading.Kind == ReadingKind.Gravity
        && reading.AsTyped.Split(Reading.AtMark) is [_, var right] && reader.TryRead(ReadingKind.Temperature, right.Trim(), out var sampleC, out _) && sampleC > PoorC;

    private bool Refracted(ref double value, out string reason)
    {
        if (value is < 0 or > 40)
        {
            reason = notation.Text("A refractometer reads 0 to 40 bx in wort.");
            return false;
        }
        value = SugarSolution.SgFromPlato(Refractometer.WortPlato(value));
        reason = "";
        return true;
    }

    private bool Depth(ReadingPlace place, ref double value, double metres, out string reason)
    {
        if (brewhouse.Vessels.FirstOrDefault(v => v.Id == place.Vessel)?.DiameterM is not { } diameterM)
        {
            reason = notation.Text("This vessel has no diameter in its profile: read litres.");
            return false;
        }
        if (value < 0)
        {
            reason = notation.Text("A depth is 0 or more.");
            return false;
        }
        value = Cylinder.VolumeL(diameterM, value * metres);
        reason = "";
        return true;
    }

    private static bool Number(string text, out double value, params ReadOnlySpan<string> suffixes)
    {
        value = 0;
        foreach (var suffix in suffixes)
        {
            if (text.EndsWith(suffix, StringComparison.OrdinalIgnoreCase))
            {
                return double.TryParse(text[..^suffix.Length].Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out value)
                    && double.IsFinite(value);
            }
        }
        return false;
    }
}
