using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Core.Waters;
using CsCheck;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>Events of every kind with any text and any number in them.</summary>
internal static class AnyEvent
{
    private static readonly Gen<string> Text = Gen.String;
    private static readonly Gen<long> AtMs = Gen.Long;

    private static readonly Gen<ImmutableArray<Shift>> Shifts =
        Gen.Select(Text, Gen.Double, Gen.Double, (f, a, b) => new Shift(f, a, b)).Array[0, 4].Select(a => a.ToImmutableArray());

    private static readonly Gen<Reading> Readings = Gen.Select(
        Gen.Enum<ReadingKind>(), Text, Gen.Double, Text, Gen.Double.Nullable(),
        (kind, vessel, value, typed, atC) => new Reading(kind, vessel, value, typed) { AtC = atC });

    private static readonly Gen<Alarm> Alarms = Gen.Select(
        Gen.Enum<AlarmKind>(), Text, Gen.Double, Gen.Double, (kind, about, value, bound) => new Alarm(kind, about, value, bound));

    private static readonly Gen<StepSpec> Specs = Gen.Select(
        Text, Gen.Enum<StepKind>(), Gen.Enum<UnitProcedure>(), Gen.Double.Nullable(), Gen.Int[0, 255], Gen.Bool,
        (id, kind, unit, target, cautions, background) => new StepSpec
        {
            Id = id,
            Kind = kind,
            Unit = unit,
            TargetC = target,
            Cautions = (Cautions)cautions,
            Background = background,
            Charges = background ? [new Charge(ChargeKind.Other, id, 3.25, "kg", WaterKg: 0.1, ColourEbc: 8)] : [],
        });

    private static readonly Gen<Remedy> Remedies = Gen.Select(
        Gen.Enum<RemedyKind>(), Text, Gen.Double, Specs.Array[0, 3], Specs.Array[0, 3], Shifts, Gen.Bool,
        (kind, text, amount, insert, replace, gives, moves) => new Remedy(kind, text, amount, -amount, [.. insert], text, [.. replace], gives)
        {
            BoilsIn = moves ? text : null,
            Later = moves ? [.. replace.Select(s => new LaterStep(text, s))] : null,
            Ends = moves ? [text] : [],
            Never = moves ? StepKind.Boil : null,
            NoMashOut = moves,
            Ahead = moves,
        });

    private static readonly Gen<BatchOpened> Openings = Gen.Select(
        AtMs, Text, Gen.Int[1, 5], Gen.Double, Gen.Double.Nullable(), Gen.Bool,
        (at, text, steps, number, maybe, rehearsed) => new BatchOpened(at, Plan(text, steps, number, maybe), text, rehearsed)
        {
            Card = rehearsed ? new RehearsalCard(steps, [new(MishapKind.StuckBed, Severity.Severe, text), new(MishapKind.PowerCut, Severity.Mild)], steps) : null,
        });

