using System.Text;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.SystemTests.Terminal;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A tour of every screen of the real program by keys; each is kept at every size, with its tones, and must be the same in every theme.</summary>
public sealed class EveryScreenTests
{
    private static readonly (int Columns, int Rows)[] Sizes = [(80, 24), (100, 30), (120, 40), (200, 60), (50, 14)];

    [Fact]
    public void Before_and_on_the_deck()
    {
        using var at = new AtTheKeys();
        Kept("opening", at);
        at.Pick("New brew day");
        Kept("pick-brewhouse", at);
        at.Pick("Quayside 65");
        Kept("pick-recipe", at);
        at.MoveTo("Quayside Amber").Strike("e");
        Kept("recipe", at);
        at.Pick("+ hop");
        Kept("catalogue", at);
        at.Strike(Escape, Escape, "b");
        Kept("scale", at);
        at.Strike(Space);
        Kept("scaled", at);
        at.Strike(Escape, Escape, Enter);
        Kept("choices", at);
        at.Pick("Water analysis").MoveTo("calcium");
        Kept("water", at);
        at.Strike(Escape);
        at.MoveTo("Into the fermenter").Line("200");
        at.Strike(Space);
        Kept("refused", at);
        at.Strike(Escape).MoveTo("Into the fermenter").Line("40");
        at.Strike(Space);
        Kept("plan", at);
        at.Strike(Space);
        Kept("deck-set-up", at);
        foreach (var (key, name) in ((string, string)[])[("6", "reading"), ("t", "which-reading"), ("f", "troubles"), ("b", "bags"), ("n", "note"), ("x", "give-up"), ("p", "run-sheet"), ("l", "alarms"), ("c", "charts"), ("?", "keys"), ("k", "reckoner")])
        {
            at.Strike(key);
            Kept(name, at);
            if (key == "k")
            {
                at.Strike(Enter);
                Kept("sum", at);
                at.Strike(Escape);
            }
            Back(at);
        }
        at.Strike("w");
        Kept("wipe-lock", at);
        at.Strike("d", "r", "y");

        var brewer = new BrewerByKeys(at, Space, BrewerByKeys.Decimal);
        brewer.Until(StepKind.WeighIn);
        Kept("deck-weigh-in", at);
        brewer.Until(StepKind.Rest);
        at.Wait(TimeSpan.FromMinutes(2));
        Kept("deck-mash", at);
        at.Line("62.5");
        Kept("deck-off", at);
        at.Strike("r");
        Kept("remedies", at);
        Back(at);
        at.Strike("u", "h");
        Kept("deck-held", at);
        at.Strike("h");
        brewer.Until(StepKind.Boil);
        at.WaitUntilDue().Wait(TimeSpan.FromMinutes(7));
        Kept("deck-alarm", at);
        at.Strike("l");
        Kept("alarms-standing", at);
        at.Strike(Enter);
        Kept("shelve", at);
        at.Strike(Escape);
        Back(at);
        at.Strike("c");
        Kept("charts-boil", at);
        Back(at);
        brewer.Until(s => s.Status == RunStatus.Complete);
        Kept("deck-over", at);
        at.Strike(Space);
        Kept("batch", at);
        at.Strike("f");
        Kept("after-the-day", at);
        at.Strike(Escape, Escape, "q");
        at.Pick("Batches");
        Kept("batches", at);
        at.Strike(Escape);
        at.Pick("Lessons");
        Kept("lessons-pick", at);
        at.Pick("Quayside 65");
        Kept("lessons", at);
    }

    [Fact]
    public void Of_setting_up()
    {
        using var at = new AtTheKeys();
        at.Pick("New brewhouse");
        Kept("set-up", at);
        Until("How much of the kettle's heat arrives?", at);
        at.Strike(Down, Down, Enter);
        foreach (var reading in (string[])["42 L", "12 C", "71 C", "78 min"])
            at.Line(reading);
        Kept("trial", at);
        at.Strike(Escape, Up, Up);
        Until("My brewhouse: write it?", at);
        Kept("set-up-review", at);
    }

    [Fact]
    public void Of_rehearsals()
    {
        using var own = new Logbook.TempFolder();
        using (var exercise = new AtTheRehearsal(1, own.Path))
        {
            Kept("exercise", exercise.Screen);
            exercise.Strike("q");
            Kept("deck-exercise", exercise.Screen);
        }
        using var at = new AtTheRehearsal(new Mishap(MishapKind.TrippedCircuit, Severity.Plain));
        at.UntilItShows();
        Kept("deck-mishap", at.Screen);
        at.Strike("m");
        Kept("at-hand", at.Screen);
        at.Strike(Enter);
        at.Until(() => at.State.Status == RunStatus.Complete);
        at.Strike(Space);
        Kept("debrief", at.Screen);
    }

    /// <summary>Where a key had nothing to ask, a further Esc would leave the deck.</summary>
    private static void Back(AtTheKeys at)
    {
        if (at.Session.Screen.Overlay is not null || at.Session.Screen is not DeckScreen)
            at.Strike(Escape);
        Assert.IsType<DeckScreen>(at.Session.Screen);
    }

    private static void Until(string title, AtTheKeys at)
    {
        for (var i = 0; at.Session.Screen.Title != title; i++)
        {
            Assert.InRange(i, 0, 60);
            at.Strike(Enter);
        }
    }

    private static void Kept(string name, AtTheKeys at)
    {
        var all = new StringBuilder();
        foreach (var (columns, rows) in Sizes)
        {
            at.Session.Receive(new Input.Resized(columns, rows), at.Now);
            Add(all, at.Session.Screen, columns, rows);
        }
        at.Session.Receive(new Input.Resized(80, 24), at.Now);
        SessionGoldens.Same(Path.Combine("Screens", name), all.ToString());
    }

    private static void Kept(string name, Screen screen)
    {
        var all = new StringBuilder();
        foreach (var (columns, rows) in Sizes)
            Add(all, screen, columns, rows);
        SessionGoldens.Same(Path.Combine("Screens", name), all.ToString());
    }

    private static void Add(StringBuilder all, Screen screen, int columns, int rows) =>
        all.Append("=== ").Append(columns).Append('x').Append(rows).Append('\n').Append(ToneMap.Of(screen, columns, rows));
}
