using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Figures named by records (snake_case with the unit at the end) as people say and round them.</summary>
public static class FigureWords
{
    /// <summary>A target that the plant's state decides: <c>target_c:STEP</c>.</summary>
    private const string StepTarget = "target_c:";

    public static string Name(string figure, Notation notation) => figure switch
    {
        "original_gravity_sg" => notation.Text("gravity"),
        "pre_boil_gravity_sg" => notation.Text("pre-boil gravity"),
        "pre_boil_l" => notation.Text($"pre-boil volume at {notation.Target(20)}"),
        "post_boil_l" => notation.Text($"post-boil volume at {notation.Target(20)}"),
        "fermenter_l" => notation.Text("into the fermenter"),
        "bitterness_ibu" => notation.Text("bitterness"),
        "colour_ebc" => notation.Text("colour"),
        "pitch_c" => notation.Text("pitch temperature"),
        "finish_ms" => notation.Text("finish"),
        "mash_c" => notation.Text("mash"),
        "mash_ph" => notation.Text("mash pH"),
        _ when figure.StartsWith(StepTarget, StringComparison.Ordinal) => notation.Text("target of ") + Names.Plainly(figure[(figure.LastIndexOfAny([':', '.']) + 1)..]),
        _ => Names.Plainly(WithoutUnit(figure)),
    };

    public static string Value(string figure, double value, Notation notation) => Unit(figure) switch
    {
        "sg" => notation.Gravity(value),
        "l" => notation.Volume(value),
        "c" => notation.Temp(value),
        "kg" => notation.Mass(value),
        "g" => notation.Grams(value),
        "w" => notation.Power(value),
        "ibu" => notation.Number(value, "0") + " IBU",
        "ebc" => notation.Number(value, "0") + " EBC",
        "ms" => notation.Clock((long)value),
        "s" => Durations.Short(value),
        "min" => Durations.Short(value * 60),
        _ => notation.Number(value, "0.##"),
    };

    /// <summary>"gravity 1.050 -> 1.047".</summary>
    public static string Moved(Shift shift, Notation notation) =>
        $"{Name(shift.Figure, notation)} {Value(shift.Figure, shift.Before, notation)} -> {Value(shift.Figure, shift.After, notation)}";

    /// <summary>Only what reads differently after rounding: the rest has not changed for the brewer.</summary>
    public static string Moved(IEnumerable<Shift> shifts, Notation notation) => string.Join(", ", shifts
        .Where(s => Reads(s, notation))
        .Select(s => Moved(s, notation)));

    /// <summary>What moves the beer or the evening first: a message line of two rows holds three; the log has all.</summary>
    private static int Rank(string figure) => figure switch
    {
        "fermenter_l" => 0,
        "original_gravity_sg" => 1,
        "finish_ms" => 2,
        "bitterness_ibu" => 3,
        "pitch_c" => 4,
        _ => Lesser,
    };

    /// <summary>What stands between, such as the volume before the boil: told where nothing else moves.</summary>
    private const int Lesser = 5;

    /// <summary>So many figures are told where there is room.</summary>
    public const int Told = 3;

    /// <summary>The same in brief.</summary>
    /// <param name="most">So many figures, those that matter most.</param>
    public static string Briefly(IEnumerable<Shift> shifts, Notation notation, int most = Told)
    {
        var read = shifts.Where(s => Reads(s, notation)).OrderBy(s => Rank(s.Figure)).ToList();
        return string.Join(", ", read.Where(s => Rank(s.Figure) < Lesser || Rank(read[0].Figure) == Lesser).Take(most).Select(s => Moved(s, notation)));
    }

    /// <summary>Reads differently after rounding.</summary>
    public static bool Reads(Shift shift, Notation notation) =>
        Value(shift.Figure, shift.Before, notation) != Value(shift.Figure, shift.After, notation);

    private static string Unit(string figure) => figure.StartsWith(StepTarget, StringComparison.Ordinal) ? "c" : figure[(figure.LastIndexOf('_') + 1)..];

    // the unit of a rate is three words: cast_out_l_per_min
    private static string WithoutUnit(string figure)
    {
        var unit = figure.LastIndexOf("_per_", StringComparison.Ordinal) is > 0 and var per ? figure[..per] : figure;
        return unit.LastIndexOf('_') is > 0 and var at ? unit[..at] : figure;
    }
}