    /// <summary>One generator for each kind.</summary>
    public static readonly ImmutableArray<Gen<RunEvent>> Kinds =
    [
        Openings.Select(e => (RunEvent)e),
        Gen.Select(AtMs, Text, (at, text) => (RunEvent)new StepStarted(at, text)),
        Gen.Select(AtMs, Text, Gen.Bool.Nullable(), (at, text, endsShort) => (RunEvent)new StepFinished(at, text) { Short = endsShort }),
        Gen.Select(AtMs, Text, Text, (at, text, why) => (RunEvent)new StepHeld(at, text, why)),
        Gen.Select(AtMs, Text, (at, text) => (RunEvent)new StepResumed(at, text)),
        Gen.Select(AtMs, Text, Text, (at, text, why) => (RunEvent)new StepSkipped(at, text, why)),
        Gen.Select(AtMs, Readings, Shifts, Gen.Double.Nullable(), (at, reading, moved, expected) => (RunEvent)new ReadingTaken(at, reading, moved) { Expected = expected }),
        Gen.Select(AtMs, Remedies, Shifts, (at, remedy, moved) => (RunEvent)new RemedyChosen(at, remedy, moved)),
        Gen.Select(AtMs, Gen.Enum<ChargeKind>(), Text, Gen.Double.Nullable(), Shifts, (at, kind, name, number, moved) => (RunEvent)new BagWeighed(at, new Bag(kind, name, number, null, number), moved)),
        Gen.Select(AtMs, Text, (at, text) => (RunEvent)new NoteWritten(at, text)),
        Gen.Select(AtMs, Gen.Enum<TroubleKind>(), Text, (at, kind, about) => (RunEvent)new TroubleReported(at, new Trouble(kind, about))),
        Gen.Select(AtMs, Gen.Enum<TroubleKind>(), Text, (at, kind, about) => (RunEvent)new TroubleCleared(at, new Trouble(kind, about))),
        Gen.Select(AtMs, Text, (at, text) => (RunEvent)new RunAborted(at, text)),
        Gen.Select(AtMs, Alarms, (at, alarm) => (RunEvent)new AlarmRaised(at, alarm)),
        Gen.Select(AtMs, Alarms, (at, alarm) => (RunEvent)new AlarmCleared(at, alarm.Kind, alarm.About)),
        Gen.Select(AtMs, Alarms, (at, alarm) => (RunEvent)new AlarmAcknowledged(at, alarm.Kind, alarm.About)),
        Gen.Select(AtMs, Alarms, AtMs, (at, alarm, until) => (RunEvent)new AlarmShelved(at, alarm.Kind, alarm.About, until)),
        Gen.Select(AtMs, Gen.Enum<HandAct>(), (at, act) => (RunEvent)new HandsActed(at, act)),
        Gen.Select(AtMs, Gen.Enum<RehearsalMark>(), (at, mark) => (RunEvent)new RehearsalMarked(at, mark)),
        Gen.Select(AtMs, Gen.Enum<FermenterFigure>(), Gen.Double, Gen.Double.Nullable(), Text, (at, figure, value, brix, typed) =>
            (RunEvent)new FermenterRead(at, new FermenterReading(figure, value, typed) { Brix = brix, TakenMs = brix is null ? null : at })),
        Gen.Select(AtMs, Text, Gen.Double, Text, (at, name, amount, unit) => (RunEvent)new AdditionMade(at, new DatedAddition(name, amount, unit))),
        Gen.Select(AtMs, Gen.Enum<DueKind>(), Text, Gen.Long, (at, kind, name, due) => (RunEvent)new DateSet(at, new DueItem(kind, name, due))),
        Gen.Select(AtMs, Gen.Enum<PackageKind>(), Gen.Double, Gen.Double.Nullable(), Gen.Enum<PrimingSugar>(), (at, kind, number, maybe, sugar) =>
            (RunEvent)new BeerPackaged(at, new Packaging(kind, number, -number, 0) { Sugar = maybe is null ? null : sugar, SugarG = maybe, PressurePa = maybe }) { LeftL = maybe }),
        Gen.Select(AtMs, at => (RunEvent)new PackagingEnded(at)),
        Gen.Select(AtMs, Text, Gen.Int.Nullable(), (at, text, rating) => (RunEvent)new BeerTasted(at, text, rating)),
        Gen.Select(AtMs, Gen.Int, (at, seq) => (RunEvent)new Undone(at, seq)),
    ];

    public static readonly Gen<RunEvent> All = Gen.OneOf([.. Kinds]);

    private static Plan Plan(string text, int steps, double number, double? maybe)
    {
        var plan = Days.PlanOf(text, steps);
        return plan with
        {
            Choices = plan.Choices with { BatchL = maybe, AltitudeM = number, Sparge = SpargeMethod.Batch, Water = Supply(text, number) },
            Start = plan.Start with { Vessels = [new VesselState(number, -number, 0, 1, HoldC: maybe ?? double.NaN, Open: number > 0)] },
            Totals = plan.Totals with { OriginalGravitySg = number },
            Water = maybe is null ? null : Treatment(text, number),
        };
    }

    private static WaterSupply Supply(string text, double number) => new()
    {
        Source = new(text, new(number, 1, 2, 3, 4, 5), 7.25),
        Salts = [BrewingSalt.EpsomSalt],
        Acid = new(AcidKind.Phosphoric, 0.1),
    };

    private static WaterTreatment Treatment(string text, double number) => new(
        Supply(text, number), new WaterTarget { Name = text, CalciumMgPerL = new(number, 60), MashPh = number }, 0.25,
        new(30, 7.5, [new(BrewingSalt.Gypsum, number)], new(AcidKind.Lactic, 0.8, 2.5), default), null, number);
}
