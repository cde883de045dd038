using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What the pages share: the ports, the stack of pages, the open batch, and the line that says what just happened.</summary>
internal sealed class Shell(SessionPorts ports, SessionSettings settings)
{
    private readonly Stack<Page> _pages = new();
    private readonly Dictionary<(string House, string Recipe), DayChoices> _choices = [];
    private readonly Dictionary<string, DayChoices> _places = [];
    private int _noticesSaid;

    public SessionPorts Ports => ports;

    public Notation Notation { get; } = new(settings.Units, settings.Zone) { Tongue = settings.Tongue };

    public Typed Typed => field ??= new(Notation);

    public StrikeGuard Guard { get; } = new(settings.DoubleStrike, settings.LeaveAlone);

    public ProbeBoard Probe { get; } = new();

    public WipeLock WipeLock => field ??= new(Notation.Text("dry"));

    public Page Top => _pages.Peek();

    public BrewDay? Day { get; private set; }

    public Line? Notice { get; set; }

    public int Columns { get; set; } = 80;

    public int Rows { get; set; } = 24;

    public bool Ended { get; set; }

    /// <summary>How many profiles were written: a list of them that is older is read anew.</summary>
    public int ProfilesWritten { get; set; }

    /// <summary>Number of the exercise that this deck is left for; null: none.</summary>
    public int? Exercise { get; set; }

    /// <summary>The deck is left for the rehearsal that was broken off.</summary>
    public bool LeftForRehearsal { get; set; }

    /// <summary>Time that hands keep to: the wall's, where the day has another.</summary>
    public DateTimeOffset Wall(DateTimeOffset now) => ports.Rehearsal?.Wall ?? now;

    /// <summary>Seconds of the day in one second of the wall; 0 while it stands still.</summary>
    public double Pace => ports.Rehearsal is { } r ? (r.Paused ? 0 : Math.Max(1, r.Speed)) : 1;

    public void Push(Page page) => _pages.Push(page);

    public void Pop()
    {
        if (_pages.Count > 1)
            _pages.Pop();
    }

    /// <summary>Back to the opening screen.</summary>
    public void Home()
    {
        while (_pages.Count > 1)
            _pages.Pop();
    }

    /// <summary>
    /// The day's choices as they were left; leaving the page before the batch is opened loses none. Tap, room, sack and height are the
    /// brewhouse's, whatever is brewed there.
    /// </summary>
    public DayChoices ChoicesFor(Brewhouse house, Recipe recipe)
    {
        var own = _choices.GetValueOrDefault((house.Name, recipe.Name)) ?? new DayChoices();
        return _places.GetValueOrDefault(house.Name) is { } at
            ? own with { SourceWaterC = at.SourceWaterC, AmbientC = at.AmbientC, GrainC = at.GrainC, AltitudeM = at.AltitudeM }
            : own;
    }

    public void KeepChoices(Brewhouse house, Recipe recipe, DayChoices choices) =>
        _choices[(house.Name, recipe.Name)] = _places[house.Name] = choices;

    public void Say(string text, Tone tone = Tone.Normal) => Notice = Line.Of(text, tone);

    /// <summary>Passes on what the store has to say since the last time.</summary>
    public void SayNotices()
    {
        var fresh = ports.Store.Notices.Skip(_noticesSaid).ToList();
        if (fresh.Count == 0)
            return;
        _noticesSaid += fresh.Count;
        Say(Notation.Text("Logbook: ") + string.Join("; ", fresh) + ".", Tone.Warning);
    }

    /// <summary>Runs what may meet trouble with the store or a file, and says so.</summary>
    public bool Try(Action act)
    {
        try
        {
            act();
            return true;
        }
        catch (Exception trouble) when (trouble is LogbookException or ProfileException)
        {
            Say(trouble.Message, Tone.Alarm);
            return false;
        }
    }

