using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Charts;

/// <summary>Each step as it was planned, against how it was done, runs or is expected.</summary>
/// <param name="forecast">Null for a day that is looked back at.</param>
/// <param name="dayStartMs">Unix ms of second 0 of the day.</param>
public sealed class DayTimetable(Plan plan, RunState state, Forecast? forecast, long dayStartMs, Notation notation)
{
    /// <summary>Less than this is nobody's delay. Seconds.</summary>
    private const double OnTimeS = 60;

    /// <summary>In the order of the day as it was planned; what was put in stands where it was put.</summary>
    public ImmutableArray<TimetableRow> Rows() => [.. state.Steps.Select(Row)];

    private TimetableRow Row(RunStep run)
    {
        var planned = plan.Step(run.Spec.Id);
        var ahead = run.Open ? forecast?.Step(run.Spec.Id) : null;
        return new(
            StepTitles.Of(run, plan, notation),
            planned is null ? null : new TimeSpanS(planned.StartS, planned.EndS),
            Really(run, ahead),
            Late(run, planned, ahead),
            Tone(run));
    }

    private TimeSpanS? Really(RunStep run, PlanStep? ahead) =>
        (Since(run.StartedMs) ?? ahead?.StartS, Since(run.EndedMs) ?? ahead?.EndS) is ({ } from, { } to) && run.Status != RunStatus.Skipped
            ? new TimeSpanS(from, Math.Max(from, to))
            : null;

    /// <summary>How much later than planned it ended or is expected to end.</summary>
    private string Late(RunStep run, PlanStep? planned, PlanStep? ahead)
    {
        if (run.Status == RunStatus.Skipped)
            return notation.Text("skipped");
        if (planned is null)
            return notation.Text("put in");
        if (Really(run, ahead)?.ToS - planned.EndS is not { } lateS)
            return "";
        return Math.Abs(lateS) < OnTimeS ? "" : (lateS > 0 ? "+" : "-") + Durations.Short(Math.Abs(lateS));
    }

    private double? Since(long? ms) => ms is null ? null : (ms - dayStartMs) / 1000.0;

    private static Tone Tone(RunStep run) => run.Status switch
    {
        RunStatus.Running => Screens.Tone.Strong,
        RunStatus.Held or RunStatus.Skipped => Screens.Tone.Warning,
        RunStatus.Idle => Screens.Tone.Muted,
        _ => Screens.Tone.Normal,
    };
}
