using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A rehearsal and a brew day in one logbook do not touch each other.</summary>
public sealed class RealAndRehearsedTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 30, 8, 0, 0, TimeSpan.Zero);

    private readonly TempFolder _own = new();
    private readonly Journal _journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
    private readonly ProfileFolder _profiles;
    private readonly Plan _plan;

    public RealAndRehearsedTests()
    {
        _profiles = ProfileFolder.BesideProgram(_own.Path);
        _plan = Assert.IsType<PlanResult.Drawn>(new DayOptions().Draw(_profiles)).Plan;
    }

    [Fact]
    public void A_rehearsal_does_not_take_up_the_batch_that_is_brewed()
    {
        Assert.True(BrewDay(Morning).Begin(_plan, Morning));
        var rehearsal = Rehearsal();
        Assert.Null(rehearsal.Session.State);
        Assert.True(rehearsal.Begin(_plan, new RehearsalCard(1, [])));
        Assert.Equal([false, true], _journal.List().OrderBy(b => b.Number).Select(b => b.Rehearsed));
        Assert.False(BrewDay(Morning.AddMinutes(1)).State!.Rehearsed);
    }

    [Fact]
    public void A_brew_day_does_not_take_up_a_rehearsal_nor_wait_for_its_end()
    {
        Assert.True(Rehearsal().Begin(_plan, new RehearsalCard(1, [])));
        var day = BrewDay(Morning.AddMinutes(1));
        Assert.Null(day.State);
        Assert.True(day.Begin(_plan, Morning.AddMinutes(1)));
        Assert.True(Rehearsal().Session.State!.Rehearsed);
    }

    [Fact]
    public void The_opening_page_offers_a_rehearsal_that_was_left_and_the_deck_is_left_for_it()
    {
        Assert.True(Rehearsal().Begin(_plan, new RehearsalCard(1, [])));
        var day = BrewDay(Morning.AddMinutes(1));
        var list = Assert.IsType<ListScreen>(day.Screen);
        Assert.Equal($"Go on with rehearsal 1: {_plan.Recipe.Name}", list.Rows[0].Cells[0]);
        day.Receive(new Input.Key(new KeyStroke(KeyName.Enter)), Morning.AddMinutes(2));
        Assert.True(day.Ended);
        Assert.True(day.LeftForRehearsal);
    }

    [Fact]
    public void A_batch_that_is_brewed_goes_before_the_rehearsal()
    {
        Assert.True(Rehearsal().Begin(_plan, new RehearsalCard(1, [])));
        var day = BrewDay(Morning.AddMinutes(1));
        Assert.True(day.Begin(_plan, Morning.AddMinutes(1)));
        day.Receive(new Input.Key(KeyStroke.Of('q')), Morning.AddMinutes(2));
        var rows = Assert.IsType<ListScreen>(day.Screen).Rows.Select(r => r.Cells[0]).ToList();
        Assert.StartsWith("Go on with batch 2:", rows[0], StringComparison.Ordinal);
        Assert.StartsWith("Go on with rehearsal 1:", rows[1], StringComparison.Ordinal);
        day.Receive(new Input.Key(KeyStroke.Of('2')), Morning.AddMinutes(3));
        day.Receive(new Input.Key(new KeyStroke(KeyName.Enter)), Morning.AddMinutes(4));
        Assert.False(day.Ended);
        Assert.StartsWith("Batch 2 still runs", day.Screen.Notice!.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A headless day took over an open rehearsed batch of another recipe, and gave it up.</summary>
    [Fact]
    public void A_headless_day_is_a_batch_of_its_own_and_leaves_an_open_one_as_it_is()
    {
        var folder = _own.At("logbook");
        using (var journal = Journal.Open(new FolderDisk(folder), Workplace.StatusOf))
        {
            var deck = RehearsalDeck.Open(journal, _profiles, new SessionSettings { ProgramVersion = Workplace.Version }, Morning, 1);
            Assert.True(deck.Begin(_plan, new RehearsalCard(1, [])));
        }
        var before = File.ReadAllBytes(Path.Combine(folder, Tape.NameOf(1)));

        var (code, output, errors) = Reports.RehearsedLogbook.RunOn(folder, "rehearse", "--headless", "--log", "--seed", "3");
        Assert.True(code == 0, errors);
        Assert.StartsWith("seed 3: pitched", output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(folder, Tape.NameOf(1))));
        using var after = Journal.Open(new FolderDisk(folder), Workplace.StatusOf);
        Assert.Equal([RunStatus.Idle, RunStatus.Complete], after.List().OrderBy(b => b.Number).Select(b => b.Status));
    }

    public void Dispose()
    {
        _journal.Dispose();
        _own.Dispose();
    }

    private Session BrewDay(DateTimeOffset now) => new(new SessionPorts(_journal, _profiles) { Exercises = new ExerciseBook(_own.Path) }, new SessionSettings { ProgramVersion = Workplace.Version }, now);

    private RehearsalDeck Rehearsal() => RehearsalDeck.Open(_journal, _profiles, new SessionSettings { ProgramVersion = Workplace.Version }, Morning, 1);
}
