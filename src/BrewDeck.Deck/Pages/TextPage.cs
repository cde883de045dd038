using System.Collections.Immutable;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Text to read, scrolled by lines.</summary>
internal abstract class TextPage(Shell shell) : Page(shell)
{
    private const int Frame = 4;
    private const int WidestText = 100;
    private const int Margin = 4;
    private int _offset;
    private (IEnumerable<Line> Lines, int Width, ImmutableArray<Line> Rows) _broken = ([], 0, []);

    public override KeyContext Context => KeyContext.Text;

    protected abstract string Title { get; }

    protected virtual string Corner(DateTimeOffset now) => Shell.Notation.Clock(now.ToUnixTimeMilliseconds());

    protected virtual ImmutableArray<KeyHint> Hints() => KeyMap.Hints(Context, Shell.Notation);

    protected abstract IEnumerable<Line> Lines(DateTimeOffset now);

    protected override Screen Compose(DateTimeOffset now)
    {
        var lines = Broken(Lines(now), Math.Min(WidestText, Shell.Columns - Margin));
        _offset = Math.Clamp(_offset, 0, Math.Max(0, lines.Length - Page));
        return new TextScreen(Title, Corner(now), lines, _offset, Hints());
    }

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Up:
                _offset--;
                break;
            case Command.Down:
                _offset++;
                break;
            case Command.PageUp:
                _offset -= Page;
                break;
            case Command.PageDown:
                _offset += Page;
                break;
            case Command.First:
                _offset = 0;
                break;
            case Command.Last:
                _offset = int.MaxValue / 2;
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    /// <summary>A page that gives the same lines again has them broken once: its text does not change while it is scrolled.</summary>
    private ImmutableArray<Line> Broken(IEnumerable<Line> lines, int width)
    {
        if (!ReferenceEquals(lines, _broken.Lines) || width != _broken.Width)
            _broken = (lines, width, Wrap.Lines(lines, width));
        return _broken.Rows;
    }

    private int Page => Math.Max(1, Shell.Rows - Frame);
}
