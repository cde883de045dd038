using System.Collections.Immutable;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Keys.KeyContext;

namespace BrewDeck.Deck.Keys;

/// <summary>The one key table: what keys do, the bottom line and the help all come from it.</summary>
public static class KeyMap
{
    private static readonly ImmutableArray<KeyStroke> Space = [new(KeyName.Space)];
    private static readonly ImmutableArray<KeyStroke> Enter = [new(KeyName.Enter)];
    private static readonly ImmutableArray<KeyStroke> SpaceOrEnter = [new(KeyName.Space), new(KeyName.Enter)];
    private static readonly ImmutableArray<KeyStroke> Escape = [new(KeyName.Escape)];
    private static readonly ImmutableArray<KeyStroke> Leave = [KeyStroke.Of('q'), new(KeyName.Escape), new(KeyName.Backspace)];
    private static readonly ImmutableArray<KeyStroke> Digits = [.. "0123456789".Select(KeyStroke.Of)];

    private static readonly ImmutableArray<KeyStroke> DigitsAndSign = [.. Digits, KeyStroke.Of('-')];
    private static readonly ImmutableArray<KeyStroke> NameBegins = [.. Digits, .. Enumerable.Range('a', 26).Select(c => KeyStroke.Of((char)c))];

    private const KeyContext Rows = Choice | Naming | KeyContext.List | KeyContext.Choices | KeyContext.Sum | KeyContext.SetUp | KeyContext.Recipe | Water | KeyContext.Scaling;

    private const KeyContext Detailed = KeyContext.List | KeyContext.Choices | KeyContext.Sum | KeyContext.SetUp | KeyContext.Recipe | Water | KeyContext.Scaling;

    // the slash too: on many keyboards the question mark needs a second finger
    private static readonly ImmutableArray<KeyStroke> Help = [KeyStroke.Of('?'), KeyStroke.Of('/')];

