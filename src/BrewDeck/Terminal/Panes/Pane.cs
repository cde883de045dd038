using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;

namespace BrewDeck.Terminal.Panes;

/// <summary>Shows one kind of screen between the title and the notice.</summary>
internal abstract class Pane : View
{
    protected Pane(Look look)
    {
        Look = look;
        CanFocus = false;
        Visible = false;
        SetScheme(look.Scheme(Surface.Ground));
    }

    protected Look Look { get; }

    /// <param name="screen">Of the kind that the pane is for.</param>
    /// <param name="whole">Size of the terminal.</param>
    public abstract void Show(Screen screen, Size whole);

    protected override bool OnClearingViewport() => this.Cleared();

    protected Rectangle Room => new(Point.Empty, Frame.Size);

    protected LinesView AddLines(Surface surface = Surface.Ground)
    {
        var view = new LinesView(Look, surface);
        Add(view);
        return view;
    }
}
