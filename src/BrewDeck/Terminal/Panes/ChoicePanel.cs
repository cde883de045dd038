using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;

namespace BrewDeck.Terminal.Panes;

/// <summary>A question with options, framed, at the bottom of the screen.</summary>
internal sealed class ChoicePanel : View
{
    private readonly LinesView _frame;
    private readonly LinesView _options;
    private int _first;

    public ChoicePanel(Look look)
    {
        CanFocus = false;
        Visible = false;
        SetScheme(look.Scheme(Surface.Panel));
        (_frame, _options) = (new LinesView(look, Surface.Panel), new LinesView(look, Surface.Panel));
        Add(_frame, _options);
    }

    /// <param name="choice">Null: nothing is asked.</param>
    /// <param name="above">The row below the panel, and the width of the screen.</param>
    public void Show(ChoiceOverlay? choice, Size above, Notation notation)
    {
        if (choice is null)
        {
            Visible = false;
            return;
        }

        var width = Math.Min(above.Width, 90);
        var inner = Math.Max(1, width - FrameLines.Margin);
        var head = Head(choice, inner, above.Height, notation);
        var rows = Math.Clamp(above.Height - 2 - head.Length, 1, Math.Max(1, choice.Options.Length));
        _first = ListLines.Scroll(_first, choice.Selected, choice.Options.Length, rows);
        ImmutableArray<Line> options = [.. Options(choice, rows, inner)];
        var height = Math.Min(above.Height, head.Length + options.Length + 2);
        this.Place(new Rectangle(0, above.Height - height, width, height));
        var blank = Enumerable.Repeat(Lines.Empty, options.Length);
        _frame.Show(FrameLines.Around([.. head, .. blank], width), new Rectangle(0, 0, width, height));
        _options.Show(options, new Rectangle(2, 1 + head.Length, inner, options.Length), choice.Selected - _first);
    }

    /// <summary>Question and text; at least three rows are left for the options.</summary>
    private static ImmutableArray<Line> Head(ChoiceOverlay choice, int width, int height, Notation notation)
    {
        ImmutableArray<Line> head =
            [.. Line.Of(choice.Question, Tone.Strong).Wrap(width), .. Wrapping.Wrap(choice.Lines, width)];
        var room = Math.Max(1, height - 2 - Math.Min(3, choice.Options.Length));
        return head.Length <= room ? head : [.. head[..(room - 1)], Line.Of(Labels.More(head.Length - room + 1, notation), Tone.Muted)];
    }

    private IEnumerable<Line> Options(ChoiceOverlay choice, int rows, int width) =>
        choice.Options.Skip(_first).Take(rows)
            .Select((option, i) => ListLines.Option(option, _first + i == choice.Selected, width));
}
