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

    private readonly LinesView _top;
    private readonly LinesView _notice;
    private readonly LinesView _keys;
    private readonly Dictionary<Type, Pane> _panes;
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
        (_top, _notice, _keys) = (new LinesView(look), new LinesView(look), new LinesView(look));
        _panes = new()
        {
            [typeof(DeckScreen)] = new DeckPane(look),
            [typeof(ListScreen)] = new ListPane(look),
            [typeof(TextScreen)] = new TextPane(look),
            [typeof(ChartScreen)] = new ChartPane(look),
        };
        _choice = new ChoicePanel(look);
        Entry = new EntryPanel(look, text => receive(new Input.Typed(text)));
        Add(_top, _notice, _keys);
        foreach (var pane in _panes.Values) Add(pane);
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
        _top.Show([EdgeLines.Top(screen, width)], new Rectangle(margin, 0, width, edges.Top));
        _notice.Show(notice, new Rectangle(margin, edges.NoticeRow, width, edges.Notice));
        _keys.Show(keys, new Rectangle(margin, edges.KeyRow, width, edges.Keys));
        ShowPane(screen, size, new Rectangle(0, edges.Top, size.Width, edges.NoticeRow - edges.Top));
        _choice.Show(screen.Overlay as ChoiceOverlay, new Size(size.Width, edges.NoticeRow), screen.Notation);
        Entry.Show(screen.Overlay as EntryOverlay, new Size(size.Width, edges.NoticeRow));
    }

    protected override bool OnClearingViewport() => this.Cleared();

    private static int NoticeRows(Size size) => size.Height < 5 ? 0 : size.Height < 12 ? 1 : 2;

    private static int KeyRows(Size size) => size.Height >= 30 ? 2 : 1;

    private void ShowPane(Screen screen, Size size, Rectangle room)
    {
        foreach (var (kind, pane) in _panes)
        {
            pane.Place(kind == screen.GetType() ? room : Rectangle.Empty);
            if (pane.Visible) pane.Show(screen, size);
        }
    }

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
