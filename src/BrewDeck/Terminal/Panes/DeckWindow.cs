using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;
using Input = BrewDeck.Deck.Input;
using Runnable = Terminal.Gui.Views.Runnable;

namespace BrewDeck.Terminal.Panes;

/// <summary>The one window: copies a screen into its views. What keys mean is the session's business.</summary>
internal sealed class DeckWindow : Runnable
{
    /// <summary>Columns from which a blank column is left at both sides.</summary>
    private const int MarginFrom = 40;

    private readonly Dictionary<Type, Pane> _panes = new()
    {
        [typeof(DeckScreen)] = new DeckPane(),
        [typeof(ListScreen)] = new ListPane(),
        [typeof(TextScreen)] = new TextPane(),
        [typeof(ChartScreen)] = new ChartPane(),
    };

    private readonly Patchwork _patches;
    private readonly ChoicePanel _choice;
    private Screen? _screen;

    /// <param name="look">Colours.</param>
    /// <param name="receive">Told what the brewer types.</param>
    public DeckWindow(Look look, Action<Input> receive)
    {
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
        SetScheme(look.Scheme(Surface.Ground));
        _patches = new Patchwork(this, look);
        _choice = new ChoicePanel(look);
        Entry = new EntryPanel(look, text => receive(new Input.Typed(text)));
        Add(_choice, Entry);
    }

    public EntryPanel Entry { get; }

    /// <summary>A line is being typed: keys go to it.</summary>
    public bool IsTyping => _screen?.Overlay is EntryOverlay;

    /// <summary>Shows a screen; the keys that follow in the same burst already meet it.</summary>
    public void Show(Screen screen, Size size)
    {
        _screen = screen;
        var margin = size.Width >= MarginFrom ? 1 : 0;
        var width = Math.Max(1, size.Width - 2 * margin);
        var keys = EdgeLines.Keys(screen.Keys, width, KeyRows(size));
        var notice = EdgeLines.Notice(screen, width, NoticeRows(size));
        var edges = Edges.Of(size, keys.Length, notice.Length);
        _patches.Show(
        [
            new([EdgeLines.Top(screen, width)], new Rectangle(margin, 0, width, edges.Top)),
            .. _panes[screen.GetType()].Of(screen, size, new Rectangle(0, edges.Top, size.Width, edges.NoticeRow - edges.Top)),
            new(notice, new Rectangle(margin, edges.NoticeRow, width, edges.Notice)),
            new(keys, new Rectangle(margin, edges.KeyRow, width, edges.Keys)),
        ]);
        _choice.Show(screen.Overlay as ChoiceOverlay, new Size(size.Width, edges.NoticeRow), screen.Notation);
        Entry.Show(screen.Overlay as EntryOverlay, new Size(size.Width, edges.NoticeRow));
    }

    protected override bool OnClearingViewport() => true;

    private static int NoticeRows(Size size) => size.Height < 5 ? 0 : size.Height < 12 ? 1 : 2;

    private static int KeyRows(Size size) => size.Height >= 30 ? 2 : 1;

    /// <summary>How many rows the edges take; on a very low screen the keys go last.</summary>
    private readonly record struct Edges(int Top, int Notice, int Keys, int NoticeRow, int KeyRow)
    {
        public static Edges Of(Size size, int keys, int notice)
        {
            var top = size.Height >= 4 ? 1 : 0;
            keys = Math.Min(keys, size.Height >= 3 ? size.Height : 0);
            notice = size.Height < 5 ? 0 : Math.Max(1, notice);
            return new Edges(top, notice, keys, size.Height - keys - notice, size.Height - keys);
        }
    }
}