    public static ImmutableArray<KeyBinding> Table { get; } =
    [
        new(KeyContext.Deck, Command.GoOn, "space", SpaceOrEnter, "go on", "Start or finish what the deck shows (enter does the same). Asks before it ends early what runs by itself."),
        new(KeyContext.Deck, Command.Reading, "0-9", Digits, "reading", "Enter the reading that this step expects."),
        new(KeyContext.Deck, Command.Acknowledge, "a", [KeyStroke.Of('a'), KeyStroke.Of('*')], "", "Heard: the alarms that show fall silent (the keypad's star does the same)."),
        new(KeyContext.Deck, Command.Undo, "u", Key('u'), "undo", "Take back the last act; the log keeps both."),
        new(KeyContext.Deck, Command.Help, "?", Help, "keys", "All keys."),
        new(KeyContext.Deck, Command.Remedies, "r", Key('r'), "remedies", "Ways back to plan after an off reading."),
        new(KeyContext.Deck, Command.OtherReading, "t", Key('t'), "other reading", "Take another reading: choose what and where."),
        new(KeyContext.Deck, Command.Trouble, "f", Key('f'), "", "Something is wrong that no reading shows, such as a stuck run-off or a tripped circuit."),
        new(KeyContext.Deck, Command.Weigh, "b", Key('b'), "", "A bag is not as planned: less of it, or another alpha acid, moisture or extract."),
        new(KeyContext.Deck, Command.Note, "n", Key('n'), "note", "Write a note into the log."),
        new(KeyContext.Deck, Command.Hold, "h", Key('h'), "hold", "Hold the step, or go on with a held one."),
        new(KeyContext.Deck, Command.RunSheet, "p", Key('p'), "run sheet", "The whole day with its times."),
        new(KeyContext.Deck, Command.Charts, "c", Key('c'), "", "Temperature, volume and gravity over the day, and the timetable, planned against done."),
        new(KeyContext.Deck, Command.Alarms, "l", Key('l'), "alarms", "The alarms that stand and the log of them; enter there shelves one for some minutes."),
        new(KeyContext.Deck, Command.WipeLock, "w", Key('w'), "wipe lock", "Lock the keys to wipe them; type dry to unlock."),
        new(KeyContext.Deck, Command.Skip, "s", Key('s'), "", "Skip the step: asks for the word skip."),
        new(KeyContext.Deck, Command.Abort, "x", Key('x'), "", "Give up the batch: asks for the word abort."),

        new(Rehearsal, Command.Faster, "+", [KeyStroke.Of('+'), KeyStroke.Of('=')], "faster", "Let the rehearsal run faster."),
        new(Rehearsal, Command.Slower, "-", Key('-'), "slower", "Let the rehearsal run slower."),
        new(Rehearsal, Command.Pause, ".", Key('.'), "pause", "Stop the rehearsal's clock, or let it run on."),
        new(Rehearsal, Command.OwnHands, "o", Key('o'), "own hands", "Do the work yourself, or hand it back to the stand-in brewer."),

        new(Rehearsal, Command.Leap, "j", Key('j'), "leap", "Leap to where the hands are needed next, or something shows itself."),
        new(Rehearsal, Command.Tend, "m", Key('m'), "at hand", "What the hands can do about something that has gone wrong in the rehearsal."),

        new(KeyContext.List, Command.Choose, "enter", SpaceOrEnter, "choose", "Take the chosen row."),
        new(KeyContext.Choices, Command.Change, "enter", Enter, "change", "Change the chosen row."),
        new(KeyContext.Choices, Command.PickRow, "0-9", Digits, "type", "Type a new value for the chosen row."),
        new(KeyContext.Choices, Command.GoOn, "space", Space, "see the plan", "Draw the plan with these choices."),
        new(KeyContext.Sum, Command.Change, "enter", SpaceOrEnter, "change", "Type the chosen number, or turn to the next word."),
        new(KeyContext.Sum, Command.PickRow, "0-9", Digits, "type", "Type a number for the chosen row."),
        new(KeyContext.SetUp, Command.Choose, "enter", SpaceOrEnter, "take it", "Take the chosen row as the answer, and go on."),
        new(KeyContext.SetUp, Command.PickRow, "0-9", DigitsAndSign, "type", "Type the answer, or move to that row."),
        new(KeyContext.SetUp, Command.Before, "backspace", [new(KeyName.Backspace), new(KeyName.Left)], "question before", "One question back (left does the same)."),
        new(KeyContext.SetUp, Command.Back, "esc", [KeyStroke.Of('q'), new(KeyName.Escape)], "back", "Leave the set-up; the answers are kept."),
        new(Naming, Command.Choose, "enter", SpaceOrEnter, "choose", "Take the chosen row."),
        new(Naming, Command.PickRow, "a-z", NameBegins, "type its name", "Type the name, or how it begins."),
        new(Naming, Command.Back, "esc", [new(KeyName.Escape), new(KeyName.Backspace)], "back", "One screen back. What was answered is kept."),
        new(Brief, Command.GoOn, "space", SpaceOrEnter, "begin", "Go to the deck and begin."),
        new(KeyContext.Recipe, Command.Change, "enter", Enter, "change", "Change the chosen row, or add to it."),
        new(KeyContext.Recipe, Command.PickRow, "0-9", Digits, "type", "Type a new amount for the chosen row."),
        new(KeyContext.Recipe, Command.Remove, "d", Key('d'), "take out", "Take the chosen line out of the recipe."),
        new(KeyContext.Recipe, Command.Undo, "u", Key('u'), "undo", "Take back the last change."),
        new(KeyContext.Recipe, Command.Save, "s", Key('s'), "save", "Write the recipe's file; comments stay, and the old version stays beside it."),
        new(KeyContext.Recipe, Command.GoOn, "space", Space, "plan it", "Go on to the day's choices and the plan."),
        new(Water, Command.Change, "enter", SpaceOrEnter, "change", "Type the chosen number, or turn to the next word."),
        new(Water, Command.PickRow, "0-9", Digits, "type", "Type a number for the chosen row."),
        new(Water, Command.Undo, "u", Key('u'), "undo", "Take back the last change."),
        new(Water, Command.Save, "s", Key('s'), "save", "Write the water's file and take it for the day; the old version stays beside it."),
        new(KeyContext.Recipes, Command.New, "n", Key('n'), "new", "Make a new recipe."),
        new(KeyContext.Recipes, Command.Change, "e", Key('e'), "change", "Change the chosen recipe."),
        new(KeyContext.Recipes, Command.Copy, "c", Key('c'), "copy", "Make a new recipe of the chosen one."),
        new(KeyContext.Recipes, Command.Scale, "b", Key('b'), "rescale", "Move the chosen recipe to another brewhouse, and see both side by side."),
        new(KeyContext.Scaling, Command.GoOn, "space", Space, "all of it", "All figures and amounts side by side."),
        new(KeyContext.Scaling, Command.Change, "enter", Enter, "change", "Turn the chosen row to its next value, or type it."),
        new(KeyContext.Scaling, Command.PickRow, "0-9", Digits, "type", "Type the litres into the fermenter."),
        new(KeyContext.Scaling, Command.Save, "s", Key('s'), "save", "Write it as a recipe of its own."),
        new(KeyContext.Plan, Command.GoOn, "space", Space, "brew this", "Open the batch and go to the deck."),
        new(KeyContext.Plan, Command.Choose, "enter", Enter, "", "The same, but asks first."),
        new(KeyContext.Plan | Refused, Command.Circuits, "c", Key('c'), "other circuits", "Change the plan to another number of circuits: asks which, and says what each costs."),
        new(KeyContext.Plan | Refused, Command.Undo, "u", Key('u'), "undo", "Take back the last change of circuits."),
        new(KeyContext.Batch, Command.GoOn, "space", SpaceOrEnter, "go on", "Go on with this batch while it is open."),
        new(KeyContext.Batch | KeyContext.Closed, Command.AfterDay, "f", Key('f'), "after the day", "Fermenter readings, dry hops, packaging, tasting."),
        new(KeyContext.Batch | KeyContext.Closed, Command.Debrief, "d", Key('d'), "debrief", "Of a rehearsed batch: what went wrong, what was done, what the choices cost."),
        new(KeyContext.Batch | KeyContext.Closed, Command.Charts, "c", Key('c'), "charts", "Temperature, volume and gravity over the day, and the timetable, planned against done."),
        new(KeyContext.Charts, Command.NextKind, "space", [.. SpaceOrEnter, new(KeyName.Right), new(KeyName.Tab)], "next chart", "The next chart (enter and right do the same)."),
        new(KeyContext.Charts, Command.PreviousKind, "←", Named(KeyName.Left), "chart before", "The chart before."),
        new(KeyContext.Charts, Command.PickRow, "1-9", Digits, "", "That chart."),
        new(KeyContext.Batches, Command.Search, "s", Key('s'), "search", "Find batches as you type: number, day, recipe, brewhouse, state."),
        new(KeyContext.Batches, Command.Mark, "m", Key('m'), "mark", "Mark the chosen batch for a look side by side, or let it go."),
        new(KeyContext.Batches, Command.SideBySide, "c", Key('c'), "side by side", "Set two to five marked batches beside each other; enter there takes a row out, or puts it back."),
        new(KeyContext.Batches, Command.Trends, "t", Key('t'), "trends", "What efficiency, evaporation, run-off and so on do over the listed batches, with the limits of a control chart."),
        new(KeyContext.Batches, Command.Sort, "o", Key('o'), "order", "Another order: newest, oldest, recipe, brewhouse, state."),
        new(KeyContext.Batches, Command.Rehearsed, "r", Key('r'), "", "List all, only real batches, or only rehearsals."),
        new(KeyContext.Batches, Command.SameRecipe, "e", Key('e'), "", "Only batches of the chosen one's recipe, or of all again."),
        new(KeyContext.Batches, Command.SameBrewhouse, "h", Key('h'), "", "Only batches on the chosen one's brewhouse, or on all again."),
        new(KeyContext.AfterDay, Command.Undo, "u", Key('u'), "undo", "Take back what was last written after the day."),
        new(KeyContext.Lessons, Command.Accept, "a", Key('a'), "accept", "Take the chosen lesson into the profile: asks first."),
        new(KeyContext.Lessons, Command.Rehearsed, "r", Key('r'), "rehearsed", "Read rehearsed batches too, or leave them out."),
        new(Rows, Command.Up, "↑", Named(KeyName.Up), "", "The row above."),
        new(Rows, Command.Down, "↓", Named(KeyName.Down), "next row", "The row below."),
        new(Scrolled, Command.Up, "↑", Named(KeyName.Up), "", "One line up."),
        new(Scrolled, Command.Down, "↓", Named(KeyName.Down), "scroll", "One line down."),
        new(Detailed, Command.Whole, "p", Key('p'), "", "All about the chosen row, where the list leaves no room for it."),
        new(Scrolled, Command.PageUp, "page up", Named(KeyName.PageUp), "", "One page up."),
        new(Scrolled, Command.PageDown, "page down", Named(KeyName.PageDown), "", "One page down."),
        new(KeyContext.List | Naming, Command.PageUp, "page up", Named(KeyName.PageUp), "", "Ten rows up."),
        new(KeyContext.List | Naming, Command.PageDown, "page down", Named(KeyName.PageDown), "", "Ten rows down."),
        new(KeyContext.Screens | Naming, Command.First, "home", Named(KeyName.Home), "", "To the beginning."),
        new(KeyContext.Screens | Naming, Command.Last, "end", Named(KeyName.End), "", "To the end."),

        new(Choice, Command.Choose, "enter", SpaceOrEnter, "choose", "Take the chosen row."),
        new(Choice | KeyContext.List, Command.PickRow, "1-9", Digits, "", "Move to that row."),
        new(Choice, Command.Back, "esc", Escape, "back", "Leave it as it was."),
        new(Entry, Command.Choose, "enter", Enter, "take it", "Take what is typed."),
        new(Kinds, Command.NextKind, "tab", [new(KeyName.Tab), new(KeyName.Down)], "other kind", "Another kind of reading or another vessel."),
        new(Kinds, Command.PreviousKind, "↑", Named(KeyName.Up), "", "The kind of reading before."),
        new(Entry, Command.Back, "esc", Escape, "back", "Leave it as it was."),

        new(KeyContext.Deck | KeyContext.Screens | KeyContext.SetUp | Choice, Command.Reckoner, "k", Key('k'), "", "The reckoner: one-off sums, while the brew goes on."),
        new(KeyContext.Screens | KeyContext.SetUp | Naming, Command.Help, "?", Help, "keys", "All keys."),
        new(KeyContext.Deck, Command.Back, "q", Key('q'), "back", "One screen back. A batch runs on."),
        new(KeyContext.Screens, Command.Back, "q", Leave, "back", "One screen back. A batch runs on."),
    ];

    /// <summary>What a key asks for there; null: nothing, and it is ignored.</summary>
    public static KeyBinding? Find(KeyContext where, KeyStroke stroke)
    {
        var lower = stroke with { Character = char.ToLowerInvariant(stroke.Character) };
        return Table.FirstOrDefault(b => (b.Where & where) != 0 && b.Strokes.Contains(lower));
    }

    /// <summary>The bottom line of a place.</summary>
    public static ImmutableArray<KeyHint> Hints(KeyContext where, Notation notation) => Hints(where, notation, default, "");

    /// <summary>The same with another word for one of the commands, where it means something narrower.</summary>
    public static ImmutableArray<KeyHint> Hints(KeyContext where, Notation notation, Command? but, string does) =>
        [.. Table.Where(b => (b.Where & where) != 0 && !b.Hint.IsEmpty).Select(b => new KeyHint(notation.Name(b.Shown), b.Command == but ? does : notation.Text(b.Hint)))];

    private static ImmutableArray<KeyStroke> Key(char character) => [KeyStroke.Of(character)];

    private static ImmutableArray<KeyStroke> Named(KeyName name) => [new(name)];
}
