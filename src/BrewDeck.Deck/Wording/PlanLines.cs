using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>The steps of one unit procedure.</summary>
public sealed record PlanPart(UnitProcedure Unit, ImmutableArray<PlanStep> Steps);

/// <summary>A figure of the day in words.</summary>
public sealed record PlanTotal(string Label, string Value);

/// <summary>The plan as lines in their tones: the plan screen shows them, the plan command prints them.</summary>
public static class PlanLines
{
    /// <param name="also">More to say of a step, on paper; empty: nothing.</param>
    public static ImmutableArray<Line> Of(Plan plan, Notation notation, Func<PlanStep, string>? also = null) =>
    [
        Line.Of(Heading(plan, notation), Tone.Strong),
        .. WaterWarnings.Lines(plan, notation),
        Line.Of(""),
        .. Totals(plan, notation).Select(t => new Line([new Span(t.Label.PadRight(26), Tone.Muted), new Span(t.Value)])),
        .. plan.Written is { } written ? FittedWords.Of(written, plan, notation) : [],
        .. Parts(plan).SelectMany(p => Part(p, plan, notation, also)),
        Line.Of(""),
        Line.Of(notation.Text("Cautions"), Tone.Strong),
        .. CautionWords.Of(Dangers(plan), notation).Select(c => new Line([new Span("  ! ", Tone.Warning), new Span(c, Tone.Warning)])),
        Line.Of(""),
        Line.Of(notation.Text("Limits"), Tone.Strong),
        Line.Of("  " + notation.Text("Litres here as they stand when the vessel is fullest, hot or cold."), Tone.Muted),
        .. plan.Limits.Select(l => Line.Of("  " + LimitWords.OnPlan(l, plan, notation), l.Ok ? Tone.Normal : Tone.Warning)),
    ];

    public static string Heading(Plan plan, Notation notation) =>
        notation.Text($"{plan.Recipe.Name}, {notation.Volume(plan.Totals.FermenterL)} on {plan.Brewhouse.Name}");

    public static ImmutableArray<PlanTotal> Totals(Plan plan, Notation notation)
    {
        var t = plan.Totals;
        return
        [
            new(notation.Text("strike liquor"), notation.Volume(t.StrikeWaterL)),
            new(notation.Text("sparge liquor"), notation.Volume(t.SpargeWaterL)),
            new(notation.Text("kettle before the boil"), notation.Text($"{notation.Volume(t.PreBoilL)} at {notation.Gravity(t.PreBoilGravitySg)}")),
            new(notation.Text("kettle after the boil"), notation.Volume(t.PostBoilL)),
            new(notation.Text("into the fermenter"), notation.Volume(t.FermenterL)),
            new(notation.Text("original gravity"), notation.Gravity(t.OriginalGravitySg)),
            new(notation.Text("bitterness"), $"{notation.Number(t.BitternessIbu, "0")} IBU"),
            new(notation.Text("colour"), Colour(t, notation)),
            new(notation.Text("pitch at"), notation.Target(t.PitchC)),
            new(notation.Text("yeast"), YeastWords.Of(plan, notation)),
            .. WaterWords.Totals(plan, notation),
            new(notation.Text("the day takes"), Durations.Short(t.DayS)),
            new(notation.Text("hands are busy for"), Durations.Short(t.HandsS)),
            .. Times(plan, notation),
            new(notation.Text("volumes"), notation.Text($"here at {notation.Target(20)}; in the steps as they stand then, hot or cold")),
        ];
    }

    // a day that is to be done in the morning may begin the evening before: the date says so
    private static PlanTotal[] Times(Plan plan, Notation notation) => StartMs(plan) is { } start
        ?
        [
            new(notation.Text("begins"), notation.Date(start)),
            new(notation.Text("all clean"), notation.Date(start + (long)(plan.Totals.DayS * 1000))),
        ]
        : [new(notation.Text("times"), notation.Text("hours:minutes from the start"))];

    private static string Colour(Totals t, Notation notation)
    {
        string ebc = $"{notation.Number(t.ColourEbc, "0")} EBC", srm = $"{notation.Number(t.ColourSrm, "0")} SRM";
        return notation.Units == UnitSystem.Us ? $"{srm} ({ebc})" : $"{ebc} ({srm})";
    }

