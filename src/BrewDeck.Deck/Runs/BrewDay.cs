using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>What became of a command on its way to the disk.</summary>
/// <param name="Trouble">Why the store did not take it; null: no trouble.</param>
internal sealed record ActOutcome(Decision Decision, string? Trouble = null);

/// <summary>The open batch: its events as they are on disk, and the state they fold to.</summary>
internal sealed class BrewDay
{
    /// <summary>How long a forecast is good for, ms: what is counted down hangs on ends that it names, and those stay where they are.</summary>
    private const long ForecastMs = 5000;

    private readonly IBatchStore _store;
    private readonly List<RunEvent> _events;
    private readonly DueSince _due;
    private Forecast? _watched;

    private BrewDay(IBatchStore store, int number, IEnumerable<RunEvent> events)
    {
        _store = store;
        Number = number;
        _events = [.. events];
        State = RunFold.Of(_events);
        _due = new DueSince(_events);
    }

    public int Number { get; }

    public IReadOnlyList<RunEvent> Events => _events;

    public RunState State { get; private set; }

    /// <summary>As it was drawn; there always is one, see <see cref="GoOn"/>.</summary>
    public Plan Plan => State.Plan!;

    public bool Over => State.Status is RunStatus.Complete or RunStatus.Aborted;

    public static BrewDay Open(IBatchStore store, BatchOpened opened) => new(store, store.Open(opened), [opened]);

    /// <summary>Null when the batch holds nothing that could be gone on with.</summary>
    public static BrewDay? GoOn(IBatchStore store, int number)
    {
        var day = new BrewDay(store, number, store.Read(number));
        return day.State.Plan is null ? null : day;
    }

    /// <summary>Unix ms; never before the last event, even when the clock was set back.</summary>
    public long Ms(DateTimeOffset now) => Math.Max(now.ToUnixTimeMilliseconds(), _events[^1].AtMs);

    /// <summary>
    /// As of the five seconds that have begun, the last event, or the last end of a step: ticks and keys share it, for folding the rest of the day and
    /// watching its limits is a fifth of what an idle deck costs (0.159 % of a processor with one a second, 0.127 so). What is decided and recorded (<see cref="Do"/>) is reckoned to the millisecond.
    /// </summary>
    public Forecast Forecast(DateTimeOffset now)
    {
        var at = Math.Max(Ms(now) / ForecastMs * ForecastMs, _events[^1].AtMs);
        var known = Forecasts.At(State, at);
        var ended = at;
        foreach (var step in known.Going)
        {
            if (State.MsAt(step.EndS, at) is var ms && ms <= Ms(now))
                ended = Math.Max(ended, ms);
        }
        return ended > at ? Forecasts.At(State, ended) : known;
    }

    public RunFocus Focus(DateTimeOffset now) => _due.Of(RunFocus.Of(State, Forecast(now), Ms(now)), Ms(now));

    public DeckMoment Moment(DateTimeOffset now, Notation notation) =>
        new(State, Forecast(now), Focus(now), Events, Ms(now), notation);

    public ImmutableArray<Remedy> Remedies(DateTimeOffset now) => Core.Running.Remedies.For(State, Ms(now));

    public ImmutableArray<Remedy> RemediesAsked(DateTimeOffset now) => Core.Running.Remedies.Asked(State, Ms(now));

    /// <summary>What a command would make happen, and nothing happens.</summary>
    public Decision Look(RunCommand command, DateTimeOffset now) => RunDesk.Decide(State, command, Ms(now));

    /// <summary>Decides, writes each event to disk, and only then folds it.</summary>
    public ActOutcome Do(RunCommand command, DateTimeOffset now)
    {
        var decision = RunDesk.Decide(State, command, Ms(now));
        return decision is Decision.Accepted accepted ? new ActOutcome(decision, Keep(accepted.Events)) : new ActOutcome(decision);
    }

    /// <summary>Brings the record of alarms up to now; once for each <see cref="Forecast"/>.</summary>
    /// <returns>Why that could not be written; null: no trouble.</returns>
    public string? WatchAlarms(DateTimeOffset now)
    {
        if (Over || ReferenceEquals(_watched, Forecast(now)))
            return null;
        var forecast = _watched = Forecast(now);
        return Keep(AlarmDesk.Watch(State, forecast, Focus(now), Ms(now)));
    }

    private string? Keep(ImmutableArray<RunEvent> events)
    {
        try
        {
            foreach (var happened in events)
            {
                _store.Append(Number, happened);
                Happened(happened);
            }
            return null;
        }
        catch (LogbookException trouble)
        {
            return trouble.Message;
        }
    }

    private void Happened(RunEvent happened)
    {
        _events.Add(happened);
        State = happened is Undone ? RunFold.Of(_events) : RunFold.Then(State, happened);
        _due.Happened(happened, State);
    }
}
