using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A rehearsed day looked back at, as text.</summary>
public static class DebriefWords
{
    /// <param name="readings">What was read that day: the brewer knew no more.</param>
    public static ImmutableArray<Line> Lines(Debrief debrief, IReadOnlyList<TakenReading> readings, Notation notation) =>
    [
        .. Figures(debrief, readings, notation),
        .. debrief.Mishaps.SelectMany(m => Mishap(m, notation)),
        .. debrief.Mishaps.IsEmpty ? new[] { Line.Of(""), Line.Of(notation.Text("Nothing went wrong on purpose that day.")) } : [],
    ];

    private static IEnumerable<Line> Figures(Debrief debrief, IReadOnlyList<TakenReading> readings, Notation notation)
    {
        var (plan, result) = (debrief.Plan, debrief.Result);
        yield return Line.Of(notation.Text("                   plan       read       in the vessel (truth of the rehearsal)"), Tone.Strong);
        if (!debrief.Pitched)
        {
            yield return Line.Of(notation.Text($"  day              {Durations.Short(plan.FinishS),-10} ended after {Durations.Short(result.FinishS)}, not pitched"), Tone.Warning);
        }
        else
        {
            yield return Figure(notation.Text("gravity"), notation.Gravity(plan.OriginalGravitySg), Read(ReadingKind.Gravity, readings, notation), notation.Gravity(result.OriginalGravitySg));
            yield return Figure(notation.Text("into fermenter"), notation.Volume(plan.FermenterL), Read(ReadingKind.Volume, readings, notation), notation.Volume(result.FermenterL));
            yield return Figure(notation.Text("bitterness"), Ibu(plan, notation), "", Ibu(result, notation));
            yield return Figure(notation.Text("pitched at"), notation.Temp(plan.PitchC), Read(ReadingKind.Temperature, readings, notation), notation.Temp(result.PitchC));
            yield return Figure(notation.Text("day"), Durations.Short(plan.FinishS), "", Durations.Short(result.FinishS));
        }
        yield return Line.Of(notation.Text($"  The mash was {notation.Kelvin(result.MashOffK)} off its rests on average."));
        if (result.SpiltL > 0)
            yield return Line.Of(notation.Text($"  {notation.Volume(result.SpiltL)} of wort boiled over."), Tone.Warning);
    }

    private static IEnumerable<Line> Mishap(MishapDebrief m, Notation notation)
    {
        yield return Line.Of("");
        yield return Line.Of($"{Names.Sentence(MishapWords.Name(m.Mishap.Kind, notation))}, {MishapWords.Severity(m.Mishap.Severity, notation)}", Tone.Strong);
        yield return Line.Of("  " + When(m, notation));
        if (m.Chosen is not { } chosen || m.Best is not { } best)
            yield break;
        yield return Line.Of(notation.Text($"  done: {Tried(chosen, notation)}"));
        yield return Line.Of(notation.Text($"  best: {Tried(best, notation)}"));
        foreach (var other in m.Tried.Skip(1).Where(t => t.Answer != chosen.Answer))
            yield return Line.Of(notation.Text($"  else: {Tried(other, notation)}"), Tone.Muted);
        yield return Line.Of("  " + Cost(chosen, best, notation), chosen.Loss - best.Loss < Noticeable ? Tone.Normal : Tone.Warning);
    }

    /// <summary>Below half a point two days are the same to a brewer.</summary>
    private const double Noticeable = 0.5;

    private static string When(MishapDebrief m, Notation notation) => m switch
    {
        { AtS: null } => notation.Text("The day did not come to it."),
        { SeenS: null } => notation.Text($"Began after {Durations.Short(m.AtS.Value)}; the day ended before it could be seen."),
        { ActedS: null } => notation.Text($"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}; nobody did anything about it."),
        _ => notation.Text($"Began after {Durations.Short(m.AtS.Value)}, could be seen after {Durations.Short(m.SeenS.Value)}, met {Durations.Short(m.ActedS.Value - m.SeenS.Value)} later."),
    };

    private static string Tried(TriedAnswer tried, Notation notation) =>
        $"{MishapWords.Answer(tried.Answer, notation)}: {notation.Gravity(tried.Gives.OriginalGravitySg)}, {notation.Volume(tried.Gives.FermenterL)}, {Ibu(tried.Gives, notation)}, {Durations.Short(tried.Gives.FinishS)}.";

    private static string Cost(TriedAnswer chosen, TriedAnswer best, Notation notation)
    {
        if (chosen.Loss - best.Loss < Noticeable)
            return notation.Text("Nothing would have been noticeably better.");
        var (c, b) = (chosen.Gives, best.Gives);
        return notation.Text("Against the best: ")
            + $"{Signed((c.FinishS - b.FinishS) / 60, "0", notation)} min, {Signed(c.FermenterL - b.FermenterL, "0.0", notation)} L, "
            + notation.Text($"{Signed(1000 * (c.OriginalGravitySg - b.OriginalGravitySg), "0.0", notation)} gravity points, mash {notation.Kelvin(c.MashOffK)} off its rests instead of {notation.Kelvin(b.MashOffK)}.");
    }

    /// <summary>What is rounded to nothing is no loss: it has no minus.</summary>
    private static string Signed(double value, string format, Notation notation)
    {
        var digits = notation.Number(Math.Abs(value), format);
        return (value < 0 && digits.AsSpan().ContainsAnyInRange('1', '9') ? "−" : "+") + digits;
    }

    private static Line Figure(string name, string plan, string read, string result) => Line.Of($"  {name,-16} {plan,-10} {read,-10} {result}");

    /// <summary>The last one in the fermenter; a dash when nobody took one.</summary>
    private static string Read(ReadingKind kind, IReadOnlyList<TakenReading> readings, Notation notation) =>
        readings.LastOrDefault(r => r.Reading.Kind == kind && r.Reading.Vessel == PlantSetting.FermenterId) is { } last
            ? ReadingWords.Value(kind, last.Reading.Value, notation)
            : "-";

    private static string Ibu(DayResult day, Notation notation) => notation.Number(day.BitternessIbu, "0") + " IBU";
}
