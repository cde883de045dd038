using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Composing;

/// <summary>When the big key asks before it does what it says.</summary>
internal static class GoOnDoubts
{
    /// <summary>Hands that work against the clock may be done so much early without being asked, ms.</summary>
    private const long HandsMs = 60_000;

    /// <summary>Warmer than this above the plan the yeast is asked about first, K; common practice, no source.</summary>
    private const double TooWarmK = 2;

    /// <summary>No glass is read so wrong; common practice, no source.</summary>
    private const double Enough = 0.9;

    /// <summary>What a tap gives in less, s, nobody reads.</summary>
    private const double MomentS = 2;

    /// <summary>Handwork that takes at least so long, min, is asked about in its first moments, ms.</summary>
    private const double LongMin = 5, HardlyMs = 15_000;

    /// <summary>The last reading in the fermenter and what was planned, if it is too warm for the yeast that goes in now, °C.</summary>
    public static (double ReadC, double PlannedC)? TooWarm(PlanStep step, DeckMoment moment) =>
        step.Spec.Kind == StepKind.Pitch
        && moment.State.Readings.LastOrDefault(r => r.Reading is { Kind: ReadingKind.Temperature, Vessel: Places.Fermenter })?.Reading.Value is { } read
        && moment.Plan.Steps.LastOrDefault(s => s.Spec.Kind == StepKind.CastOut)?.Spec.TargetC is { } planned && read > planned + TooWarmK
            ? (read, planned)
            : null;

    /// <summary>
    /// Strike liquor of which more may still have to come: the level last read where it runs to, null where nobody has read how much came, and
    /// what should stand there in the end, litres. Null: nothing speaks against it.
    /// </summary>
    public static (double? ReadL, double WantedL)? Short(PlanStep step, DeckMoment moment, IRehearsalControls? rehearsal)
    {
        if (step.Spec.Kind != StepKind.TransferStrike || !PumpStood(step, moment, rehearsal))
            return null;
        var read = moment.State.Readings
            .LastOrDefault(r => r.AtMs >= moment.State.Step(step.Spec.Id)!.StartedMs && r.Reading.Is(ReadingKind.Volume, step.Spec.To))?.Reading.Value;
        var wanted = Contents.StandsL(step.After.Vessels[moment.State.Live!.Setting.IndexOf(step.Spec.To)]);
        return read is null || read < Enough * wanted ? (read, wanted) : null;
    }

    /// <summary>What comes of the day is known by nothing else, and a bed that has closed shows in nothing else.</summary>
    public static bool IsUnread(PlanStep step, DeckMoment moment) => step.Spec.Kind switch
    {
        StepKind.CastOut => moment.Unread(step).Count() == step.Expected.Length,
        StepKind.Lauter or StepKind.RunOff => moment.Unread(step).Any(e => e.Kind == ReadingKind.Volume),
        _ => false,
    };

    /// <summary>The hands can hardly be done yet, or a reading says that they are not.</summary>
    public static bool IsEarly(PlanStep step, DeckMoment moment) =>
        WorksAgainstTheClock(step, moment) || IsHardlyBegun(step, moment) || IsReadShort(step, moment);

    /// <summary>A pump that stood still or lost its prime moved less than the clock says. Of another sign, such as cold liquor, the pump knows nothing.</summary>
    private static bool PumpStood(PlanStep step, DeckMoment moment, IRehearsalControls? rehearsal) => moment.State.Step(step.Spec.Id) is { StartedMs: { } since } run
        && (run.HeldForMs > 0 || rehearsal?.Signs.Any(s => s.Kind == MishapKind.PumpLostPrime) == true
            || moment.Events.Any(e => e is HandsActed { Act: HandAct.PrimePump or HandAct.CarryByJug } && e.AtMs >= since));

    private static bool WorksAgainstTheClock(PlanStep step, DeckMoment moment) =>
        step.Spec.Kind is StepKind.Vorlauf or StepKind.BatchSparge or StepKind.SanitiseChiller && moment.Focus.DueMs > moment.NowMs + HandsMs;

    /// <summary>Handwork of minutes is not over in seconds: the key was struck once too often.</summary>
    private static bool IsHardlyBegun(PlanStep step, DeckMoment moment) => moment.State.Step(step.Spec.Id) is { StartedMs: { } since }
        && step.Spec.Kind.EndsBy() == EndsBy.Hands && step.Spec.Minutes is >= LongMin && moment.NowMs - since < HardlyMs;

    /// <summary>The level that was read in a fill says that some of it is still to come.</summary>
    private static bool IsReadShort(PlanStep step, DeckMoment moment) => step is { Spec.Kind: StepKind.Fill, DurationS: > MomentS } && moment.State.Step(step.Spec.Id) is { StartedMs: { } since }
        && moment.State.Readings.Any(r => r.AtMs >= since && r.Reading.Is(ReadingKind.Volume, step.Spec.Vessel));
}
