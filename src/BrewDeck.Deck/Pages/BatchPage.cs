using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A batch's own page: planned against done, readings, remedies, notes, and what came after the day.</summary>
internal sealed class BatchPage : TextPage
{
    private readonly int _number;
    private ImmutableArray<Line> _lines = [];
    private int _events = -1;
    private bool _open;
    private bool _rehearsed;

    public BatchPage(Shell shell, int number)
        : base(shell)
    {
        _number = number;
        Read();
    }

    public override KeyContext Context => _open ? KeyContext.Batch : KeyContext.Closed;

    protected override string Title => Shell.Notation.Text($"Batch {_number}");

    /// <summary>A real day has no debrief.</summary>
    protected override ImmutableArray<KeyHint> Hints() => [.. base.Hints().Where(h => h.Key != "d" || _rehearsed)];

    protected override IEnumerable<Line> Lines(DateTimeOffset now)
    {
        // the page over this one may have written something
        if (Shell.Ports.Store.List().FirstOrDefault(b => b.Number == _number) is { } head && head.Events != _events)
            Read();
        return _lines;
    }

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.GoOn:
                Shell.GoOn(_number);
                break;
            case Command.Debrief:
                DebriefPage.Enter(Shell, _number);
                break;
            case Command.AfterDay:
                AfterDayPage.Enter(Shell, _number);
                break;
            case Command.Charts:
                Shell.Try(() => Shell.Push(new ChartsPage(Shell, _number, Shell.Ports.Store.Read(_number))));
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    private void Read()
    {
        IReadOnlyList<RunEvent> events = [];
        if (!Shell.Try(() => events = Shell.Ports.Store.Read(_number)))
            return;
        _events = events.Count;
        var state = RunFold.RecordOf(events);
        _rehearsed = state.Card is not null;
        _open = state.Status is not (RunStatus.Complete or RunStatus.Aborted);
        _lines = BatchText.Lines(events, state, Shell.Notation);
    }
}