    /// <summary>The same at a glance.</summary>
    public static ImmutableArray<Line> Brief(Plan plan, Notation notation)
    {
        var t = plan.Totals;
        return
        [
            Line.Of(notation.Text($"{notation.Volume(t.FermenterL)} into the fermenter: gravity {notation.Gravity(t.OriginalGravitySg)}, {notation.Number(t.BitternessIbu, "0")} IBU, {notation.Number(t.ColourEbc, "0")} EBC")),
            Line.Of(notation.Text($"water: strike {notation.Volume(t.StrikeWaterL)}, sparge {notation.Volume(t.SpargeWaterL)}")),
            Line.Of(notation.Text($"kettle: {notation.Volume(t.PreBoilL)} before the boil, {notation.Volume(t.PostBoilL)} after")),
            Line.Of(notation.Text($"the day takes {Durations.Short(t.DayS)}, the hands are busy for {Durations.Short(t.HandsS)}")),
        ];
    }

    /// <summary>The run sheet in the order of time, to be worked from the top down; cut where another unit procedure goes on.</summary>
    public static ImmutableArray<PlanPart> Parts(Plan plan)
    {
        var parts = new List<PlanPart>();
        // steps that begin together stand as the sheet has them: an addition before the boil that follows it
        foreach (var step in plan.Steps.OrderBy(s => Math.Round(s.StartS, 3)))
        {
            if (parts is [.., var last] && last.Unit == step.Spec.Unit)
                parts[^1] = last with { Steps = last.Steps.Add(step) };
            else
                parts.Add(new(step.Spec.Unit, [step]));
        }
        return [.. parts];
    }

    /// <summary>Local clock time when the start is known, else time since the start, <c>h:mm</c>.</summary>
    public static string At(PlanStep step, Plan plan, Notation notation) => StartMs(plan) is { } start
        ? notation.Clock(start + (long)(step.StartS * 1000))
        : Since(step.StartS);

    /// <summary>How long a step takes; empty when something just goes in.</summary>
    public static string Takes(PlanStep step) => step.DurationS < 1 ? "" : Durations.Short(step.DurationS);

    /// <summary>The same between the minutes that are shown, so that beginning and length add up to the next beginning.</summary>
    public static string Takes(PlanStep step, Plan plan) => step.DurationS < 60
        ? Takes(step)
        : Durations.Short(60 * (Minute(step.EndS, plan) - Minute(step.StartS, plan)));

    /// <summary>The minute in which a second of the day is shown.</summary>
    private static double Minute(double seconds, Plan plan) => Math.Floor(((StartMs(plan) ?? 0) % 60_000 / 60_000.0) + (seconds / 60) + 1e-6);

    private static Cautions Dangers(Plan plan) => plan.Steps.Aggregate(Cautions.None, (all, s) => all | s.Spec.Cautions);

    internal static string Since(double seconds)
    {
        var minutes = (long)Math.Floor((seconds / 60) + 1e-6);
        return $"{minutes / 60}:{minutes % 60:00}";
    }

    /// <summary>When the day begins, Unix ms; null: when the brewer does.</summary>
    public static long? StartMs(Plan plan) => plan.Choices switch
    {
        { Start: { } start } => start.ToUnixTimeMilliseconds(),
        { Finish: { } finish } => finish.ToUnixTimeMilliseconds() - (long)(plan.Totals.DayS * 1000),
        _ => null,
    };

    private static IEnumerable<Line> Part(PlanPart part, Plan plan, Notation notation, Func<PlanStep, string>? also)
    {
        yield return Line.Of("");
        yield return Line.Of(Names.Sentence(Names.Unit(part.Unit, notation)), Tone.Strong);
        foreach (var step in part.Steps)
        {
            var words = StepWords.Of(step, plan, notation);
            yield return new Line([
                new Span($"  {At(step, plan, notation),5}  ", Tone.Muted),
                new Span($"{Takes(step, plan),10}  ", Tone.Muted),
                new Span(words.Title)]);
            if (also?.Invoke(step) is { Length: > 0 } more)
                yield return Line.Of(Indent + more, Tone.Muted);
            foreach (var sentence in words.Hands)
                yield return Line.Of(Indent + sentence, Tone.Muted);
            if (step.Spec.Cautions != Cautions.None)
                yield return new Line([new Span(Indent + "! ", Tone.Warning), new Span(CautionWords.Short(step.Spec.Cautions, notation), Tone.Warning)]);
        }
    }

    private const string Indent = "                     ";
}
