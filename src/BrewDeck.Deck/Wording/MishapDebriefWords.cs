using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>One mishap looked back at: what was done, what would have been better, and what may never be done.</summary>
internal static class MishapDebriefWords
{
    public static IEnumerable<Line> Lines(MishapDebrief m, Notation notation)
    {
        yield return Line.Of("");
        yield return Line.Of($"{Names.Sentence(MishapWords.Name(m.Mishap.Kind, notation))}, {MishapWords.Severity(m.Mishap.Severity, notation)}", Tone.Strong);
        yield return Line.Of("  " + When(m, notation));
        if (m.Chosen is not { } chosen || m.Best is null)
            yield break;
        yield return Line.Of(notation.Text($"  done: {Tried(chosen, m, notation)}"), chosen.Safe ? Tone.Normal : Tone.Alarm);
        if (m.Better is { } better)
            yield return Line.Of(notation.Text($"  best: {Tried(better, m, notation)}"));
        foreach (var other in m.Tried.Where(t => t.Answer != chosen.Answer && t.Answer != m.Better?.Answer))
            yield return m.IsAsGood(other) ? Line.Of(notation.Text($"  even: {Tried(other, m, notation)}"), Tone.Muted)
                : other.Safe ? Line.Of(notation.Text($"  else: {Tried(other, m, notation)}"), Tone.Muted) : Line.Of(notation.Text($"  never: {Tried(other, m, notation)}"), Tone.Warning);
        if (m.Tried.Append(chosen).Any(t => !t.Safe))
            yield return Line.Of("  " + Never(m.Mishap.Kind, notation), Tone.Warning);
        // what something unsafe saved is not worth a word
        if (chosen.Safe && Cost(m, chosen, notation) is { Length: > 0 } cost)
            yield return Line.Of("  " + cost, m.Better is null ? Tone.Normal : Tone.Warning);
    }

    private static string When(MishapDebrief m, Notation notation) => m switch
    {
        { AtS: null } => notation.Text("The day did not come to it."),
        { SeenS: null } => notation.Text($"Began after {Durations.Short(m.AtS.Value)}; the day ended before it could be seen."),
        { ActedS: null } => notation.Text($"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}; nobody did anything about it."),
        _ => notation.Text($"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}, answered {Durations.Short(m.ActedS.Value - m.SeenS.Value)} later."),
    };

    /// <summary>Of what the mash is in danger by, how far it was off: no other figure shows it.</summary>
    private static bool IsOfTheMash(MishapKind kind) => kind is MishapKind.ColdStrike or MishapKind.ThickMash or MishapKind.WrongWeighIn;

    /// <summary>Of what the wort cools by, how warm it was pitched.</summary>
    private static bool IsOfCooling(MishapKind kind) => kind == MishapKind.SlowChiller;

    private static string Tried(TriedAnswer tried, MishapDebrief m, Notation notation) =>
        $"{MishapWords.Answer(tried.Answer, notation)}: {notation.Gravity(tried.Gives.OriginalGravitySg)}, {notation.Volume(tried.Gives.FermenterL)}, {DebriefWords.Ibu(tried.Gives.BitternessIbu, notation)}, {Durations.Short(tried.Gives.FinishS)}{(IsOfTheMash(m.Mishap.Kind) ? ", " + notation.Text($"mash {notation.Kelvin(tried.Gives.MashOffK)} off") : "")}{(IsOfCooling(m.Mishap.Kind) ? ", " + notation.Text($"pitched at {notation.Temp(tried.Gives.PitchC)}") : "")}; {notation.Text($"{notation.Number(tried.Loss, "0.0")} points off")}.";

    private static string Never(MishapKind kind, Notation notation) => kind == MishapKind.BoilOver
        ? notation.Text("Boiling wort over the rim scalds, and a flame or a wet floor makes it worse: whatever it gives, it is no answer.")
        : notation.Text("Power on a wet plug may kill, and a breaker that trips again has a cause: whatever it gives, it is no answer.");

    private static string Cost(MishapDebrief m, TriedAnswer chosen, Notation notation)
    {
        if (m.Better is not { } better)
            return m.Tried.Any(t => t.Answer != chosen.Answer && m.IsAsGood(t))
                ? notation.Text("As good as the best: what is less than half a point apart is the same.")
                : notation.Text("That was the best choice: no other would have come noticeably nearer to the plan.");
        var (c, b) = (chosen.Gives, better.Gives);
        string[] parts =
        [
            Signed((c.FinishS - b.FinishS) / 60, "0", "min", notation),
            Signed(c.FermenterL - b.FermenterL, "0.0", "L", notation),
            Signed(1000 * (c.OriginalGravitySg - b.OriginalGravitySg), "0.0", notation.Text("gravity points"), notation),
            Signed(c.BitternessIbu - b.BitternessIbu, "0", "IBU", notation),
            notation.Kelvin(c.MashOffK) == notation.Kelvin(b.MashOffK) ? "" : notation.Text($"mash {notation.Kelvin(c.MashOffK)} off its rests instead of {notation.Kelvin(b.MashOffK)}"),
            notation.Temp(c.PitchC) == notation.Temp(b.PitchC) ? "" : notation.Text($"pitched at {notation.Temp(c.PitchC)} instead of {notation.Temp(b.PitchC)}"),
        ];
        var told = string.Join(", ", parts.Where(p => p.Length > 0));
        return told.Length == 0 ? "" : notation.Text($"Against the best: {told}.");
    }

    /// <summary>What is rounded to nothing is no loss, and is not told.</summary>
    private static string Signed(double value, string format, string unit, Notation notation)
    {
        var digits = notation.Number(Math.Abs(value), format);
        return digits.AsSpan().ContainsAnyInRange('1', '9') ? $"{(value < 0 ? "−" : "+")}{digits} {unit}" : "";
    }
}