    /// <summary>Opens a batch and goes to the deck.</summary>
    public bool Begin(Plan plan, DateTimeOffset now)
    {
        if (Day is { Over: false } open)
        {
            Say(Notation.Text($"Batch {open.Number} still runs: finish it or give it up first."), Tone.Warning);
            return false;
        }
        var opened = new BatchOpened(now.ToUnixTimeMilliseconds(), plan, settings.ProgramVersion, ports.Rehearsal is not null)
        {
            Card = ports.Rehearsal?.Card,
            Brewer = settings.Brewer,
        };
        return Try(() =>
        {
            Enter(BrewDay.Open(ports.Store, opened));
            // its first figures are not the plan's: without a word that looks like a mistake
            Say(Notation.Text("The outlook is what such days usually give, a little off plan."));
            _choices.Clear();
            if (Exercises.Find(opened.Card?.Exercise) is { } exercise)
                Push(new ExercisePage(this, exercise));
        });
    }

    /// <summary>Goes on with a batch that is on disk.</summary>
    public bool GoOn(int batch)
    {
        if (Day?.Number == batch)
            return Enter(Day);
        if (Day is { Over: false } open)
        {
            Say(Notation.Text($"Batch {open.Number} still runs: finish it or give it up first."), Tone.Warning);
            return false;
        }
        return Try(() =>
        {
            if (BrewDay.GoOn(ports.Store, batch) is not { } day)
                Say(Notation.Text($"Batch {batch} holds no plan: it cannot go on."), Tone.Warning);
            else
                Enter(day);
        });
    }

    /// <summary>At the start: an open batch whose last act is recent is gone on with at once.</summary>
    public void Recover(DateTimeOffset now) => Try(() =>
    {
        if (OpenBatch(ports.Rehearsal is not null) is not { } head || BrewDay.GoOn(ports.Store, head.Number) is not { Over: false } day)
            return;
        Day = day;
        if (now.ToUnixTimeMilliseconds() - day.Events[^1].AtMs <= settings.Recent.TotalMilliseconds)
            Enter(day);
        // the speed is not in the record: slowly, and whose hands do the work must be known before anything is done
        if (ports.Rehearsal is null)
        {
            SayTakenUp(day, now);
            return;
        }
        ports.Rehearsal.Speed = 1;
        Say(settings.Unheeded.IsDefaultOrEmpty
            ? Notation.Text($"Taken up again: {RehearsalWords.Of(ports.Rehearsal, Notation)}. Key o changes whose hands work, + and - the speed.")
            : Notation.Text($"Batch {day.Number} is taken up again ({RehearsalWords.Of(ports.Rehearsal, Notation)}). This does not count: {string.Join(", ", settings.Unheeded)}. For a new one finish it, or give it up (x)."), Tone.Warning);
    });

    /// <summary>Whoever starts the program again expects no running deck: the first Enter may be meant for a menu, and nobody has watched the heat.</summary>
    private void SayTakenUp(BrewDay day, DateTimeOffset now)
    {
        var sinceS = Math.Max(0, (now.ToUnixTimeMilliseconds() - day.Events[^1].AtMs) / 1000.0);
        Say(day.State.DayStartMs is null
            ? Notation.Text($"Batch {day.Number} is taken up again; its last entry is {Durations.Words(sinceS, Notation)} old.")
            : Notation.Text($"Batch {day.Number} is taken up again; its last entry is {Durations.Words(sinceS, Notation)} old. Is the heat as the gauges say, and covered?"), Tone.Warning);
        Guard.LeaveAlone(Wall(now));
    }

    /// <summary>A rehearsal never takes up a real batch, nor a brew day a rehearsed one.</summary>
    public BatchHead? OpenBatch(bool rehearsed) => ports.Store.List().FirstOrDefault(
        b => b.Rehearsed == rehearsed && b.Status is not (RunStatus.Complete or RunStatus.Aborted));

    private bool Enter(BrewDay day)
    {
        Day = day;
        Home();
        Push(new DeckPage(this, day));
        return true;
    }
}
