using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>What became of a command on its way to the disk.</summary>
/// <param name="Trouble">Why the store did not take it; null: no trouble.</param>
internal sealed record ActOutcome(Decision Decision, string? Trouble = null);

/// <summary>The open batch: its events as they are on disk, and the state they fold to.</summary>
internal sealed class BrewDay
{
    private readonly IBatchStore _store;
    private readonly List<RunEvent> _events;
    private Forecast? _forecast;
    private long _forecastMs;

    private BrewDay(IBatchStore store, int number, IEnumerable<RunEvent> events)
    {
        _store = store;
        Number = number;
        _events = [.. events];
        State = RunFold.Of(_events);
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

    public Forecast Forecast(DateTimeOffset now)
    {
        if (_forecast is null || _forecastMs != Ms(now))
            (_forecast, _forecastMs) = (Forecasts.At(State, Ms(now)), Ms(now));
        return _forecast;
    }

    public RunFocus Focus(DateTimeOffset now) => RunFocus.Of(State, Forecast(now), Ms(now));

    public DeckMoment Moment(DateTimeOffset now, Notation notation) =>
        new(State, Forecast(now), Focus(now), Events, Ms(now), notation);

    public ImmutableArray<Remedy> Remedies(DateTimeOffset now) => Core.Running.Remedies.For(State, Ms(now));

    /// <summary>Decides, writes each event to disk, and only then folds it.</summary>
    public ActOutcome Do(RunCommand command, DateTimeOffset now)
    {
        var decision = RunDesk.Decide(State, command, Ms(now));
        if (decision is not Decision.Accepted accepted)
            return new ActOutcome(decision);
        try
        {
            foreach (var happened in accepted.Events)
            {
                _store.Append(Number, happened);
                Happened(happened);
            }
            return new ActOutcome(decision);
        }
        catch (LogbookException trouble)
        {
            return new ActOutcome(decision, trouble.Message);
        }
    }

    private void Happened(RunEvent happened)
    {
        _events.Add(happened);
        State = happened is Undone ? RunFold.Of(_events) : RunFold.Then(State, happened);
        _forecast = null;
    }
}
