using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>
/// Every key of every place beside the deck does something there: the screen that it leaves is another one than before, and where a key
/// opens something, that. The deck's own keys are in <see cref="EachKeyTests"/>, a rehearsal's in the session tests of rehearsals.
/// </summary>
public sealed class EachKeyElsewhereTests : IDisposable
{
    private static readonly KeyStroke Enter = new(KeyName.Enter), Space = new(KeyName.Space), Down = new(KeyName.Down);

    private readonly TempFolder _own = new();
    private Journal? _journal;
    private Session _session = null!;
    private bool _onHelp;
    private DateTimeOffset _now = new(2026, 5, 30, 8, 0, 0, TimeSpan.Zero);

    public static TheoryData<string> Places => [.. Enum.GetValues<KeyContext>()
        .Where(c => c != 0 && (c & (c - 1)) == 0 && c is not (KeyContext.Deck or KeyContext.Rehearsal)).Select(c => c.ToString())];

    public void Dispose()
    {
        _journal?.Dispose();
        _own.Dispose();
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Each_key_of_a_place_does_something_there(string name)
    {
        var place = Enum.Parse<KeyContext>(name);
        string? there = null;
        foreach (var binding in KeyMap.Table.Where(b => b.Where.HasFlag(place)))
        {
            // one batch is in the list: nothing is above or below it
            if (place == KeyContext.Batches && binding.Command is Command.First or Command.Last or Command.Up or Command.Down or Command.PageUp or Command.PageDown)
                continue;
            foreach (var stroke in Worth(binding))
            {
                // anew only where the last key has led elsewhere
                if (there is null || there != Place())
                {
                    Begin();
                    GoTo(place);
                    there = Place();
                }
                Prepare(binding.Command, place);
                _onHelp = place == KeyContext.Text;
                var before = Seen();
                if (binding.Command == Command.Choose && place is KeyContext.Entry)
                    Send(new Input.Submitted("66"));
                else
                    Strike(stroke);
                Assert.True(before != Seen() || _session.Ended, $"{name}: {binding.Shown} ({stroke}) changes nothing on\n{before}");
                Check(binding.Command);
            }
        }
    }

    /// <summary>Of ten digits the second: all of them go one way.</summary>
    private static IEnumerable<KeyStroke> Worth(KeyBinding binding) =>
        binding.Strokes.Length >= 10 ? [KeyStroke.Of('2')] : binding.Strokes;

    private void Check(Command command)
    {
        switch (command)
        {
            case Command.Help when _onHelp:
                Assert.Equal("BrewDeck", _session.Screen.Title);
                break;
            case Command.Help:
                Assert.Equal("Keys", _session.Screen.Title);
                break;
            case Command.Reckoner:
                Assert.Equal("Reckoner", _session.Screen.Title);
                break;
            case Command.Search:
                Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
                break;
            case Command.Save:
                Assert.StartsWith("Saved to ", _session.Screen.Notice!.ToString(), StringComparison.Ordinal);
                break;
        }
    }

    private void GoTo(KeyContext place)
    {
        switch (place)
        {
            case KeyContext.List:
                break;
            case KeyContext.Choices:
                Pick("New brew day", "Quayside 65", "Quayside Amber");
                MoveTo("Circuits in use");
                break;
            case KeyContext.Plan:
                Pick("New brew day", "Quayside 65", "Quayside Amber", "See the plan");
                break;
            case KeyContext.Refused:
                Pick("New brew day", "Quayside 65", "Quayside Amber");
                MoveTo("Into the fermenter");
                Strike(Enter);
                Send(new Input.Submitted("200"));
                Strike(Space);
                Assert.Equal("This cannot be brewed", _session.Screen.Title);
                break;
            case KeyContext.Text:
                Pick("Keys");
                break;
            case KeyContext.Batch:
                Brew();
                Strike(KeyStroke.Of('q'));
                Pick("Batches");
                Strike(Enter);
                break;
            case KeyContext.Closed:
                Brew();
                Strike(KeyStroke.Of('x'));
                Send(new Input.Submitted("abort"));
                Strike(Space);
                break;
            case KeyContext.Entry or KeyContext.Kinds:
                Brew();
                Strike(KeyStroke.Of('6'));
                break;
            case KeyContext.Choice:
                Brew();
                Strike(KeyStroke.Of('t'));
                break;
            case KeyContext.Sum:
                Pick("Reckoner");
                Strike(Enter);
                break;
            case KeyContext.AfterDay:
                BrewToTheEnd();
                Strike(KeyStroke.Of('f'));
                break;
            case KeyContext.Lessons:
                Pick("Lessons", "Quayside 65");
                break;
            case KeyContext.SetUp:
                Pick("New brewhouse");
                Send(new Input.Submitted("Test brewhouse"));
                Strike(Enter, Enter);
                break;
            case KeyContext.Recipe:
                Recipe();
                MoveTo("pale ale malt");
                break;
            case KeyContext.Water:
                Pick("New brew day", "Quayside 65", "Quayside Amber");
                MoveTo("Water analysis");
                Strike(Enter, Enter);
                Send(new Input.Submitted("Hill spring"));
                MoveTo("calcium");
                break;
            case KeyContext.Recipes:
                Pick("Recipes");
                MoveTo("Quayside Amber");
                break;
            case KeyContext.Scaling:
                Pick("Recipes");
                MoveTo("Quayside Amber");
                Strike(KeyStroke.Of('b'), Enter, Enter);
                MoveTo("Into the fermenter");
                break;
            case KeyContext.Naming:
                Recipe();
                MoveTo("+ malt or sugar");
                Strike(Enter);
                break;
            case KeyContext.Brief:
                BeginExercise();
                break;
            case KeyContext.Charts:
                Brew();
                Strike(KeyStroke.Of('c'));
                break;
            case KeyContext.Batches:
                Brew();
                Strike(KeyStroke.Of('q'));
                Pick("Batches");
                break;
            default:
                Assert.Fail($"{place} has no way there");
                break;
        }
    }

    /// <summary>Into the middle, so that a step up, down or to an end is one; and something to take back, where that is the key.</summary>
    private void Prepare(Command command, KeyContext place)
    {
        if (command is Command.Down or Command.PageDown or Command.Last && KeyContext.Screens.HasFlag(place))
            Strike(new KeyStroke(KeyName.Home));
        switch (command)
        {
            case Command.Up or Command.First or Command.PageUp when place == KeyContext.Charts:
                Strike(Down, Down, Down);
                break;
            case Command.Up or Command.First or Command.PageUp:
                Strike(Down, Down);
                break;
            case Command.PickRow when place is KeyContext.Charts or KeyContext.List or KeyContext.Choice:
                break;
            case Command.Undo when place == KeyContext.Recipe:
                Strike(KeyStroke.Of('d'));
                break;
            case Command.Undo when place == KeyContext.Water:
                Strike(Enter);
                Send(new Input.Submitted("92"));
                break;
            case Command.Undo when place == KeyContext.AfterDay:
                Strike(Enter);
                Send(new Input.Submitted("1.040"));
                break;
            case Command.Before:
                break;
        }
    }

    private void Recipe()
    {
        Pick("Recipes");
        MoveTo("Quayside Amber");
        Strike(KeyStroke.Of('e'));
    }

    /// <summary>On so small a screen that there is something to scroll.</summary>
    private void BeginExercise()
    {
        var profiles = ProfileFolder.BesideProgram(_own.Path);
        var (plan, card) = ExerciseDay.Draw(1, profiles);
        _session = new Session(new SessionPorts(_journal!, profiles, new RehearsalClock(_now, _now, 1) { Card = card, HandsOn = true }), new SessionSettings { ProgramVersion = "test" }, _now);
        Assert.True(_session.Begin(plan, _now));
        Send(new Input.Resized(40, 8));
    }

    private void Brew()
    {
        Pick("New brew day", "Quayside 65", "Quayside Amber", "See the plan");
        Strike(Space);
        Assert.IsType<DeckScreen>(_session.Screen);
    }

    private void BrewToTheEnd()
    {
        Brew();
        for (var i = 0; i < 400 && _session.State!.Status != RunStatus.Complete; i++)
        {
            var focus = _session.Focus!;
            var due = DateTimeOffset.FromUnixTimeMilliseconds(focus.DueMs);
            if (due > _now)
                _now = due;
            _session.Act(focus.Act == FocusAct.Start ? new RunCommand.Start(focus.StepId) : new RunCommand.Finish(focus.StepId), _now);
        }
        Assert.Equal(RunStatus.Complete, _session.State!.Status);
        Send(new Input.Tick());
        Strike(Space);
    }

    private void Begin()
    {
        _journal?.Dispose();
        _journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
        var profiles = ProfileFolder.BesideProgram(_own.Path);
        var ports = new SessionPorts(_journal, profiles, Writer: new ProfileWriter(_own.Path, profiles)) { Figures = heads => [.. heads.Select(_ => new double?[0])] };
        _session = new Session(ports, new SessionSettings { ProgramVersion = "test" }, _now);
    }

    private void Pick(params ReadOnlySpan<string> rows)
    {
        foreach (var row in rows)
        {
            MoveTo(row);
            Strike(Enter);
        }
    }

    private void MoveTo(string row)
    {
        var list = Assert.IsType<ListScreen>(_session.Screen);
        var at = list.Rows.ToList().FindIndex(r => r.Cells[0] == row);
        if (at < 0)
            at = list.Rows.ToList().FindIndex(r => r.Cells[0].StartsWith(row, StringComparison.Ordinal));
        Assert.True(at >= 0, $"no row {row} on {list.Title}");
        for (var i = list.Selected; i != at; i += Math.Sign(at - i))
            Strike(at > i ? Down : new KeyStroke(KeyName.Up));
    }

    private void Strike(params ReadOnlySpan<KeyStroke> strokes)
    {
        foreach (var stroke in strokes)
            Send(new Input.Key(stroke));
    }

    private void Send(Input input)
    {
        _now = _now.AddSeconds(2);
        _session.Receive(input, _now);
    }

    private string Place() => $"{_session.Where} {_session.Screen.Title} {_session.Screen.Overlay?.Question}";

    /// <summary>What the brewer sees, without the clock in the corner.</summary>
    private string Seen() => StillScreen.Of(_session.Screen with { Corner = "" }, 100, 30).ToText() + _session.Screen.Notice + (_session.Screen as ListScreen)?.Selected
        + (_session.Screen as TextScreen)?.Offset + (_session.Screen as ChartScreen)?.Offset + (_session.Screen as ChartScreen)?.Selected;
}
