using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Learning;

/// <summary>A number of the profile that batches teach about.</summary>
/// <param name="Id">Stable name, such as <c>conversion_yield</c> or <c>net:liquor</c>.</param>
/// <param name="Unit">Canonical unit as people write it; empty for a share.</param>
/// <param name="PriorSd">How far a profile's number is usually off the brewhouse, same unit.</param>
/// <param name="DaySd">How far a day is usually off the brewhouse's own mean, same unit.</param>
/// <param name="Get">The number in a profile.</param>
/// <param name="With">The profile with another number; null: the profile has no such number.</param>
/// <param name="Least">What a profile may say.</param>
public sealed record LessonParameter(
    string Id,
    string Unit,
    double PriorSd,
    double DaySd,
    double Least,
    double Most,
    Func<Brewhouse, double> Get,
    Func<Brewhouse, double, Brewhouse>? With)
{
    /// <summary>Where a profile says how far one day is off; null: it does not.</summary>
    public SpreadPlace? Spread { get; init; }

    /// <summary>A number between 0 and 1, written in per cent.</summary>
    public bool IsShare => Unit.Length == 0 && Most <= 1;

    /// <summary>What a spread of the profile is a share of: a share is one already.</summary>
    public double SpreadOf(double value) => IsShare ? 1 : value;

    /// <summary>Vessel that it belongs to; empty: the brewhouse.</summary>
    public string Vessel => Id.Contains(':', StringComparison.Ordinal) ? Id[(Id.IndexOf(':', StringComparison.Ordinal) + 1)..] : "";

    /// <summary>The name without its vessel.</summary>
    public string Stem => Id.Split(':')[0];
}

/// <summary>Where a profile says how far a day is off in one number.</summary>
public sealed record SpreadPlace(Func<DaySpreads, double?> Get, Func<DaySpreads, double, DaySpreads> With);
