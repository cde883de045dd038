using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Runs;

namespace BrewDeck.Deck.Probes;

/// <summary>
/// Takes a probe's value without a key where the brewer has allowed it: once for each reading that the step in hand expects, when the
/// value is fresh, has been quiet for a while and lies near what is expected. The record says that it was taken by rule; undo takes it
/// back for good.
/// </summary>
/// <param name="kinds">Kinds that may be taken so; empty: the rule sleeps.</param>
internal sealed class ProbeRule(Shell shell, ImmutableArray<ReadingKind> kinds)
{
    /// <summary>What stands for it in the record, after the value: the same in each language.</summary>
    private const string Mark = ", by rule";

    /// <summary>A value is quiet when it has been heard for so long without noise; common practice, no source.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(20);

    private readonly HashSet<(int Batch, string Step, ReadingKind Kind, string Vessel)> _taken = [];

    /// <summary>Looks once; nothing is taken while something is asked or typed.</summary>
    public void Look(DateTimeOffset now)
    {
        if (kinds.IsEmpty || shell.Top is not DeckPage { Where: var where } page || where != page.Context || shell.Day is not { Over: false } day)
            return;
        var moment = page.Moment(now);
        if (moment.Rest.Where(moment.IsRunning).SelectMany(s => Due(s, moment, day.Number)).FirstOrDefault() is not { } due)
            return;
        _taken.Add((day.Number, due.Step, due.Reading.Kind, due.Reading.Vessel));
        new Acts(shell, day).Do(new RunCommand.Take(due.Reading), now);
        if (shell.Notice is { } notice)
            shell.Say(shell.Notation.Text("By rule from the probe: ") + notice, notice.Spans[0].Tone);

        IEnumerable<ByRule> Due(PlanStep step, DeckMoment at, int batch) =>
            from expected in at.Unread(step)
            where kinds.Contains(expected.Kind) && !_taken.Contains((batch, step.Spec.Id, expected.Kind, expected.Vessel))
            let offer = shell.Probe.Offer(expected.Kind, expected.Vessel, page.Believes)
            where offer is { State: ProbeState.Fresh } && offer.HeardFor >= Quiet && Math.Abs(offer.Reading.Value - expected.Value) <= Near(expected.Kind, expected.Value)
            select new ByRule(step.Spec.Id, offer.Reading with { AsTyped = offer.Reading.AsTyped + Mark });
    }

    /// <summary>Whether a reading in a record was taken by the rule.</summary>
    public static bool Took(Reading reading) => reading.AsTyped.EndsWith(Mark, StringComparison.Ordinal);

    private sealed record ByRule(string Step, Reading Reading);

    /// <summary>Farther than this the brewer should look; common practice, no source.</summary>
    private static double Near(ReadingKind kind, double expected) => kind switch
    {
        ReadingKind.Temperature => 2,
        ReadingKind.Volume => Math.Max(1, 0.05 * expected),
        ReadingKind.Gravity => 0.004,
        ReadingKind.Ph => 0.2,
        _ => 0,
    };
}
