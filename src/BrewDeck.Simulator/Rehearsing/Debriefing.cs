using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Mishaps;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>
/// Looks back at a rehearsed day by brewing it again from its record: the same seed, the same mishaps, the same acts. What a choice cost is
/// found by letting a brewer who meets mishaps as practised, but mends nothing else, go on from it, and from each other answer given as soon as the mishap could be seen.
/// </summary>
public sealed class Debriefing
{
    private readonly IReadOnlyList<RunEvent> _events;

    private readonly BatchOpened _opened;

    private readonly RehearsalCard _card;

    private readonly DayResult _plan;

    private Debriefing(IReadOnlyList<RunEvent> events, BatchOpened opened, RehearsalCard card)
    {
        (_events, _opened, _card) = (events, opened, card);
        var totals = opened.Plan.Totals;
        _plan = new(totals.OriginalGravitySg, totals.FermenterL, totals.BitternessIbu, totals.PitchC, totals.DayS, 0, 0);
    }

    /// <param name="events">Of a batch, all of them.</param>
    /// <returns>Null when it was not rehearsed, or before rehearsals kept what they were dealt.</returns>
    public static Debrief? Of(IReadOnlyList<RunEvent> events) =>
        events.Count > 0 && events[0] is BatchOpened { Card: { } card } opened ? new Debriefing(events, opened, card).Look() : null;

    private Debrief Look()
    {
        var player = Player(Manner.Practised);
        var state = player.Replay(_events);
        return new Debrief(
            _card, IsPitched(state), _plan, Figures(player, state), [.. player.LiveMishaps.All.OrderBy(m => m.BeganS ?? double.PositiveInfinity).Select(m => Look(m, player, state))]);
    }

    private MishapDebrief Look(LiveMishap live, RehearsalPlayer player, RunState state)
    {
        double? At(double? plantS) => plantS is { } s ? state.SecondsAt(player.MsAt(s)) : null;
        ImmutableArray<TriedAnswer> tried = live.SeenS is { } seen
            ? [.. live.Answers.Select(a => GoOn(live.Mishap.Kind, a, player.MsAt(seen))).OrderBy(t => !t.Safe).ThenBy(t => t.Loss)]
            : [];
        return new MishapDebrief(
            live.Mishap, At(live.BeganS), At(live.SeenS), At(live.ActedS), tried.IsEmpty ? null : Chosen(live, player), tried);
    }

    private TriedAnswer Chosen(LiveMishap live, RehearsalPlayer player) => GoOn(
        live.Mishap.Kind, live.Answer ?? Answer.Leave, player.MsAt(live.ActedS is { } acted ? acted : live.SeenS!.Value) + (live.ActedS is null ? 0 : 1));

    /// <summary>The record before a moment, then a practised brewer who meets this mishap in this way.</summary>
    private TriedAnswer GoOn(MishapKind kind, Answer answer, long fromMs)
    {
        // remedies for later readings would hide what the choice did, but for a misread hydrometer they are what it does
        var player = Player(new Manner(Mends: kind == MishapKind.MisreadHydrometer) { Answers = ImmutableDictionary<MishapKind, Answer>.Empty.Add(kind, answer) });
        RunEvent[] before = [.. _events.TakeWhile((e, i) => i == 0 || e.AtMs < fromMs)];
        player.BrewerActs = false;
        player.Next(player.Replay(before), fromMs);
        player.BrewerActs = true;
        var book = new PaperBook(before);
        var pitched = RehearsalRun.Of(book, player).Ended == RehearsalResult.Pitched;
        var gives = Figures(player, book.State);
        return new TriedAnswer(answer, gives, DayLoss.Of(gives, _plan, pitched), Safety.Allows(kind, answer));
    }

    private RehearsalPlayer Player(Manner manner) => RehearsalPlayer.For(_opened.Plan, _card.Seed, _opened.AtMs, _card.Mishaps, manner);

    private static DayResult Figures(RehearsalPlayer player, RunState state)
    {
        var (plant, wort) = (player.Plant, player.Plant.Fermenter);
        return new(
            wort.GravitySg, wort.ColdL, plant.BitternessIbu, wort.TempC, state.SecondsAt(player.NowMs), player.MashOffK,
            Nature.Liquids.ColdL(plant.Ledger.SpiltWaterKg, plant.Ledger.SpiltExtractKg))
        {
            MashWorstK = player.MashWorstK,
            MashWorstAtS = player.MashWorstAtS is { } at ? state.SecondsAt(player.MsAt(at)) : null,
        };
    }

    private static bool IsPitched(RunState state) => state.Steps.Any(s => s.Spec.Kind == StepKind.Pitch && s.Status == RunStatus.Complete);
}
