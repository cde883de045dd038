using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Mishaps;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>A whole day without a screen, as fast as it goes.</summary>
public sealed class RehearsalRun
{
    /// <summary>A day that is not over by then is aborted; h.</summary>
    private const double LongestH = 36;

    /// <summary>More commands than any day needs: a brewer who goes round in circles is stopped.</summary>
    private const int MostCommands = 2_000;

    private readonly IRunBook _book;

    private readonly RehearsalPlayer _player;

    private readonly ImmutableArray<RehearsalOutlook>.Builder _outlooks = ImmutableArray.CreateBuilder<RehearsalOutlook>();

    private RehearsalRun(IRunBook book, RehearsalPlayer player) => (_book, _player) = (book, player);

    /// <param name="book">With the batch opened and nothing started.</param>
    /// <param name="startMs">Unix ms.</param>
    /// <param name="manner">How the stand-in brewer meets what goes wrong; null: as practised brewers do.</param>
    /// <param name="mishaps">What goes wrong.</param>
    public static RehearsalResult Of(
        HiddenTruth truth, IRunBook book, long startMs, Manner? manner = null, ImmutableArray<Mishap> mishaps = default) => new RehearsalRun(
            book,
            new RehearsalPlayer(truth, startMs, 1, mishaps.IsDefault ? [] : MishapPlaces.Placed(book.State.Plan!, mishaps), manner)).Play(truth.Seed);

    /// <summary>The rest of a day that has been played up to some moment.</summary>
    public static RehearsalResult Of(IRunBook book, RehearsalPlayer player) => new RehearsalRun(book, player).Play(player.Plant.Truth.Seed);

    /// <summary>In memory, the truth drawn from the seed.</summary>
    public static RehearsalResult Of(Plan plan, int seed, long startMs) => Of(
        HiddenTruth.Draw(plan.Brewhouse, plan.Choices, seed),
        new PaperBook(new BatchOpened(startMs, plan, "", Rehearsed: true)),
        startMs);

    private RehearsalResult Play(int seed)
    {
        var endMs = _player.StartMs + (long)(LongestH * 3_600_000);
        Note("start");
        for (var i = 0; i < MostCommands && !Over; i++)
        {
            if (_player.Next(_book.State, endMs) is not { } command)
                break;
            Do(command);
        }
        if (!Over)
            Do(new RunCommand.Abort(RunAborted.OutOfTime));
        return Result(seed);
    }

    private bool Over => _book.State.Status is RunStatus.Complete or RunStatus.Aborted;

    private void Do(RunCommand command)
    {
        var decision = _book.Submit(command, _player.NowMs);
        _player.Answered(command, decision);
        if (decision is not Decision.Accepted accepted)
            return;
        _player.Happened(accepted.Events, _book.State);
        foreach (var started in accepted.Events.OfType<StepStarted>())
            Mark(started.StepId);
    }

    /// <summary>The outlook when the readings of a stage are in: as the next stage begins.</summary>
    private void Mark(string stepId)
    {
        var at = _book.State.Step(stepId)?.Spec.Kind switch
        {
            StepKind.Vorlauf => "after_mash",
            StepKind.HeatToBoil => "pre_boil",
            StepKind.Whirlpool => "end_of_boil",
            _ => "",
        };
        if (at.Length > 0 && _outlooks.All(o => o.At != at))
            Note(at);
    }

    private void Note(string at) =>
        _outlooks.Add(new RehearsalOutlook(at, Forecasts.At(_book.State, _player.NowMs).Outlook, _book.State, _player.NowMs));

    private RehearsalResult Result(int seed)
    {
        var state = _book.State;
        var wort = _player.Plant.Fermenter;
        var pitched = state.Steps.Any(s => s.Spec.Kind == StepKind.Pitch && s.Status == RunStatus.Complete);
        var seconds = (_player.NowMs - _player.StartMs) / 1000.0;
        return new RehearsalResult(
            seed,
            pitched ? RehearsalResult.Pitched : RehearsalResult.Aborted,
            seconds,
            state.Count,
            new RehearsalTruth(wort.GravitySg, wort.ColdL, _player.Plant.BitternessIbu, wort.TempC, seconds),
            _outlooks.ToImmutable(),
            state)
        {
            Mishaps = MishapCourse.Of(_player, state),
        };
    }
}
