using System.Globalization;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Brews by keys: does what is due, and types what the dials show when a step expects it.</summary>
/// <param name="keys">Go on with this key.</param>
/// <param name="write">How a number is typed.</param>
/// <param name="dials">What the dial shows instead of what is expected; null: as expected.</param>
internal sealed class BrewerByKeys(
    AtTheKeys at, string keys, Func<ReadingKind, double, string> write, Func<StepKind, ReadingKind, double>? dials = null)
{
    private const int MostKeys = 400;
    private readonly HashSet<(string Step, ReadingKind Kind)> _read = [];

    public static string Decimal(ReadingKind kind, double value) => kind switch
    {
        ReadingKind.Gravity => value.ToString("0.000", CultureInfo.InvariantCulture),
        _ => value.ToString("0.0", CultureInfo.InvariantCulture),
    };

    /// <summary>From the opening screen to the deck, by the rows of the brewhouse and of the recipe.</summary>
    public void Begin(string recipe, Action<int> pick, Action choose, string goOn)
    {
        at.Strike(goOn);
        pick(RowOf("Quayside 65"));
        at.Strike(goOn);
        pick(RowOf(recipe));
        at.Strike(goOn);
        choose();
        Assert.IsType<TextScreen>(at.Session.Screen);
        at.Strike(goOn);
        // Enter asks before it opens a batch
        if (at.Session.Screen.Overlay is ChoiceOverlay)
            at.Strike("2").Strike(goOn);
        Assert.IsType<DeckScreen>(at.Session.Screen);
    }

    private int RowOf(string name) =>
        Assert.IsType<ListScreen>(at.Session.Screen).Rows.Select((row, i) => (row, i)).Single(r => r.row.Cells[0] == name).i;

    public void Until(Func<RunState, bool> reached)
    {
        for (var i = 0; i < MostKeys && !reached(at.Session.State!); i++)
            GoOn();
        Assert.True(reached(at.Session.State!), at.Text);
    }

    /// <summary>Until a step of that kind runs.</summary>
    public void Until(StepKind kind) => Until(s => s.Steps.Any(x => x.Spec.Kind == kind && x.Status == RunStatus.Running));

    public void GoOn()
    {
        at.WaitUntilDue();
        if (at.Session.Focus!.Act == FocusAct.Wait)
            return;
        TypeWhatIsExpected();
        at.Strike(keys, null);
    }

    // the first thing that a step expects is what a digit opens; further ones are a Tab away and left to the story
    public void TypeWhatIsExpected()
    {
        var focus = at.Session.Focus!;
        var step = at.Session.Forecast!.Rest.FirstOrDefault(s => s.Spec.Id == focus.StepId);
        if (focus.Act != FocusAct.Finish || step is null || step.Expected.IsEmpty || !_read.Add((step.Spec.Id, step.Expected[0].Kind)))
            return;
        var expected = step.Expected[0];
        at.Line(write(expected.Kind, expected.Value + (dials?.Invoke(step.Spec.Kind, expected.Kind) ?? 0)));
    }
}
