using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A rehearsed day looked back at, as text.</summary>
public static class DebriefWords
{
    public static ImmutableArray<Line> Lines(Debrief debrief, Notation notation) =>
    [
        .. Figures(debrief, notation),
        .. debrief.Mishaps.SelectMany(m => Mishap(m, notation)),
        .. debrief.Mishaps.IsEmpty ? new[] { Line.Of(""), Line.Of("Nothing went wrong on purpose that day.") } : [],
    ];

    private static IEnumerable<Line> Figures(Debrief debrief, Notation notation)
    {
        var (plan, result) = (debrief.Plan, debrief.Result);
        yield return Line.Of("                   plan       result", Tone.Strong);
        if (!debrief.Pitched)
        {
            yield return Line.Of($"  day              {Durations.Short(plan.FinishS),-10} ended after {Durations.Short(result.FinishS)}, not pitched", Tone.Warning);
        }
        else
        {
            yield return Figure("gravity", notation.Gravity(plan.OriginalGravitySg), notation.Gravity(result.OriginalGravitySg));
            yield return Figure("into fermenter", notation.Volume(plan.FermenterL), notation.Volume(result.FermenterL));
            yield return Figure("bitterness", Ibu(plan), Ibu(result));
            yield return Figure("pitched at", notation.Temp(plan.PitchC), notation.Temp(result.PitchC));
            yield return Figure("day", Durations.Short(plan.FinishS), Durations.Short(result.FinishS));
        }
        yield return Line.Of($"  The mash was {notation.Kelvin(result.MashOffK)} off its rests on average.");
        if (result.SpiltL > 0)
            yield return Line.Of($"  {notation.Volume(result.SpiltL)} of wort boiled over.", Tone.Warning);
    }

    private static IEnumerable<Line> Mishap(MishapDebrief m, Notation notation)
    {
        yield return Line.Of("");
        yield return Line.Of($"{Names.Sentence(MishapWords.Name(m.Mishap.Kind))}, {MishapWords.Severity(m.Mishap.Severity)}", Tone.Strong);
        yield return Line.Of("  " + When(m));
        if (m.Chosen is not { } chosen || m.Best is not { } best)
            yield break;
        yield return Line.Of($"  done: {Tried(chosen, notation)}");
        yield return Line.Of($"  best: {Tried(best, notation)}");
        foreach (var other in m.Tried.Skip(1).Where(t => t.Answer != chosen.Answer))
            yield return Line.Of($"  else: {Tried(other, notation)}", Tone.Muted);
        yield return Line.Of("  " + Cost(chosen, best, notation), chosen.Loss - best.Loss < Noticeable ? Tone.Normal : Tone.Warning);
    }

    /// <summary>Below half a point two days are the same to a brewer.</summary>
    private const double Noticeable = 0.5;

    private static string When(MishapDebrief m) => m switch
    {
        { AtS: null } => "The day did not come to it.",
        { SeenS: null } => $"Began after {Durations.Short(m.AtS.Value)}; the day ended before it could be seen.",
        { ActedS: null } => $"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}; nobody did anything about it.",
        _ => $"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}, met {Durations.Short(m.ActedS.Value - m.SeenS.Value)} later.",
    };

    private static string Tried(TriedAnswer tried, Notation notation) =>
        $"{MishapWords.Answer(tried.Answer)}: {notation.Gravity(tried.Gives.OriginalGravitySg)}, {notation.Volume(tried.Gives.FermenterL)}, {Ibu(tried.Gives)}, {Durations.Short(tried.Gives.FinishS)}.";

    private static string Cost(TriedAnswer chosen, TriedAnswer best, Notation notation)
    {
        if (chosen.Loss - best.Loss < Noticeable)
            return "Nothing would have been noticeably better.";
        var (c, b) = (chosen.Gives, best.Gives);
        return "Against the best: "
            + $"{Signed((c.FinishS - b.FinishS) / 60, "0")} min, {Signed(c.FermenterL - b.FermenterL, "0.0")} L, "
            + $"{Signed(1000 * (c.OriginalGravitySg - b.OriginalGravitySg), "0.0")} gravity points, mash {notation.Kelvin(c.MashOffK)} off its rests instead of {notation.Kelvin(b.MashOffK)}.";
    }

    private static string Signed(double value, string format) => (value < 0 ? "−" : "+") + Notation.Number(Math.Abs(value), format);

    private static Line Figure(string name, string plan, string result) => Line.Of($"  {name,-16} {plan,-10} {result}");

    private static string Ibu(DayResult day) => Notation.Number(day.BitternessIbu, "0") + " IBU";
}
