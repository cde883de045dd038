using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>Drawings to turn over: those of a day, or of trends.</summary>
internal sealed class ChartsPage : Page
{
    private readonly string _title;
    private readonly Func<DateTimeOffset, ImmutableArray<Drawing>> _draw;
    private readonly BrewDay? _day;
    private ImmutableArray<Drawing> _drawn = [];
    private int _selected;
    private int _offset;

    /// <summary>Of the day that runs.</summary>
    public ChartsPage(Shell shell, BrewDay day)
        : base(shell)
    {
        (_day, _title) = (day, shell.Notation.Text($"Charts: {day.Plan.Recipe.Name}"));
        _draw = now => DayDrawings.Of(day.Moment(now, shell.Notation));
    }

    /// <summary>Of a batch on disk.</summary>
    public ChartsPage(Shell shell, int number, IReadOnlyList<RunEvent> events)
        : this(shell, shell.Notation.Text($"Charts of batch {number}"), DayDrawings.Of(events, shell.Notation))
    {
    }

    /// <summary>Of what does not change.</summary>
    public ChartsPage(Shell shell, string title, ImmutableArray<Drawing> drawings)
        : base(shell) => (_title, _draw) = (title, _ => drawings);

    public override KeyContext Context => KeyContext.Charts;

    public override DateTimeOffset? NextTick(DateTimeOffset now) =>
        _day is null or { Over: true } ? Corners.NextTick(Shell, now) : now.AddSeconds(Math.Max(15, Shell.Pace / 4));

    protected override Screen Compose(DateTimeOffset now)
    {
        _drawn = _draw(now);
        _selected = Math.Clamp(_selected, 0, Math.Max(0, _drawn.Length - 1));
        return new ChartScreen(_title, Corners.Of(Shell, now), _drawn, _selected, _offset, KeyMap.Hints(Context, Shell.Notation));
    }

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        // the key is for what was drawn when it was struck
        var count = Math.Max(1, _drawn.Length);
        switch (command)
        {
            case Command.NextKind:
                _selected = (_selected + 1) % count;
                break;
            case Command.PreviousKind:
                _selected = (_selected + count - 1) % count;
                break;
            case Command.PickRow when stroke.Character - '1' is var pick && pick >= 0 && pick < count:
                _selected = pick;
                break;
            case Command.Up:
                Scroll(-1);
                break;
            case Command.Down:
                Scroll(1);
                break;
            case Command.PageUp:
                Scroll(-10);
                break;
            case Command.PageDown:
                Scroll(10);
                break;
            case Command.First:
                _offset = 0;
                break;
            case Command.Last:
                Scroll(int.MaxValue / 2);
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    private void Scroll(int rows) =>
        _offset = Math.Clamp(_offset + rows, 0, Math.Max(0, _drawn.OfType<TimetableDrawing>().Sum(t => t.Rows.Length) - 1));
}
