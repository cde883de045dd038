using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;
using TextField = Terminal.Gui.Views.TextField;

namespace BrewDeck.Terminal.Panes;

/// <summary>A question with a line to type, at the bottom of the screen so that the countdown stays in sight.</summary>
internal sealed class EntryPanel : View
{
    private readonly Patchwork _frame;
    private readonly TextField _field;
    private EntryOverlay? _asked;
    private bool _copying;

    /// <param name="look">Colours.</param>
    /// <param name="typed">Told each change that was typed.</param>
    public EntryPanel(Look look, Action<string> typed)
    {
        CanFocus = true;
        Visible = false;
        SetScheme(look.Scheme(Surface.Panel));
        _frame = new Patchwork(this, look, Surface.Panel);
        _field = new TextField { CanFocus = true, Autocomplete = null };
        _field.SetScheme(look.Scheme(Surface.Panel));
        _field.ValueChanged += (_, e) =>
        {
            if (!_copying) typed(e.NewValue ?? "");
        };
        Add(_field);
    }

    /// <summary>The line as typed so far.</summary>
    public string Typed => _field.Text;

    /// <param name="entry">Null: nothing is asked.</param>
    /// <param name="above">The row below the panel, and the width of the screen.</param>
    public void Show(EntryOverlay? entry, Size above)
    {
        var asked = _asked;
        _asked = entry;
        if (entry is null)
        {
            Visible = false;
            return;
        }

        Arrange(entry, above);
        if (asked is null || asked.Question != entry.Question || asked.Initial != entry.Initial) Begin(entry.Initial, entry.Replaces);
        // what was refused is typed anew more often than mended: an arrow keeps it
        else if (entry.Fault is not null && asked.Fault is null) _field.SelectAll();
    }

    public void Paste(string text) => _field.InsertText(text, useOldCursorPos: false);

    public void Backspace() => _field.DeleteCharLeft(false);

    protected override bool OnClearingViewport() => true;

    private void Begin(string initial, bool replaces)
    {
        _copying = true;
        if (_field.Text != initial) _field.Text = initial;
        _field.ClearHistoryChanges();
        _field.SetFocus();
        _field.ClearAllSelection();
        _field.MoveEnd();
        if (replaces) _field.SelectAll();
        _copying = false;
    }

    private void Arrange(EntryOverlay entry, Size above)
    {
        var width = Math.Min(above.Width, 90);
        var inner = Math.Max(1, width - FrameLines.Margin);
        var question = Line.Of(entry.Question, Tone.Strong).Wrap(inner);
        ImmutableArray<Line> fault = entry.Fault is { } wrong ? Labels.Marked(wrong).Wrap(inner, indent: 2) : [Lines.Empty];
        ImmutableArray<Line> lines = [.. question, Lines.Empty, .. entry.Hint.Wrap(inner), .. fault];
        var height = Math.Min(lines.Length + 2, above.Height);
        this.Place(new Rectangle(0, above.Height - height, width, height));
        _frame.Show([new(FrameLines.Around(lines, width), new Rectangle(0, 0, width, height), Surface.Panel)]);
        var row = Math.Min(question.Length + 1, Math.Max(0, height - 1));
        _field.Place(new Rectangle(2, row, inner, 1));
    }
}
