using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>The day in the middle of its rest: 20 minutes in, the sparge liquor heating by itself.</summary>
internal static class Moments
{
    public const double RestS = 20 * 60;

    public static DeckMoment Resting(double intoRestS, FocusAct act = FocusAct.Wait) => new(
        State,
        new Forecast(Quayside.Plant, [Quayside.HeatSparge, Quayside.Rest, Quayside.Vorlauf, Quayside.Lauter, Quayside.Boil], () => Outlook(1.0484), Quayside.Vorlauf.StartS),
        new RunFocus(act, "mash.rest-1", At(Quayside.Rest.EndS)),
        Events,
        At(RestS + intoRestS),
        Notation.Metric);

    public static RunState State { get; } = new()
    {
        Plan = Quayside.Plan,
        Status = RunStatus.Running,
        DayStartMs = Quayside.StartMs,
        Steps =
        [
            new RunStep(Quayside.Check.Spec, RunStatus.Complete, At(0), At(600)),
            new RunStep(Quayside.DoughIn.Spec, RunStatus.Complete, At(600), At(1200)),
            new RunStep(Quayside.HeatSparge.Spec, RunStatus.Running, At(1200)),
            new RunStep(Quayside.Rest.Spec, RunStatus.Running, At(1200)),
            new RunStep(Quayside.Vorlauf.Spec, RunStatus.Idle),
            new RunStep(Quayside.Lauter.Spec, RunStatus.Idle),
            new RunStep(Quayside.Boil.Spec, RunStatus.Idle),
        ],
    };

    public static ImmutableArray<RunEvent> Events { get; } =
    [
        new BatchOpened(At(0), Quayside.Plan, "0.1.0", false),
        new StepStarted(At(0), "setup.check"),
        new StepFinished(At(600), "setup.check"),
        new ReadingTaken(At(1300), new Reading(ReadingKind.Temperature, "tun", 65.4, "65.4"), [new Shift("original_gravity_sg", 1.0484, 1.0472), new Shift("finish_ms", At(11400), At(12120))]),
        new Undone(At(1310), 3),
    ];

    public static Outlook Outlook(double sg) => new(
        new(47.5), new(1.043), new(44), new(40.2, 39.1, 41.0), new(sg, sg - 0.002, sg + 0.002), new(31.6), new(22), new(18), new(At(190 * 60)));

    public static long At(double dayS) => Quayside.StartMs + (long)(dayS * 1000);
}
