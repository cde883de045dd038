using System.Collections.Immutable;
using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Terminal;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A trainee at the keys of the real rehearsal: real deck, real journal, the simulator's plant, and a clock that moves when told to.</summary>
internal sealed class AtTheRehearsal : IDisposable
{
    private const int MostKeys = 300;

    /// <summary>No whole millisecond: clocks do not keep to them.</summary>
    private static readonly DateTimeOffset Morning = new DateTimeOffset(2026, 5, 30, 8, 0, 0, TimeSpan.Zero).AddTicks(1234);

    private readonly SteppedTime _time = new(Morning);
    private readonly MemoryDisk _disk = new();
    private readonly TempFolder _own = new();
    private readonly HashSet<string> _read = [];
    private Bench _bench = null!;
    private readonly UnitSystem _units;
    private RehearsalDeck _deck = null!;

    public AtTheRehearsal(params ImmutableArray<Mishap> mishaps) : this(UnitSystem.Metric, mishaps)
    {
    }

    public AtTheRehearsal(UnitSystem units, params ImmutableArray<Mishap> mishaps)
    {
        _units = units;
        Open();
        var profiles = ProfileFolder.BesideProgram(_own.Path);
        var plan = Assert.IsType<PlanResult.Drawn>(new DayOptions().Draw(profiles)).Plan;
        Assert.True(_deck.Begin(plan, new RehearsalCard(4, BrewDeck.Simulator.Mishaps.MishapPlaces.Placed(plan, mishaps))));
        Strike("o");
    }

    /// <summary>An exercise; what is remembered of it goes into a folder.</summary>
    public AtTheRehearsal(int exercise, string folder)
    {
        Open(new ExerciseBook(folder));
        var (plan, card) = ExerciseDay.Draw(exercise, ProfileFolder.BesideProgram(_own.Path));
        Assert.True(_deck.Begin(plan, card));
        WaitOnTheWall(1);
    }

    public RunState State => _deck.Session.State!;

    public DeckScreen Deck => Assert.IsType<DeckScreen>(_deck.Session.Screen);

    public Screen Screen => _deck.Session.Screen;

    /// <summary>What is really in the fermenter.</summary>
    public (double FermenterL, double GravitySg) Truth => (_deck.Live.Plant!.Fermenter.ColdL, _deck.Live.Plant.Fermenter.GravitySg);

    public string Text => _bench.Text();

    public bool Ended => _deck.Live.Ended;

    public RehearsalClock Clock => _deck.Clock;

    public IReadOnlyList<RunEvent> Events
    {
        get
        {
            using var journal = Journal.Open(_disk, Workplace.StatusOf);
            return journal.Read(1);
        }
    }

    public string Signs => string.Join("\n", Deck.Plant.Select(l => l.ToString()));

    public AtTheRehearsal Strike(string keys)
    {
        _time.Pass(TimeSpan.FromSeconds(2));
        _bench.Type(keys);
        return this;
    }

    public AtTheRehearsal Line(string text)
    {
        foreach (var key in text)
            _bench.Type(key.ToString());
        return Strike(AtTheKeys.Enter);
    }

    public AtTheRehearsal WaitOnTheWall(double seconds)
    {
        _time.Pass(TimeSpan.FromSeconds(seconds));
        _bench.Step();
        return this;
    }

    /// <summary>By leaps, doing what is due and typing what the dials show, until something shows itself.</summary>
    /// <summary>A question that stands then, which the big key had brought up, is answered first.</summary>
    public AtTheRehearsal UntilItShows() => Until(() => Ended || (Clock.Signs.Count > 0 && Screen.Overlay is null));

    public AtTheRehearsal Until(StepKind kind, RunStatus status) => Until(() => State.Steps.Any(s => s.Spec.Kind == kind && s.Status == status));

    public AtTheRehearsal Until(Func<bool> reached)
    {
        for (var i = 0; i < MostKeys && !reached(); i++)
            GoOn(reached);
        Assert.True(reached(), Text);
        return this;
    }

    /// <summary>The program is started again on what is on disk.</summary>
    public AtTheRehearsal StartAgain()
    {
        _bench.Dispose();
        Open();
        return this;
    }

    public void Dispose()
    {
        _bench.Dispose();
        _own.Dispose();
    }

    private void GoOn(Func<bool> reached)
    {
        Strike("j");
        if (reached() || _deck.Session.Focus is not { Act: FocusAct.Start or FocusAct.Finish or FocusAct.Resume } focus)
            return;
        if (focus.Act == FocusAct.Finish)
            TypeWhatTheDialShows(focus.StepId);
        // a dial far below shows that it goes on
        if (!reached() && _deck.Session.Focus is not { Act: FocusAct.Wait })
            Strike(AtTheKeys.Space);
        // of a pump that stood still: all of it has come
        if (Screen.Overlay is ChoiceOverlay { Question: var asked } && asked.StartsWith("The pump did not run", StringComparison.Ordinal))
            Strike(AtTheKeys.Down).Strike(AtTheKeys.Enter);
    }

    private void TypeWhatTheDialShows(string stepId)
    {
        var step = _deck.Session.Forecast!.Rest.FirstOrDefault(s => s.Spec.Id == stepId);
        if (step is null || step.Expected.IsEmpty || !_read.Add(stepId))
            return;
        var shown = Clock.Look(step.Expected[0].Kind, step.Expected[0].Vessel);
        Assert.NotNull(shown);
        Line(BrewerByKeys.Decimal(step.Expected[0].Kind, shown.Value) + Unit(step.Expected[0].Kind));
        // the dial of a day gone wrong is asked about: it shows what it shows
        if (Screen.Overlay is ChoiceOverlay { Question: var asked } && asked.EndsWith("does it still run off?", StringComparison.Ordinal))
            Strike(AtTheKeys.Enter);
        if (Screen.Overlay is ChoiceOverlay)
            Strike(AtTheKeys.Down).Strike(AtTheKeys.Enter);
    }

    /// <summary>The dials are asked in the canonical unit, which is no American's.</summary>
    private string Unit(ReadingKind kind) => _units == UnitSystem.Metric ? "" : kind switch
    {
        ReadingKind.Temperature => "c",
        ReadingKind.Volume => "l",
        _ => "",
    };

    private void Open(IExerciseBook? book = null)
    {
        _deck = RehearsalDeck.Open(
            Journal.Open(_disk, Workplace.StatusOf), ProfileFolder.BesideProgram(_own.Path), new SessionSettings { ProgramVersion = "test", Units = _units }, _time.GetUtcNow(), 60, book);
        _bench = new Bench(_deck.Live, _time);
    }
}
