using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>The live run sheet: what is over with its real times, what is ahead with the expected ones.</summary>
public static class RunSheetLines
{
    /// <summary>In the order of time; what never began stands after what was before it in the plan.</summary>
    public static ImmutableArray<Line> Of(DeckMoment moment) =>
        [.. InOrder(moment).Select(s => One(s, moment))];

    private static IEnumerable<RunStep> InOrder(DeckMoment moment)
    {
        var lastMs = 0L;
        return moment.State.Steps.Select(s => (Step: s, AtMs: lastMs = StartMs(s, moment) ?? lastMs)).ToList().OrderBy(x => x.AtMs).Select(x => x.Step);
    }

    private static Line One(RunStep run, DeckMoment moment)
    {
        var current = run.Spec.Id == moment.Focus.StepId;
        return new Line([
            new Span(current ? "> " : "  ", Tone.Strong),
            new Span($"{Start(run, moment),5}  ", Tone.Muted),
            new Span($"{Length(run, moment),10}  ", Tone.Muted),
            new Span($"{Names.Status(run.Status, moment.Notation),-8} ", run.Status is RunStatus.Held or RunStatus.Skipped ? Tone.Warning : Tone.Muted),
            new Span(moment.Title(run.Spec.Id), current ? Tone.Strong : run.Open ? Tone.Normal : Tone.Muted)]);
    }

    private static string Start(RunStep run, DeckMoment moment) => StartMs(run, moment) is { } ms ? moment.Notation.Clock(ms) : "";

    /// <summary>When it began or is expected to; null: neither.</summary>
    private static long? StartMs(RunStep run, DeckMoment moment) =>
        run.StartedMs ?? (moment.Ahead(run.Spec.Id) is { } step ? moment.DayStartMs + (long)(step.StartS * 1000) : null);

    private static string Length(RunStep run, DeckMoment moment) => run switch
    {
        { StartedMs: { } from, EndedMs: { } to } => to - from < 1000 ? "" : Durations.Short((to - from) / 1000.0),
        { StartedMs: { } from } when moment.Ahead(run.Spec.Id) is { } step => Durations.Short(step.EndS - ((from - moment.DayStartMs) / 1000.0)),
        _ => moment.Ahead(run.Spec.Id) is { } ahead ? PlanLines.Takes(ahead) : "",
    };
}
