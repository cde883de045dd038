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
    private readonly Patchwork _patches;
    private int _first;

    public ChoicePanel(Look look)
    {
        CanFocus = false;
        Visible = false;
        SetScheme(look.Scheme(Surface.Panel));
        _patches = new Patchwork(this, look, Surface.Panel);
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
        var most = Math.Max(1, above.Height - 2 - head.Length);
        var blocks = Options(choice, inner);
        var shown = InSight(blocks, choice.Selected, most);
        ImmutableArray<Line> options = [.. shown.SelectMany(i => blocks[i]).Take(most)];
        var height = Math.Min(above.Height, head.Length + options.Length + 2);
        this.Place(new Rectangle(0, above.Height - height, width, height));
        var blank = Enumerable.Repeat(Lines.Empty, options.Length);
        var before = shown.TakeWhile(i => i != choice.Selected).Sum(i => blocks[i].Length);
        var bar = shown.Length == blocks.Length ? [] : PlaceLines.Of(_first, blocks.Length, shown.Length);
        _patches.Show(
        [
            new(FrameLines.Around([.. head, .. blank], width), new Rectangle(0, 0, width, height), Surface.Panel),
            new(options, new Rectangle(2, 1 + head.Length, inner, options.Length), Surface.Panel, before, blocks.Length == 0 ? 0 : blocks[choice.Selected].Length),
            new(bar, new Rectangle(width - 1, 1 + head.Length, 1, bar.Length), Surface.Panel),
        ]);
    }

    protected override bool OnClearingViewport() => true;

    /// <summary>Whole options, the chosen one among them, from where the last look began, moving as little as possible.</summary>
    private ImmutableArray<int> InSight(ImmutableArray<ImmutableArray<Line>> blocks, int chosen, int rows)
    {
        _first = Math.Clamp(_first, 0, Math.Max(0, blocks.Length - 1));
        if (chosen < _first) _first = chosen;
        while (_first < chosen && blocks[_first..(chosen + 1)].Sum(b => b.Length) > rows) _first++;
        while (_first > 0 && blocks[(_first - 1)..].Sum(b => b.Length) <= rows) _first--;
        var used = 0;
        return [.. Enumerable.Range(_first, blocks.Length - _first).TakeWhile((_, i) => (used += blocks[_first + i].Length) <= rows || i == 0)];
    }

    /// <summary>Question and text; at least three rows are left for the options.</summary>
    private static ImmutableArray<Line> Head(ChoiceOverlay choice, int width, int height, Notation notation)
    {
        ImmutableArray<Line> head =
            [.. Line.Of(choice.Question, Tone.Strong).Wrap(width), .. Wrapping.Wrap(choice.Lines, width)];
        var room = Math.Max(1, height - 2 - Math.Min(3, choice.Options.Length));
        return head.Length <= room ? head : [.. head[..(room - 1)], Line.Of(Labels.More(head.Length - room + 1, notation), Tone.Muted)];
    }

    private static ImmutableArray<ImmutableArray<Line>> Options(ChoiceOverlay choice, int width) =>
        [.. choice.Options.Select((option, i) => ListLines.Option(option, i == choice.Selected, width))];
}
