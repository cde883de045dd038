using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What the batches say about a brewhouse; each lesson is accepted by itself, or left.</summary>
internal sealed class LessonsPage : ListPage
{
    private readonly Dictionary<string, ImmutableArray<Shift>> _effects = [];
    private ProfileEntry _entry;
    private Brewhouse _house;
    private ImmutableArray<BatchTrace> _batches = [];
    private ImmutableArray<Lesson> _lessons = [];
    private bool _rehearsed;

    private LessonsPage(Shell shell, ProfileEntry entry, Brewhouse house)
        : base(shell)
    {
        (_entry, _house) = (entry, house);
        _rehearsed = shell.Ports.Rehearsal is not null;
        Read();
    }

    public override KeyContext Context => KeyContext.List | KeyContext.Lessons;

    protected override int Count => _lessons.Length;

    /// <summary>With one brewhouse there is nothing to choose.</summary>
    public static void Enter(Shell shell) => shell.Try(() =>
    {
        var entries = shell.Ports.Profiles.Brewhouses();
        if (entries.Count == 1)
            Enter(shell, entries[0]);
        else if (entries.Count == 0)
            shell.Say(shell.Notation.Text("There is no brewhouse file in the profiles folder."), Tone.Warning);
        else
            shell.Push(new LessonHousePage(shell, entries));
    });

    public static void Enter(Shell shell, ProfileEntry entry) =>
        shell.Try(() => shell.Push(new LessonsPage(shell, entry, shell.Ports.Profiles.Brewhouse(entry))));

    protected override void Choose(int row, DateTimeOffset now) => AskAccept(_lessons[row]);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Accept when Selected < Count:
                AskAccept(_lessons[Selected]);
                break;
            case Command.Rehearsed:
                _rehearsed = !_rehearsed;
                Read();
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"Lessons: {_house.Name}"),
        Counts.Batches(_batches.Length, Shell.Notation) + (_rehearsed ? Shell.Notation.Text(", rehearsed ones too") : ""),
        [new Column("", 0), new Column(Shell.Notation.Text("profile"), 12, Right: true), new Column(Shell.Notation.Text("really"), 12, Right: true), new Column("", 13)],
        [.. _lessons.Select(Row)],
        _lessons.IsEmpty ? -1 : Selected,
        _lessons.IsEmpty ? [] : LessonWords.Details(_lessons[Selected], Effect(_lessons[Selected]), Shell.Notation),
        KeyMap.Hints(Context, Shell.Notation));

    private Row Row(Lesson lesson) => new(
    [
        Names.Sentence(LessonWords.Name(lesson.Parameter, _house, Shell.Notation)),
        lesson.Parameter.With is null ? "" : LessonWords.Value(lesson.Parameter, lesson.Current, Shell.Notation),
        lesson.EnoughData ? LessonWords.Value(lesson.Parameter, lesson.Band.Mean, Shell.Notation) : "",
        LessonWords.Verdict(lesson, Shell.Notation),
    ]);

    private void Read() => Shell.Try(() =>
    {
        _batches = LessonBook.Of(Shell.Ports.Store, _house, _rehearsed);
        Learn();
    });

    private void Learn()
    {
        _effects.Clear();
        _lessons = Lessons.Of(_house, _batches);
    }

    private ImmutableArray<Shift> Effect(Lesson lesson)
    {
        if (_batches.IsEmpty || !lesson.CanBeAccepted)
            return [];
        if (!_effects.TryGetValue(lesson.Parameter.Id, out var effect))
            _effects[lesson.Parameter.Id] = effect = PlanEffect.Of(_house, lesson.AppliedTo(_house), _batches[^1].Plan.Recipe, _batches[^1].Plan.Choices);
        return effect;
    }

    // "leave it" lies under the key: a second knuckle changes nothing
    private void AskAccept(Lesson lesson)
    {
        if (!lesson.CanBeAccepted || Shell.Ports.Keeper is null)
        {
            Shell.Say(lesson.CanBeAccepted ? Shell.Notation.Text("The profile cannot be written from here.") : Shell.Notation.Text($"Nothing to accept here: {LessonWords.Verdict(lesson, Shell.Notation)}."), Tone.Warning);
            return;
        }
        Ask(new ChoiceAsk(
            this,
            $"{Names.Sentence(LessonWords.Name(lesson.Parameter, _house, Shell.Notation))}: {Change(lesson)}?",
            [
                .. lesson.Rehearsed == 0 ? [] : new[] { Line.Of(Shell.Notation.Text($"Rehearsed: {lesson.Rehearsed} of its {lesson.Band.Batches} batches. They tell of a simulated brewhouse, not of yours."), Tone.Warning) },
                Line.Of(Shell.Notation.Text("The profile keeps its comments and gets a dated note; the old version stays beside it."), Tone.Muted),
            ],
            [new Row([Shell.Notation.Text("Leave it as it is")]), new Row([Shell.Notation.Text("Accept it into the profile")])],
            (row, at) =>
            {
                if (row == 1)
                    Accept(lesson, at);
            }));
    }

    private string Change(Lesson lesson) => lesson.Moves
        ? $"{LessonWords.Value(lesson.Parameter, lesson.Current, Shell.Notation)} -> {LessonWords.Value(lesson.Parameter, lesson.Proposed, Shell.Notation)}"
        : Shell.Notation.Text("narrower bands");

    private void Accept(Lesson lesson, DateTimeOffset now) => Shell.Try(() =>
    {
        _entry = Shell.Ports.Keeper!.Accept(_entry, lesson, TimeZoneInfo.ConvertTime(now, Shell.Notation.Zone));
        _house = Shell.Ports.Profiles.Brewhouse(_entry);
        Learn();
        Shell.Say(Shell.Notation.Text($"Written to {_entry.Path}."));
    });
}

/// <summary>Which brewhouse's lessons.</summary>
internal sealed class LessonHousePage(Shell shell, IReadOnlyList<ProfileEntry> entries) : ListPage(shell)
{
    private readonly IReadOnlyList<BatchHead> _batches = shell.Ports.Store.List();

    protected override int Count => entries.Count;

    protected override void Choose(int row, DateTimeOffset now) => LessonsPage.Enter(Shell, entries[row]);

    /// <summary>Days that can teach something; nothing said: none.</summary>
    private string Taught(string brewhouse)
    {
        var done = _batches.Where(b => b.Brewhouse == brewhouse && b.Status == RunStatus.Complete).ToList();
        int real = done.Count(b => !b.Rehearsed), rehearsed = done.Count - real;
        string?[] parts =
        [
            real > 0 ? Counts.Batches(real, Shell.Notation) : null,
            rehearsed == 0 ? null : rehearsed == 1 ? Shell.Notation.Text("1 rehearsed") : Shell.Notation.Text($"{rehearsed} rehearsed"),
        ];
        return string.Join(", ", parts.Where(p => p is not null));
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text("Lessons: which brewhouse?"),
        Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
        [new Column("", 0), new Column(Shell.Notation.Text("finished"), 28)],
        [.. entries.Select(e => new Row([e.Name, Taught(e.Name)]))],
        Selected,
        [],
        KeyMap.Hints(Context, Shell.Notation));
}
