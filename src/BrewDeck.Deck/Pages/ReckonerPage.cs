using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>The sums to choose from. The brew goes on beneath: its next due moment stands in the corner.</summary>
internal sealed class ReckonerPage : ListPage
{
    private ReckonerPage(Shell shell)
        : base(shell)
    {
    }

    /// <summary>Opens it; the same key goes back, from a sum to the sums and from these to where they were opened.</summary>
    public static void Enter(Shell shell)
    {
        if (shell.Top is ReckonerPage or (SumPage and not TrialPage))
            shell.Pop();
        else
            shell.Push(new ReckonerPage(shell));
    }

    public override DateTimeOffset? NextTick(DateTimeOffset now) => Corners.NextTick(Shell, now);

    protected override int Count => Sums.All.Length;

    protected override void Choose(int row, DateTimeOffset now) => Shell.Push(new SumPage(Shell, Sums.All[row], Shell.Day is { } day ? DaySums.Of(Sums.All[row], day.Plan) : null));

    protected override Screen Compose(DateTimeOffset now)
    {
        var sum = Sums.All[Selected];
        return new ListScreen(
            Shell.Notation.Text("Reckoner"),
            Corners.Of(Shell, now),
            [new Column("", 0)],
            [.. Sums.All.Select(s => new Row([Shell.Notation.Text(s.Title)]))],
            Selected,
            [
                Line.Of(Shell.Notation.Text($"asks: {string.Join(", ", sum.Inputs.Select(i => Shell.Notation.Text(i.Label)))}")),
                Line.Of(Shell.Notation.Text($"gives: {string.Join(", ", sum.Outputs.Select(o => Shell.Notation.Text(o.Label)))}")),
                .. SumLines.About(sum, Shell.Notation).Select(a => new Line([new Span(a.Label + ": ", Tone.Muted), new Span(a.Value)])),
            ],
            KeyMap.Hints(Context, Shell.Notation));
    }
}
