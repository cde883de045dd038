using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Readings in words.</summary>
public static class ReadingWords
{
    public static string Value(ReadingKind kind, double value, Notation notation) => kind switch
    {
        ReadingKind.Temperature => notation.Temp(value),
        ReadingKind.Volume => notation.Volume(value),
        ReadingKind.Gravity => notation.Gravity(value),
        ReadingKind.Ph => "pH " + notation.Number(value, "0.00"),
        ReadingKind.Weight => notation.Mass(value),
        _ => notation.Number(value, "0.##"),
    };

    /// <summary>"mash tun temperature".</summary>
    public static string What(ReadingKind kind, string vessel, Brewhouse brewhouse, Notation notation) =>
        $"{Names.Vessel(brewhouse, vessel, notation)} {Names.Kind(kind, notation)}";

    /// <summary>"mash tun temperature 65.4 °C".</summary>
    public static string One(Reading reading, Brewhouse brewhouse, Notation notation) =>
        $"{What(reading.Kind, reading.Vessel, brewhouse, notation)} {Named(reading.Kind, reading.Value, notation)}";

    /// <summary>Behind the name of what was read: "5.40" where <see cref="Value"/> alone would say "pH 5.40".</summary>
    public static string Named(ReadingKind kind, double value, Notation notation) => kind == ReadingKind.Ph ? notation.Number(value, "0.00") : Value(kind, value, notation);

    public static string AsExpected(Notation notation) => notation.Text("as expected");

    /// <summary>"0.6 °C less than reckoned", "as expected"; empty when nothing was expected. What is expected moves with the day: it is not the plan.</summary>
    public static string Against(ReadingKind kind, double value, double expected, Notation notation)
    {
        if (!double.IsFinite(expected))
            return "";
        var off = value - expected;
        return IsNear(kind, value, expected)
            ? AsExpected(notation)
            : off < 0 ? notation.Text($"{Difference(kind, -off, notation)} less than reckoned") : notation.Text($"{Difference(kind, off, notation)} more than reckoned");
    }

    /// <summary>"0.2 L under plan"; empty when it is as planned.</summary>
    public static string AgainstPlan(ReadingKind kind, double value, double planned, Notation notation) => IsNear(kind, value, planned) ? ""
        : value < planned ? notation.Text($"{Difference(kind, planned - value, notation)} under plan") : notation.Text($"{Difference(kind, value - planned, notation)} over plan");

    /// <summary>What no brewer tells apart with usual instruments: a thermometer, K.</summary>
    public const double NearK = 0.25;

    /// <summary>Too near for usual instruments to tell apart; common practice, no source.</summary>
    public static bool IsNear(ReadingKind kind, double value, double other) => Math.Abs(value - other) < kind switch
    {
        // one division of a usual hydrometer
        ReadingKind.Gravity => 0.0011,
        ReadingKind.Weight => 0.0005,
        ReadingKind.Ph => 0.03,
        ReadingKind.Volume => Math.Max(0.15, 0.004 * other),
        _ => NearK,
    };

    private static string Difference(ReadingKind kind, double off, Notation notation) => kind switch
    {
        ReadingKind.Temperature => notation.Kelvin(off),
        ReadingKind.Ph => notation.Number(off, "0.00"),
        _ => Value(kind, off, notation),
    };

    /// <summary>Asks for one: what, and how it may be typed.</summary>
    public static string Ask(ReadingKind kind, string vessel, Brewhouse brewhouse, Notation notation) =>
        Names.Sentence(What(kind, vessel, brewhouse, notation)) + "?";

    public static string HowToType(ReadingKind kind, bool depth, Notation notation) => (kind, notation.Units) switch
    {
        (ReadingKind.Temperature, UnitSystem.Us) => notation.Text("152 or 66.5c"),
        (ReadingKind.Temperature, _) => notation.Text("66.5 or 152f"),
        (ReadingKind.Volume, UnitSystem.Us) => depth ? notation.Text("6.5gal, 25L, or depth 12in") : notation.Text("6.5gal or 25L"),
        (ReadingKind.Volume, _) => depth ? notation.Text("41.5, 41@77 (hot), or depth 32cm") : notation.Text("41.5 or 41@77 (hot)"),
        (ReadingKind.Gravity, _) => notation.Text("1.048, 1.046@40 (sample at 40 °C), 12.1p, 12.5bx"),
        (ReadingKind.Ph, _) => notation.Text("5.35, sample at room temperature"),
        (ReadingKind.Weight, UnitSystem.Us) => notation.Text("11.5lb or 5.2kg"),
        _ => notation.Text("5.2 or 250g"),
    };

    /// <summary>"shows 65.4 °C", "shows 1.031 in a sample of 50 °C".</summary>
    public static string Shown(ReadingKind kind, Shown shown, Notation notation) =>
        notation.Text($"shows {Value(kind, shown.Value, notation)}{(shown.SampleC is { } c ? notation.Text($" in a sample of {notation.Target(c)}") : "")}");

    /// <summary>Asks again for two that cannot both be right.</summary>
    public static string Quarrel(Decision.Quarrel quarrel, Notation notation)
    {
        var (one, other) = (Value(quarrel.Reading.Kind, quarrel.Reading.Value, notation), Value(quarrel.Other.Kind, quarrel.Other.Value, notation));
        return quarrel.ExtractKg > quarrel.MostKg
            ? notation.Text($"{one} and {other} are {notation.Mass(quarrel.ExtractKg)} of extract; the grist has {notation.Mass(quarrel.MostKg)}. Read again?")
            : notation.Text($"{one} and {other} are {notation.Mass(quarrel.ExtractKg)} of extract; {notation.Mass(quarrel.ExpectedKg)} are expected. Read again?");
    }

    /// <summary>Asks again for the implausible, and for what another vessel shows.</summary>
    public static string Doubt(Decision.AskAgain again, Brewhouse brewhouse, Notation notation) =>
        again.Fits.Length > 0 && again.Reading.Value >= again.Low && again.Reading.Value <= again.High
            ? Names.Sentence(notation.Text($"{One(again.Reading, brewhouse, notation)}? That would fit {Names.The(brewhouse, again.Fits, notation)}."))
            : Outside(again.Reading, again.Low, again.High, brewhouse, notation) + (again.HotSample ? HowHot(again.Reading, notation) : "");

    private static string HowHot(Reading reading, Notation notation)
    {
        var typed = $"{Value(reading.Kind, reading.Value, notation)}@{(notation.Units == UnitSystem.Us ? "120" : "50")}";
        return notation.Text($" Was the sample hot? Then type {typed}.");
    }

    private static string Outside(Reading reading, double low, double high, Brewhouse brewhouse, Notation notation) =>
        notation.Text($"{Value(reading.Kind, reading.Value, notation)} is far from what is expected of {Names.The(brewhouse, reading.Vessel, notation)}: {Beside(reading, low, 1, notation)} to {Beside(reading, high, -1, notation)}.");

    /// <summary>A bound that would round to what is outside it is said one step farther in.</summary>
    private static string Beside(Reading reading, double bound, int inwards, Notation notation)
    {
        var said = Value(reading.Kind, bound, notation);
        return said == Value(reading.Kind, reading.Value, notation) ? Value(reading.Kind, bound + inwards * Step(reading.Kind), notation) : said;
    }

    /// <summary>What a number of a kind is rounded to, in its canonical unit.</summary>
    private static double Step(ReadingKind kind) => kind switch
    {
        ReadingKind.Gravity or ReadingKind.Weight => 0.001,
        ReadingKind.Ph => 0.01,
        _ => 0.1,
    };
}
